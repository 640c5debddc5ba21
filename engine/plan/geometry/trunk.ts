/** Radius of a tree's trunk over the tree's height. */
const TRUNK_SHARE = 0.03;

/** Radius of a tree's trunk, taken from its height. @param height Of the tree. [m] @returns [m] */
export function trunkRadius(height: number): number {
  return TRUNK_SHARE * height;
}

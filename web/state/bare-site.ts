import type { Plan } from '../../engine/index.ts';

const BARE = new WeakMap<Plan['site'], Plan['site']>();

/** A site without the picture under its map, which no reckoning needs: the same object for the same site. */
export function bareSite(site: Plan['site']): Plan['site'] {
  if (!site.underlay) return site;
  const known = BARE.get(site);
  if (known) return known;
  const { underlay: _, ...rest } = site;
  BARE.set(site, rest);
  return rest;
}

/** A rectangle on the screen. [px] */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/**
 * Gives each label the first of its places that lies within the frame and clear of what is taken and of the labels
 * before it.
 * @param places of each label, the best first
 * @returns index of each label's place; `null` where none is free
 */
export function placeLabels(
  places: readonly (readonly Box[])[],
  frame: Box,
  taken: readonly Box[],
): readonly (number | null)[] {
  const standing = [...taken];
  return places.map((tried) => {
    const found = tried.findIndex((box) => holds(frame, box) && standing.every((other) => !overlap(box, other)));
    if (found < 0) return null;
    standing.push(tried[found]);
    return found;
  });
}

/** Places of a label outside the thing it names: under it, over it, beside it, then drawn in to one of its edges. */
export function placesRound(body: Box, width: number, height: number): readonly Box[] {
  const middleX = (body.left + body.right) / 2;
  const middleY = (body.top + body.bottom) / 2;
  const at = (left: number, top: number): Box => ({ left, top, right: left + width, bottom: top + height });
  const under = body.bottom + GAP;
  const over = body.top - GAP - height;
  return [
    at(middleX - width / 2, under),
    at(middleX - width / 2, over),
    at(body.right + GAP, middleY - height / 2),
    at(body.left - GAP - width, middleY - height / 2),
    at(body.right - width, under),
    at(body.left, under),
    at(body.right - width, over),
    at(body.left, over),
  ];
}

/**
 * Places of a pin whose one corner stands on its place.
 * @param first how it is turned there: to the left counts one, below two; then it is turned to the other side, over,
 *   and both
 */
export function placesOfPin(
  { x, y }: { readonly x: number; readonly y: number },
  size: number,
  first: number,
): readonly Box[] {
  return [0, 1, 2, 3].map((by) => {
    const turn = first ^ by;
    const left = turn & 1 ? x - size : x;
    const top = turn & 2 ? y : y - size;
    return { left, top, right: left + size, bottom: top + size };
  });
}

/** Places of a label on its thing: amid what is seen of it, then higher and lower; none where it has no room. */
export function placesOn(body: Box, frame: Box, width: number, height: number): readonly Box[] {
  const left = Math.max(body.left, frame.left);
  const right = Math.min(body.right, frame.right);
  const top = Math.max(body.top, frame.top);
  const bottom = Math.min(body.bottom, frame.bottom);
  if (right - left < width) return [];
  const from = (left + right - width) / 2;
  return [0.5, 0.25, 0.75].map((share) => {
    const y = top + share * (bottom - top) - height / 2;
    return { left: from, top: y, right: from + width, bottom: y + height };
  });
}

/** Between a thing and its name. [px] */
const GAP = 2;

export function holds(frame: Box, box: Box): boolean {
  return box.left >= frame.left && box.right <= frame.right && box.top >= frame.top && box.bottom <= frame.bottom;
}

export function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

import { type Cloth, costOf, formatCut, stockTubes } from '../../../engine/index.ts';
import type { FrameChoice, Plan, Units } from '../../../engine/index.ts';

/** A change after which the frame can be built. */
export interface Cure {
  readonly label: string;
  readonly frame: FrameChoice;
}

/** Longest bays to try, longest first. [m] */
const BAYS = [3, 2.5, 2, 1.5, 1.2, 1] as const;

/** The first shorter bay and the thinnest other tube with which the frame can be built, each tried out. */
export function curesOf(thing: Cloth, plan: Plan, units: Units): readonly Cure[] {
  const works = (frame: FrameChoice): boolean => costOf({ ...thing, frame: { ...thing.frame, ...frame } }, plan).ok;
  const bay = BAYS.find((maxBay) => maxBay < (thing.frame?.maxBay ?? Infinity) && works({ maxBay }));
  const tube = stockTubes(plan)
    .toSorted((a, b) => a.outside - b.outside)
    .find(({ id }) => works({ tube: id }));
  return [
    ...(bay === undefined
      ? []
      : [{ label: `Posts closer: bays up to ${formatCut(bay, units)}`, frame: { maxBay: bay } }]),
    ...(tube === undefined ? [] : [{ label: `Take ${tube.name}`, frame: { tube: tube.id } }]),
    ...(works({ takeOff: 0 }) && thing.frame?.takeOff ? [{ label: 'Take-off 0', frame: { takeOff: 0 } }] : []),
  ];
}

/** How the keys of a thing go together. A rule sees what is right in it, and speaks of no key that is wrong. */

import { monthWord, monthsOfSeason } from '../dates/dates.ts';
import { bottomOf, potOf, riseOf } from '../defaults.ts';
import { cleanPath, distance } from '../geometry/shapes.ts';
import { toMillimetre } from '../numbers/rounding.ts';
import { ROUNDING } from '../numbers/tolerances.ts';
import { FEATURE, LEAST_BUILT } from '../schema/feature.ts';
import type { Json, Keys } from '../schema/form.ts';
import type { SoundKeys } from '../schema/held.ts';
import { JOURNAL_ENTRY, PLAN, STOCK_TUBE, THIS_YEAR } from '../schema/plan.ts';
import { CLIMATE_MONTH, SEASON } from '../schema/site.ts';
import { checkReferences } from './references.ts';
import type { It, Tell } from './spot.ts';

type Rule = (sound: Json, tell: Tell, it: It) => void;

const { tree, canopy, screen, plant } = FEATURE.kinds;

/** By the keys of an object in the schema. */
export const RULES: ReadonlyMap<Keys, Rule> = new Map([
  rule(tree, ({ crownBase, height }, tell) => footBelowTop(tell, 'crownBase', 'the crown', crownBase, height)),
  rule(screen, (cloth, tell) => {
    const { height } = cloth;
    const bottom = bottomOf(cloth);
    footBelowTop(tell, 'bottom', 'the cloth', bottom, height);
    if (height !== undefined && height > bottom && toMillimetre(height - bottom) < LEAST_BUILT)
      tell(
        ['height'],
        `the cloth is only ${toMillimetre(height - bottom)} m high; nobody can build less than ${LEAST_BUILT} m.`,
      );
    longEnough(cloth, tell);
  }),
  rule(canopy, (roof, tell, { subject }) => {
    frontAboveGround(roof, tell);
    dropsAboveGround(roof, tell, subject);
  }),
  rule(plant, (sound, tell, it) => {
    footBelowTop(tell, 'foliageFrom', 'the foliage', sound.foliageFrom, sound.height);
    if (!Object.hasOwn(it.object, 'foliageFrom')) tallerThanPot(sound, tell);
  }),
  rule(SEASON.keys, ({ stepMinutes }, tell) => {
    if (stepMinutes === undefined || 60 % stepMinutes === 0) return;
    tell(
      ['stepMinutes'],
      `step is ${stepMinutes} minutes, but an hour must be a whole number of steps: 1, 2, 3, 4, 5, 6, 10, 12, 15, ` +
        `20, 30 or 60.`,
    );
  }),
  rule(CLIMATE_MONTH.keys, ({ high, low }, tell) => {
    if (high !== undefined && low !== undefined && low > high)
      tell(['low'], `low is ${low} °C, above the high of ${high} °C.`);
  }),
  rule(JOURNAL_ENTRY.keys, ({ what, amount }, tell) => {
    if (what === 'damage' && amount !== undefined && amount > MOST_DAMAGE)
      tell(['amount'], `amount is ${amount}, but must be from 0 to ${MOST_DAMAGE}.`);
  }),
  rule(STOCK_TUBE.keys, ({ outside, wall }, tell) => {
    if (outside !== undefined && wall !== undefined && wall * 2 > outside)
      tell(['wall'], `two walls of ${wall} m are thicker than the tube's ${outside} m.`);
  }),
  rule(PLAN.keys, wholePlan),
  rule(THIS_YEAR, wholePlan),
]);

/** Of leaves gone or burnt, on the journal's scale. */
const MOST_DAMAGE = 5;

function rule<K extends Keys>(keys: K, says: (sound: SoundKeys<K>, tell: Tell, it: It) => void): readonly [Keys, Rule] {
  return [keys, (sound, tell, it) => says(sound as SoundKeys<K>, tell, it)];
}

function wholePlan(plan: SoundKeys<typeof THIS_YEAR>, tell: Tell, { pointer }: It): void {
  monthsOfSeasonAreThere(plan, tell);
  checkReferences(plan, tell, pointer);
}

function monthsOfSeasonAreThere({ season, climate }: SoundKeys<typeof THIS_YEAR>, tell: Tell): void {
  if (season?.from === undefined || season.to === undefined || climate?.months === undefined) return;
  const there = new Set(climate.months.map((row) => row?.month));
  for (const month of monthsOfSeason({ from: season.from, to: season.to })) {
    if (!there.has(month))
      tell(['climate', 'months'], `${monthWord(month)} is part of the season, but its month is missing.`, 'Climate');
  }
}

/** Foliage or cloth must begin below where it ends. */
function footBelowTop(tell: Tell, key: string, what: string, foot: number | undefined, top: number | undefined): void {
  if (foot === undefined || top === undefined || foot < top) return;
  tell([key], `${what} begins at ${foot} m, which is not below its top at ${top} m.`);
}

function frontAboveGround(roof: SoundKeys<typeof canopy>, tell: Tell): void {
  const { height } = roof;
  const rise = riseOf(roof);
  if (height === undefined || height + rise > 0) return;
  tell(
    ['rise'],
    `with height ${height} m and rise ${rise} m the front edge would be at ${toMillimetre(height + rise)} m, not ` +
      `above the ground.`,
  );
}

function dropsAboveGround(roof: SoundKeys<typeof canopy>, tell: Tell, subject: string): void {
  const { height: back, drops = [] } = roof;
  if (back === undefined) return;
  const front = back + riseOf(roof);
  for (const [index, drop] of drops.entries()) {
    if (drop?.side === undefined || drop.depth === undefined) continue;
    const { side, depth } = drop;
    const edge = side === 'front' ? front : side === 'back' ? back : Math.min(front, back);
    const lower = front !== back && (side === 'left' || side === 'right') ? ' at its lower end' : '';
    if (depth > edge + ROUNDING)
      tell(
        ['drops', index, 'depth'],
        `the drop is ${depth} m deep, but its edge is only ${toMillimetre(edge)} m high${lower}.`,
        `${subject}, drop ${index + 1}`,
      );
  }
}

/** Every straight of a screen must be long enough for a hand to build. */
function longEnough({ path }: SoundKeys<typeof screen>, tell: Tell): void {
  const points = cleanPath(path ?? []);
  const straights = points.slice(1).map((point, k) => distance(points[k], point));
  const short = straights.findIndex((straight) => toMillimetre(straight) < LEAST_BUILT);
  if (short >= 0)
    tell(
      ['path'],
      `straight ${short + 1} of path is only ${toMillimetre(straights[short])} m long; nobody can build less than ` +
        `${LEAST_BUILT} m.`,
    );
}

function tallerThanPot({ container, height, pot }: SoundKeys<typeof plant>, tell: Tell): void {
  if (container !== true || height === undefined) return;
  const potHeight = potOf({ pot }).height;
  if (potHeight >= height)
    tell(['height'], `height is ${height} m from the ground, pot included, but the pot alone is ${potHeight} m high.`);
}

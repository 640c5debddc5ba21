/** Published temperatures of pots, what the engine says to each, and how far that may be off. */

import { type Pot, type PotDay } from '../../engine/load/pot/pot-heat.ts';
import { doublePotted, POT_ABSORPTANCE, rootSpread, type RootZone, rootZone } from '../../engine/load/pot/root-zone.ts';
import { at, clearDay, type Place, pot } from '../engine/load/pot/pot-days.ts';

/**
 * Beam that reaches a pot among others under its plant's crown: the share that fits measured blocks of pots. Bare lone
 * pots get all.
 */
const PLANTED = 0.6;
const planted = (place: Place) => clearDay({ ...place, share: () => PLANTED });
const west = ({ sides }: RootZone) => sides[6];
const styrene = 0.0026 / 0.033;
const [gallon, threeGallons] = [pot({ width: 0.16, height: 0.16 }), pot({ width: 0.26, height: 0.23 })];
export const white = (p: Pot): Pot => ({ ...p, absorptance: POT_ABSORPTANCE.white });

const AUBURN = clearDay(at(32.6, -85.5, 200, 4, 7, 15, 33, 22));
export const TENNESSEE = planted(at(35.7, -85.8, 300, 4, 7, 15, 32, 20));
const KANSAS = planted(at(39.2, -96.6, 320, 3.5, 7, 25, 33, 21));
const COLORADO = at(39.9, -105, 1600, 2.8, 9, 5, 28, 12);
const OCTOBER = clearDay({ ...COLORADO, turbidity: 2.5, month: 10, day: 13, high: 18, low: 4 });
const HOUSTON_PLACE = at(29.8, -95.4, 20, 4, 5, 21, 29, 19);
const HOUSTON = clearDay({ ...HOUSTON_PLACE, share: (azimuth) => (azimuth < 180 ? 1 : 0) });
const CARTAGENA = planted(at(37.6, -1, 30, 3.5, 6, 15, 27, 18));
const [smallBlack, cartagenaPot] = [gallon, pot({ width: 0.18, height: 0.18 })];
const inWhite = doublePotted(cartagenaPot, POT_ABSORPTANCE.white);
const fiveGallons = pot({ width: 0.28, height: 0.28 });
const peak = (day: PotDay, p: Pot, depth: number) => rootZone(day, p, depth).warmest;

/**
 * What was measured, and what we say of it [°C, or K where it is a difference]. Air, sky and the pots' sizes in cm are
 * our guesses where the source as seen does not give them; a pair of our numbers where it does not say how deep the
 * sensor was: near the wall, and the middle.
 */
const SERIES: readonly {
  readonly name: string;
  readonly measured: number;
  readonly ours: readonly number[];
  readonly air?: number;
}[] = [
  // "Styrene lining and container size affect substrate temperature", J. Environ. Hort. 14:184–186 (1996; abstract
  // seen): at the west wall.
  { name: 'styrene in 2.7 L pots', measured: -8, ours: [lined(gallon)] },
  { name: 'styrene in 10.3 L pots', measured: -7, ours: [lined(threeGallons)] },
  { name: '10.3 against 2.7 L, lined', measured: -4, ours: [lined(threeGallons, gallon)] },
  {
    name: '10.3 against 2.7 L',
    measured: -5,
    ours: [west(rootZone(AUBURN, threeGallons, 0.015)) - west(rootZone(AUBURN, gallon, 0.015))],
  },
  // Witcher et al. (2020), Agronomy 10:484 (abstract seen): 11.3 L, white against black, "up to".
  {
    name: 'white 11.3 L pots, Tennessee',
    measured: -7,
    ours: both(TENNESSEE, white(pot({ width: 0.28, height: 0.24 })), pot({ width: 0.28, height: 0.24 })),
  },
  // Markham et al. (2011), HortScience 46:721–726 (seen in a summary without its unit; K from memory): 5 cm in, south
  // side.
  {
    name: 'white pots, Kansas, 5 cm in on the south',
    measured: -7,
    ours: [rootZone(KANSAS, white(fiveGallons), 0.05).sides[4] - rootZone(KANSAS, fiveGallons, 0.05).sides[4]],
  },
  // A citrus grower's readings, Colorado, 5 Sept 2006, 15:00 (seen): pots with trees, 42.2 black and 31.7 painted
  // white.
  {
    name: 'black pot with a tree, Colorado',
    measured: 42.2,
    ours: [peak(planted(COLORADO), fiveGallons, 0.04)],
    air: 28,
  },
  {
    name: 'white pot with a tree, Colorado',
    measured: 31.7,
    ours: [peak(planted(COLORADO), white(fiveGallons), 0.04)],
    air: 28,
  },
  // The same grower, 13 Oct 2006 (seen): near the wall after two hours of sun, air 18 °C.
  { name: 'black pot in October', measured: 48.9, ours: [peak(OCTOBER, fiveGallons, 0.01)], air: 18 },
  { name: 'white pot in October', measured: 26.7, ours: [peak(OCTOBER, white(fiveGallons), 0.01)], air: 18 },
  // A gardener's readings, Houston, 22 May 2017 (seen): bare black 1-gallon pots after a morning's sun, "within 1 inch"
  // and in the middle.
  {
    name: 'small black pot, Houston, near the wall',
    measured: 48.3,
    ours: [peak(HOUSTON, smallBlack, 0.015)],
    air: 29,
  },
  { name: 'small black pot, Houston, middle', measured: 33.3, ours: [rootZone(HOUSTON, smallBlack).middle], air: 29 },
  {
    name: 'light paint, Houston',
    measured: -8.3,
    ours: [peak(HOUSTON, { ...smallBlack, absorptance: 0.4 }, 0.015) - peak(HOUSTON, smallBlack, 0.015)],
  },
  // Miralles, Bañón & Martínez-Sánchez, Acta Hortic. 937 (abstract seen): a white pot round a black one, mean of the
  // daily maxima.
  { name: 'white pot round a black one, Spain', measured: -6, ours: both(CARTAGENA, inWhite, cartagenaPot) },
];

/** How far a measured value lies outside what we say, and our spread. [K] */
export function measuredPots(): { name: string; off: number; spread: number }[] {
  return SERIES.map(({ name, measured, ours, air = 0 }) => ({
    name,
    off: Math.max(Math.min(...ours) - measured, measured - Math.max(...ours), 0),
    spread: rootSpread(Math.max(...ours.map((one) => Math.abs(one - air)))),
  }));
}

function lined(p: Pot, against?: Pot): number {
  const zone = west(rootZone(AUBURN, { ...p, insulation: styrene }, 0.015));
  return zone - west(rootZone(AUBURN, against ? { ...against, insulation: styrene } : p, 0.015));
}

function both(day: PotDay, after: Pot, before: Pot): number[] {
  const [a, b] = [rootZone(day, after), rootZone(day, before)];
  return [a.warmest - b.warmest, a.middle - b.middle];
}

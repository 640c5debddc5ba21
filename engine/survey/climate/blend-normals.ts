import { kilometresBetween } from '../../plan/geometry/lon-lat.ts';

/** Twelve monthly means of a town's weather station, January first, as its weather service published them. */
export interface TownNormals {
  readonly name: string;
  /** Or the state, as "US-NV". */
  readonly country: string;
  readonly latitude: number;
  readonly longitude: number;
  /** [m] */
  readonly elevation: number;
  /** Within some 20 km of the open sea. */
  readonly bySea: boolean;
  /** Key of the table of sources. */
  readonly source: string;
  /** Years of the mean, or "not stated". */
  readonly period: string;
  /** Mean daily high of each month. [°C] */
  readonly high: readonly number[];
  /** Mean daily low. [°C] */
  readonly low: readonly number[];
  /** Mean. [%] */
  readonly humidity?: readonly number[];
}

/** Where a climate is asked for. Leave out what is not known: a height of 0 m counts as known. */
export interface Spot {
  readonly latitude: number;
  readonly longitude: number;
  /** [m] */
  readonly elevation?: number;
  /** Within some 20 km of the open sea. */
  readonly bySea?: boolean;
}

/** A town and how far its weather is away: kilometres, and what height and shore add to them. [km] */
export interface NearTown {
  readonly town: TownNormals;
  readonly kilometres: number;
  readonly away: number;
}

export interface BlendedNormals {
  readonly high: readonly number[];
  readonly low: readonly number[];
  /** Of the nearest town alone, where its table has it. */
  readonly humidity?: readonly number[];
  /** Nearest first: those that were mixed, and their shares of the mean. */
  readonly near: readonly (NearTown & { readonly share: number })[];
}

/** What air cools by on the way up. [K/m] The standard atmosphere's. */
const LAPSE = 0.0065;
/** 100 m of height part two climates as 20 km of land do: of 0, 0.05, 0.1, 0.2 and 0.3 the best over the table. */
const KM_PER_METRE = 0.2;
/** Sea breeze on one side and none on the other. [km] More does not foretell the table's towns better. */
const OTHER_SHORE = 200;
const TOWNS_MIXED = 3;

/**
 * Beyond this, heights and shores counted in, no town of the table tells a place. [km] Root mean square errors of
 * summer highs over the table, by towns and by climate types: 1.7 and 2.7 K at 200 to 300 km, 2.5 and 3.6 K at 300 to
 * 400 km, where the error told would be too small.
 */
export const FARTHEST = 300;

/** The error in the town itself, and what each kilometre adds. [K, K/km] */
const IN_TOWN = 0.8;
const PER_KM = 0.004;
/**
 * What not knowing adds to the error, in full from `ELSEWHERE` on: the town's own yards lie about as high as it. [K]
 */
const UNKNOWN_HEIGHT = 1.5;
const UNKNOWN_SHORE = 1.5;
/** Our choice. [km] */
const ELSEWHERE = 40;
/** A town nearer than this counts as at this distance. [km] */
const NEXT_DOOR = 5;

/** The towns whose weather is nearest, nearest first. An unknown height or shore counts as the town's own. */
export function townsNear(spot: Spot, towns: readonly TownNormals[], count = TOWNS_MIXED): NearTown[] {
  const near = towns.map((town) => {
    const kilometres = kilometresBetween(spot, town);
    const climb = spot.elevation === undefined ? 0 : Math.abs(spot.elevation - town.elevation);
    const shore = spot.bySea === undefined || spot.bySea === town.bySea ? 0 : OTHER_SHORE;
    return { town, kilometres, away: kilometres + KM_PER_METRE * climb + shore };
  });
  return near.sort((a, b) => a.away - b.away).slice(0, count);
}

/**
 * Monthly highs and lows between the nearest towns: each brought to the spot's height, then their mean, weighed by the
 * inverse square of how far away each is.
 */
export function blendNormals(spot: Spot, towns: readonly TownNormals[]): BlendedNormals {
  const near = townsNear(spot, towns);
  const weights = near.map(({ away }) => 1 / Math.max(away, NEXT_DOOR) ** 2);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const shared = near.map((one, k) => ({ ...one, share: weights[k] / total }));
  const mixed = (series: 'high' | 'low'): number[] =>
    Array.from({ length: 12 }, (_, month) => {
      const mean = shared.reduce((sum, { town, share }) => sum + share * (town[series][month] + warmer(spot, town)), 0);
      return Math.round(10 * mean) / 10;
    });
  return { high: mixed('high'), low: mixed('low'), humidity: near[0]?.town.humidity, near: shared };
}

/**
 * How far the mean high of the three hottest months may be off, two times in three, with the nearest town `away` km
 * off. [K] Lines over the table itself, each town foretold from the others; the tests hold them there.
 */
export function likelyError(away: number, { elevation, bySea }: Spot): number {
  const elsewhere = Math.min(1, away / ELSEWHERE);
  return Math.hypot(
    IN_TOWN + PER_KM * away,
    elevation === undefined ? elsewhere * UNKNOWN_HEIGHT : 0,
    bySea === undefined ? elsewhere * UNKNOWN_SHORE : 0,
  );
}

/** What the distance, and what is not known, add to the error of the town itself. [K] */
export function errorBeyondTown(away: number, spot: Spot): number {
  return likelyError(away, spot) - IN_TOWN;
}

/** How much warmer it is at the spot than in the town for its height alone. [K] */
function warmer(spot: Spot, town: TownNormals): number {
  return spot.elevation === undefined ? 0 : LAPSE * (town.elevation - spot.elevation);
}

/** The cloth: how large it hangs, how it is cut and sewn from what is sold, and how it is tied. */

import { countUp, ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { StockCloth } from '../../plan/types.ts';
import type { Units } from '../../plan/units/units.ts';
import { tallestPost } from '../layout/model.ts';
import type { FrameCloth, FrameModel } from '../layout/model.ts';
import { holesFactor, SIDE_PUSH, tautPull, upliftCoefficient, windPressure } from '../strength/wind.ts';
import { clothNotes, frostWords, READY_MADE, sewingWords } from './cloth-words.ts';
import type { ClothPiece, ClothPlan, FrostCloth } from './types.ts';

/**
 * Cloth on elastic ties is made this much smaller than its frame on each side, so that the ties pull: 50 to 100 mm
 * (from memory). [m]
 */
const GAP = 0.05;
/** A ready-made panel may leave this gap on each side. [m] */
const PANEL_GAP = { least: 0.02, most: 0.15 } as const;
/** One tie every two feet, and at every corner and post (from memory). [m] */
export const TIE_SPACING = 0.6096;
/** Folded over at every edge, and overlapped at every seam. [m] */
const HEM = 0.05;
const LAP = 0.15;
/** A row of the stock list at least this long is a roll. [m] */
const ROLL_FROM = 20;
/** Dry; wet it weighs twice as much (this project's own figure, between 0.06 and 0.2 for such cloth). [kg/m²] */
export const CLOTH_MASS = 0.15;
/** Sag of a taut cloth over its span when its pull on the rails is worked out. */
const TAUT_SAG_SHARE = 0.05;
/** Frost cloth lies on the ground this far all round, a weight at every `FROST_WEIGHT_SPACING`. [m] */
const FROST_SKIRT = 0.3;
const FROST_WEIGHT_SPACING = 1;

/** A fleece is thrown over and weighed down from the ground, without a ladder: nothing taller. Our choice. [m] */
export const FLEECE_REACH = 2;

/** Tie points along the sides of a closed edge, corners shared: Σ ⌈side/spacing⌉. */
export function tiePoints(sides: readonly number[], spacing: number): number {
  return sides.reduce((sum, side) => sum + countUp(side / spacing), 0);
}

/** Ties along one side, the last of it not counted: as many in every bay, so that one sits at each post. */
function tiesAlong(side: number, bays: number): number {
  return bays * tiePoints([side / bays], TIE_SPACING);
}

/** Strips of a roll that make up a width: ⌈(W + 2·hem − lap)/(roll − lap)⌉. [m] */
export function stripsOf(width: number, roll: number, hem: number, lap: number): number {
  return Math.max(1, countUp((width + 2 * hem - lap) / (roll - lap)));
}

/** Of a square metre of frost cloth; `null` where no price is known. */
export interface FrostPrice {
  readonly price: number | null;
  readonly currency: string;
}

/**
 * @param gust Gust at which the pull of the taut cloth is shown. [m/s]
 * @param blocked Whether the wind is kept from passing below the roof.
 */
export function clothPlanOf(
  model: FrameModel,
  stock: readonly StockCloth[],
  gust: number,
  blocked: boolean,
  frostPrice: FrostPrice,
  units: Units,
): ClothPlan {
  const pieces = model.cloths.map((cloth) => clothPiece(cloth, stock, units));
  const span = Math.min(...model.rails.map((rail) => rail.span));
  const first = model.cloths[0];
  const pulls = upliftCoefficient(model.pitchDeg);
  const coefficient = model.kind === 'screen' ? SIDE_PUSH : blocked ? pulls.blocked : pulls.clear;
  const pressure = windPressure(gust) * coefficient * holesFactor(first.density);
  const sag = TAUT_SAG_SHARE * span;
  return {
    pieces,
    area: pieces.reduce((sum, piece) => sum + piece.finished[0] * piece.finished[1], 0),
    gap: GAP,
    tieSpacing: TIE_SPACING,
    pull: { perMetre: tautPull(pressure, span, sag), sag, gust },
    notes: clothNotes(model, units),
    frost: frostCloth(model, frostPrice, units),
  };
}

function clothPiece(cloth: FrameCloth, stock: readonly StockCloth[], units: Units): ClothPiece {
  const [along, across] = cloth.opening;
  const hangs = cloth.kind === 'drop';
  const [long, short] = [tiesAlong(along, cloth.bays[0]), tiesAlong(across, cloth.bays[1])];
  const ties = hangs ? long + 2 * short + 1 : 2 * (long + short);
  const tieSpacing = [along / long, across / short] as const;
  const sold = stock.filter((row) => row.density === undefined || Math.abs(row.density - cloth.density) <= 0.05);
  const panel = sold.map((row) => panelFor(row, along, across)).find((found) => found !== null);
  if (panel) {
    return {
      kind: cloth.kind,
      where: cloth.where,
      between: cloth.between,
      finished: panel,
      cut: panel,
      density: cloth.density,
      buy: 'ready-made',
      rollWidth: Math.min(...panel),
      strips: 1,
      seams: 0,
      rollLength: Math.max(...panel),
      ties,
      tieSpacing,
      direction: READY_MADE,
    };
  }
  const finished = [along - 2 * gapFor(along), across - (hangs ? 1 : 2) * gapFor(across)] as const;
  return {
    kind: cloth.kind,
    where: cloth.where,
    between: cloth.between,
    finished,
    density: cloth.density,
    buy: 'from the roll',
    ties,
    tieSpacing,
    ...fromRoll(finished, sold.filter(isRoll), units),
  };
}

/** A panel that fits the opening either way round, as it would hang. */
function panelFor(row: StockCloth, along: number, across: number): readonly [number, number] | null {
  if (row.length === undefined || isRoll(row)) return null;
  const fits = (opening: number, size: number): boolean => {
    const gap = (opening - size) / 2;
    return gap >= PANEL_GAP.least && gap <= PANEL_GAP.most;
  };
  if (fits(along, row.length) && fits(across, row.width)) return [row.length, row.width];
  return fits(along, row.width) && fits(across, row.length) ? [row.width, row.length] : null;
}

function isRoll(row: StockCloth): boolean {
  return row.length === undefined || row.length >= ROLL_FROM;
}

/** The roll and the direction that need fewest seams, then least cloth. */
function fromRoll(
  [along, across]: readonly [number, number],
  rolls: readonly StockCloth[],
  units: Units,
): Pick<ClothPiece, 'cut' | 'rollWidth' | 'strips' | 'seams' | 'rollLength' | 'direction'> {
  const widths = rolls.length > 0 ? rolls.map((roll) => roll.width) : [along];
  const way = (roll: number, run: number, over: number, lengthwise: boolean) => {
    const strips = stripsOf(over, roll, HEM, LAP);
    const length = run + 2 * HEM;
    return { roll, run, over, lengthwise, strips, length, area: strips * length * roll };
  };
  const best = widths
    .flatMap((roll) => [way(roll, along, across, true), way(roll, across, along, false)])
    .reduce((a, b) => (b.strips < a.strips || (b.strips === a.strips && b.area < a.area - ROUNDING) ? b : a));
  const cut: readonly [number, number] = [along + 2 * HEM, across + 2 * HEM];
  return {
    cut,
    rollWidth: best.roll,
    strips: best.strips,
    seams: best.strips - 1,
    rollLength: best.strips * best.length,
    direction: sewingWords(best, HEM, LAP, units),
  };
}

function gapFor(side: number): number {
  return Math.min(GAP, side / 20);
}

/**
 * One sheet over the roof and down to the ground, its corners folded; along a wall it ends at the rail. `null` for a
 * screen, and for a roof so tall that nobody throws a sheet over it from the ground.
 */
function frostCloth(model: FrameModel, { price, currency }: FrostPrice, units: Units): FrostCloth | null {
  const heights = model.posts.map((post) => post.height);
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  if (model.kind === 'screen' || high > FLEECE_REACH) return null;
  const [slope, width] = model.cloths[0].opening;
  const onWall = model.posts.some((post) => post.onWall === true);
  const alongEnds = onWall ? tallestPost(model) + FROST_SKIRT : low + high + 2 * FROST_SKIRT;
  const cut: readonly [number, number] = [slope + alongEnds, width + 2 * high + 2 * FROST_SKIRT];
  const weights = Math.ceil((2 * slope + (onWall ? 1 : 2) * width) / FROST_WEIGHT_SPACING);
  const cost = price === null ? null : `${(cut[0] * cut[1] * price).toFixed(0)} ${currency}`;
  return { cut, weights, sentence: frostWords(cut, { skirt: FROST_SKIRT, weights, cost, onWall }, units) };
}

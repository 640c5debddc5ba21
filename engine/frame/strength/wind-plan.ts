/**
 * What the wind does to this frame: uplift and side push by gust, what the tube bears, and when the cloth comes off.
 */

import type { Units } from '../../plan/units/units.ts';
import { postsOnGround, tallestPost } from '../layout/model.ts';
import type { FrameModel, FrameRail } from '../layout/model.ts';
import { windWording } from '../work/cautions.ts';
import { allowableLineLoad, asFlagpole, columnStrength, SAGS_BELOW, underPointLoad, underUniformLoad } from './beam.ts';
import type { BeamState } from './beam.ts';
import { signsOfGust } from './beaufort.ts';
import { strongestPush } from './side-push.ts';
import { stormWords, TAKE_DOWN_GUST, takeDownWords } from './storm-words.ts';
import { STEEL } from './tube.ts';
import type { TubeSection } from './tube.ts';
import type { GustRow, PostStrength, Span, StormPlan, UpliftPlan, WindRange } from './types.ts';
import {
  GRAVITY,
  gustOfLineLoad,
  gustOfSideLoad,
  holesFactor,
  sidePush,
  upliftCoefficient,
  upliftForce,
  windPressure,
} from './wind.ts';

const GUSTS = [8, 12, 15, 20, 25, 30];
/** Cloth as it weighs on a rail when its sag is judged, damp. [kg/m²] */
const DAMP_CLOTH = 0.2;
/** Somebody leans on a rail's middle, or on a post's top. [N] */
export const LEAN_ON_RAIL = 200;
export const LEAN_ON_POST = 100;
/** Length factor of a post fixed at its foot only, as AISC designs it (table C-A-7.1, from memory). */
const FREE_TOP = 2.1;

/** Each direction's rail as a beam under its own weight and the cloth's, and the gust that it bears. */
export function spansOf(model: FrameModel, tube: TubeSection): Span[] {
  return model.rails.map((rail) => {
    const { sag } = underUniformLoad(tube, (tube.mass + DAMP_CLOTH * rail.tributary) * GRAVITY, rail.span);
    const leaned = inMPa(underPointLoad(tube, LEAN_ON_RAIL, rail.span));
    const lineLoad = allowableLineLoad(tube, rail.span);
    const sagRatio = rail.span / sag;
    return {
      rail: rail.name,
      span: rail.span,
      sag,
      sagRatio,
      verdict: sagRatio < SAGS_BELOW ? 'sags' : 'holds its line',
      leaned,
      lineLoad,
      gust: railGust(model, lineLoad, rail),
    };
  });
}

/** @param ownWeight Of tube and dry cloth; wet cloth adds as much again as it weighs. [kg]  @param wetCloth [kg] */
export function postStrength(model: FrameModel, tube: TubeSection, ownWeight: number, wetCloth: number): PostStrength {
  const height = tallestPost(model);
  const share = Math.max(...postsOnGround(model).map((post) => post.share));
  return {
    height,
    leaned: inMPa(asFlagpole(tube, LEAN_ON_POST, height)),
    bracedMPa: model.freeTops ? null : bracedStress(model, tube) / 1e6,
    strength: columnStrength(tube, height, FREE_TOP),
    load: (ownWeight + wetCloth) * GRAVITY * share,
  };
}

/**
 * Bending stress of a pushed post where its brace or stay meets it. [Pa] Two posts of a braced face share the push, as
 * a frame with knee braces on pinned feet does; a stay holds its post alone, and only the top above it bends. Statics.
 */
export function bracedStress(model: FrameModel, tube: TubeSection): number {
  const { kind, tubes } = model;
  const meets = tubes.filter((one) => one.kind === 'brace' || one.kind === 'stay').map(({ from }) => from[2]);
  const height = tallestPost(model);
  const moment =
    kind === 'canopy'
      ? (LEAN_ON_POST / 2) * Math.max(0, ...meets)
      : LEAN_ON_POST * (height - Math.min(height, ...meets));
  return moment / tube.modulus;
}

function inMPa({ sag, stress }: BeamState): { sag: number; stressMPa: number } {
  return { sag, stressMPa: stress / 1e6 };
}

/** Gust at which the weakest rail, or a screen's post at the ground, passes the allowable stress. [m/s] */
export function bearingGust(model: FrameModel, tube: TubeSection): WindRange {
  const gusts = model.rails.map((rail) => railGust(model, allowableLineLoad(tube, rail.span), rail));
  const post = postGust(model, tube);
  return {
    clear: Math.min(post, ...gusts.map((gust) => gust.clear)),
    blocked: Math.min(post, ...gusts.map((gust) => gust.blocked)),
  };
}

/** Gust that a screen's unstayed post bears at the ground; ∞ for other frames. [m/s] */
export function postGust(model: FrameModel, tube: TubeSection): number {
  if (model.kind !== 'screen' || model.braced) return Infinity;
  const [screen] = model.standing;
  const most = Math.max(...model.posts.map((post) => post.share));
  const momentAtUnitGust = sidePush(1, screen.area * most, screen.density) * screen.height;
  return momentAtUnitGust > 0 ? Math.sqrt((STEEL.allowable * tube.modulus) / momentAtUnitGust) : Infinity;
}

/**
 * A drop's push adds to the pull of the roof, square to it; half of it goes into the posts through the ties along the
 * drop's sides (our choice).
 */
function railGust(model: FrameModel, lineLoad: number, { tributary, drop }: FrameRail): WindRange {
  const { density } = model.cloths[0];
  if (model.kind === 'screen') {
    const gust = gustOfSideLoad(lineLoad, tributary, density);
    return { clear: gust, blocked: gust };
  }
  const coefficient = upliftCoefficient(model.pitchDeg);
  const sideways = drop === null ? 0 : sidePush(1, drop.depth / 2, drop.density);
  return {
    clear: gustOfLineLoad(lineLoad, tributary, density, coefficient.clear, sideways),
    blocked: gustOfLineLoad(lineLoad, tributary, density, coefficient.blocked, sideways),
  };
}

export function upliftPlan(
  model: FrameModel,
  designGust: number,
  ownWeight: number,
  blockedBy: readonly string[],
  units: Units,
): UpliftPlan {
  const { density } = model.cloths[0];
  const gusts = [...new Set([...GUSTS, designGust])].toSorted((a, b) => a - b);
  return {
    formula: 'F = 0.613 · V² · C · Kp · A',
    sideFormula: model.standing.length > 0 ? 'F = 0.613 · V² · 1.2 · Kp · A' : null,
    area: model.roofArea,
    coefficient: upliftCoefficient(model.pitchDeg),
    holes: holesFactor(density),
    rows: gusts.map((gust): GustRow => {
      const uplift = upliftForce(gust, model.roofArea, density, model.pitchDeg);
      return {
        gust,
        pressure: windPressure(gust),
        uplift,
        sidePush: strongestPush(model, gust),
      };
    }),
    blockedBy,
    ownWeight,
    wording: windWording(units),
  };
}

/** @param blocked Whether the wind is kept from passing below the roof. */
export function stormPlan(
  model: FrameModel,
  tube: TubeSection,
  designGust: number,
  blocked: boolean,
  units: Units,
): StormPlan {
  const bears = bearingGust(model, tube);
  const limit = blocked ? bears.blocked : bears.clear;
  const takeDownGust = Math.floor(Math.min(TAKE_DOWN_GUST, limit));
  const { sign } = signsOfGust(takeDownGust);
  const takeDownWhy = takeDownWords(limit, limit < TAKE_DOWN_GUST, units);
  const drops = model.cloths.some(({ kind }) => kind === 'drop');
  return {
    designGust,
    takeDownGust,
    takeDownWhy,
    signs: sign,
    sentences: stormWords({ takeDownGust, sign, takeDownWhy, drops }, units),
  };
}

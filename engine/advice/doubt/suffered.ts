/** What the season's heat does at the points at which a plant is judged, and so to the plant. */

import {
  BURNS_FROM,
  gravest,
  type HeatVerdict,
  heatVerdict,
  judgeLeaf,
  type Judgement,
  lasts,
  newJudgement,
} from '../../load/leaf/judge.ts';
import type { LeafDay } from '../../load/leaf/leaf-day.ts';
import type { Watering } from '../../load/leaf/leaf.ts';
import { worthOf } from '../../plan/defaults.ts';
import { Kept } from '../../plan/kept.ts';
import type { Heats } from './heats.ts';
import type { Judge } from './judges.ts';
import type { Lit } from './light.ts';
import type { PartedLit } from './parted-light.ts';

/** What the season's heat does to one plant. */
export interface RayHarm {
  readonly judge: Judge;
  readonly id: string;
  readonly worth: number;
  /** Scorch dose, mean over the season's heat days. [K·h/day] */
  readonly harm: number;
  /** On the heatwave day, of its worst point. */
  readonly inHeat: HeatVerdict;
  /** Light on the heatwave day at its top, of a bed at its first point. [Wh/m²] */
  readonly light: number;
}

/** What the heat does at one point. */
export interface Suffered {
  /** Scorch doses, mean over the heat days. [K·h/day] */
  readonly dose: number;
  readonly inHeat: HeatVerdict;
}

export function sufferedAt({ rays, heatwave }: Heats, judge: Judge, lit: Lit): Suffered {
  let doses = 0;
  let longest = 0;
  rays.days.forEach(({ leaves }, d) => {
    const judged = judgedOn(leaves('thirsty', judge.row), judge, lit, d);
    doses += judged.dose;
    if (d === heatwave) ({ longest } = judged);
  });
  const watered = () => judgedOn(rays.days[heatwave].leaves('watered', judge.row), judge, lit, heatwave, BURNS_FROM);
  // With water a leaf is never the hotter for it.
  const inHeat = heatVerdict(longest, lasts(longest) ? watered().longest : 0);
  return { dose: doses / rays.days.length, inHeat };
}

const known = new Kept<Suffered>();

/** The same where the light is kept: yards that are held against each other share most of theirs. */
export function sufferedIn(heats: Heats, judge: Judge, lit: PartedLit): Suffered {
  return known.of([lit, judge.row, heats.air], String(judge.limit), () => sufferedAt(heats, judge, lit));
}

/** Scorch doses, mean over the heat days. [K·h/day] */
export function dosesAt({ rays }: Heats, judge: Judge, lit: Lit, watering: Watering, absorptance?: number): number {
  let doses = 0;
  for (let d = 0; d < rays.days.length; d++)
    doses += judgedOn(rays.days[d].leaves(watering, judge.row, absorptance), judge, lit, d).dose;
  return doses / rays.days.length;
}

const JUDGED = newJudgement();

/** Dose and time on end of one heat day; holds until the next question. @param over the limit, so much [K] */
function judgedOn(leaf: LeafDay, judge: Judge, { ofDay, around }: Lit, day: number, over = 0): Judgement {
  const limit = judge.limit + over;
  return judgeLeaf(leaf, ofDay[day], around[day], limit, leaf.hotSamples(limit), JUDGED);
}

/** A plant's harm is the mean of its points, what the heatwave day does to it that of the worst. */
export function harmFrom(judge: Judge, points: readonly Suffered[], light: number): RayHarm {
  const inHeat = gravest(points.map((point) => point.inHeat));
  return {
    judge,
    id: judge.feature.id,
    worth: worthOf(judge.feature),
    harm: points.reduce((sum, { dose }) => sum + dose, 0) / points.length,
    inHeat,
    light,
  };
}

export function lightOf({ rays, heatwave }: Heats, { ofDay, around }: Lit): number {
  const { moments, samples } = rays.days[heatwave];
  const shares = ofDay[heatwave];
  const { sky } = around[heatwave];
  let energy = 0;
  for (let k = 0; k < samples.count; k++) {
    const { beam, diffuse, sinAltitude } = moments[k];
    energy += (shares[k] * beam * sinAltitude + sky * diffuse) * samples.hours[k];
  }
  return energy;
}

import type { Climate } from '../../plan/types.ts';
import { type Finding, found } from '../estimate.ts';
import type { Spot } from './blend-normals.ts';
import type { ClimateType } from './climate-types.ts';
import { type KnownTemperatures } from './known-temperatures.ts';
import { nearestNormals, type NormalsFound } from './nearest-normals.ts';
import {
  climateTypeOf,
  HOT_AIR,
  likelyClimate,
  refusalOf,
  roughClimate,
  shiftWords,
  withKnownTemperatures,
} from './rough-climate.ts';

/** Where a climate is asked for, what the person knows of it, and the type to take instead of the towns near by. */
export interface ClimateAsked extends Spot {
  readonly timeZone: string;
  readonly known?: KnownTemperatures;
  /** Of `CLIMATE_TYPES`; absent: the towns near by, and where none is near the likely type. */
  readonly type?: string;
}

export interface PlaceClimate {
  readonly climate: Climate;
  /** What sun, wind and the hottest day are taken from, and all where no town is near. */
  readonly type: ClimateType;
  /** The towns that it comes from; none where it is the type's alone. */
  readonly near: NormalsFound['near'];
}

/** How far a climate type's months may be off from the place's, and those of a person's own three numbers. [K] */
const TYPE_OFF = 3;
const KNOWN_OFF = 1.5;

/**
 * A rough climate for a place: from the published normals of the towns around it, else by its likely climate type,
 * shifted to the person's own three numbers where they are given. `how` of its months says how far they may be off.
 */
export function placeClimate(asked: ClimateAsked): Finding<PlaceClimate> {
  const { latitude, known } = asked;
  const chosen = climateTypeOf(asked.type ?? '');
  const type = chosen ?? likelyClimate(asked);
  const refusal = known === undefined ? null : refusalOf(known, latitude);
  if (refusal !== null) return { ok: false, reason: refusal };
  const normals = chosen === undefined ? nearestNormals(asked, type) : null;
  if (!normals?.ok) {
    const rough = roughClimate(type, latitude, known);
    if (!rough.ok) return rough;
    const climate = { ...rough.value, how: guessed(known === undefined ? TYPE_OFF : KNOWN_OFF) };
    return found({ climate, type, near: [] }, normals === null ? rough.notes : [normals.reason, ...rough.notes]);
  }
  const { months, heatwaveHigh, near, pm, words, source } = normals.value;
  const own = known === undefined ? '' : `, shifted to ${shiftWords(known, latitude)}`;
  const base: Climate = {
    from: 'rough',
    source: `Rough: ${words}${own} (${source}).`,
    hotAir: HOT_AIR,
    heatwaveHigh,
    months,
    how: guessed(known === undefined ? pm : Math.min(pm, KNOWN_OFF)),
  };
  if (known === undefined) return found({ climate: base, type, near }, [base.source ?? '']);
  const shifted = withKnownTemperatures(base, latitude, known);
  const warmest = Math.max(known.hottest, ...shifted.months.map(({ high }) => high));
  return found({ climate: { ...shifted, heatwaveHigh: warmest }, type, near }, [base.source ?? '']);
}

function guessed(pm: number): Climate['how'] {
  return { months: { by: 'guess', pm: Math.round(10 * pm) / 10 } };
}

import { turnBetween, wrapBearing } from '../../plan/geometry/angles.ts';
import type { Estimate } from '../estimate.ts';
import type { NorthSighting } from './north.ts';

/** Two ways that differ by more than this are shown side by side, and the person says which to keep. [°] */
const DISAGREEMENT = 5;

export interface NorthTogether {
  /** Mean of the sightings, each weighed by 1/±²; its ± grows when they scatter more than their own ± allow. */
  readonly upBearing: Estimate;
  /** Largest difference between two sightings. [°] */
  readonly spread: number;
  /** The two that differ most, by their place in the list, where they differ by over 5°; else `null`. */
  readonly apart: readonly [number, number] | null;
  readonly notes: readonly string[];
}

const NAMES: Readonly<Record<NorthSighting['by'], string>> = {
  shadow: 'the shadow',
  vanish: "the wall's vanishing shadow",
  compass: 'the compass',
  picture: 'the picture',
};

/**
 * Several sightings as one. A wall's sighting takes the end that agrees with the others.
 * @throws RangeError without a sighting
 */
export function northTogether(sightings: readonly NorthSighting[]): NorthTogether {
  if (sightings.length === 0) throw new RangeError('North needs at least one sighting.');
  const settled = settleEnds(sightings);
  const weights = settled.map(({ pm }) => 1 / Math.max(pm, 0.01) ** 2);
  const sum = weights.reduce((total, weight) => total + weight, 0);
  const first = settled[0].value;
  const mean = first + settled.reduce((total, { value }, i) => total + weights[i] * turnBetween(first, value), 0) / sum;
  const scatter = settled.reduce((total, { value }, i) => total + weights[i] * turnBetween(mean, value) ** 2, 0);
  const stretch = settled.length > 1 ? Math.max(1, Math.sqrt(scatter / (settled.length - 1))) : 1;
  const { spread, pair } = furthest(settled);
  const apart = spread > DISAGREEMENT ? pair : null;
  return {
    upBearing: { value: wrapBearing(mean), pm: stretch / Math.sqrt(sum) },
    spread,
    apart,
    notes: apart === null ? [] : [quarrel(sightings, settled, apart)],
  };
}

/** Sightings with one answer say which end of a wall the sun was over. */
function settleEnds(sightings: readonly NorthSighting[]): Estimate[] {
  const sure = sightings.find(({ otherEnd }) => otherEnd === undefined) ?? sightings[0];
  return sightings.map(({ upBearing, otherEnd }) => {
    const flips =
      otherEnd !== undefined &&
      Math.abs(turnBetween(sure.upBearing.value, otherEnd)) <
        Math.abs(turnBetween(sure.upBearing.value, upBearing.value));
    return flips ? { value: otherEnd, pm: upBearing.pm } : upBearing;
  });
}

function furthest(estimates: readonly Estimate[]): { spread: number; pair: [number, number] } {
  let spread = 0;
  let pair: [number, number] = [0, 0];
  for (let i = 0; i < estimates.length; i++) {
    for (let j = i + 1; j < estimates.length; j++) {
      const apart = Math.abs(turnBetween(estimates[i].value, estimates[j].value));
      if (apart > spread) {
        spread = apart;
        pair = [i, j];
      }
    }
  }
  return { spread, pair };
}

function quarrel(
  sightings: readonly NorthSighting[],
  settled: readonly Estimate[],
  [i, j]: readonly [number, number],
): string {
  const say = (k: number): string =>
    `${NAMES[sightings[k].by]} says ${settled[k].value.toFixed(1)}° (± ${settled[k].pm.toFixed(1)}°)`;
  return (
    `Two ways to north differ by ${Math.abs(turnBetween(settled[i].value, settled[j].value)).toFixed(1)}°: ` +
    `${say(i)}, ${say(j)}. Which one do you keep?`
  );
}

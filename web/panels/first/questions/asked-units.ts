import { METRES_PER_FOOT } from '../../../../engine/index.ts';
import type { Units } from '../../../../engine/index.ts';
import { units } from '../../../state/yard.ts';
import { answers } from '../answers.ts';

/** The units answers are typed in: as chosen here, else as the open yard has them. */
export function askedUnits(): Units {
  return answers.value.units === '' ? units.value : answers.value.units;
}

/** A usual length in round numbers: "1.8 m", "6 ft". @param metres [m] */
export function inAsked(metres: number): string {
  return askedUnits() === 'metric' ? `${metres} m` : `${Math.round(metres / METRES_PER_FOOT)} ft`;
}

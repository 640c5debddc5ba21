import type { Units } from '../../../../engine/index.ts';
import { units } from '../../../state/yard.ts';
import { answers } from '../answers.ts';

/** The units answers are typed in: as chosen here, else as the open yard has them. */
export function askedUnits(): Units {
  return answers.value.units === '' ? units.value : answers.value.units;
}

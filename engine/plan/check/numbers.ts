/** Numbers of the file, and what is said of those that are none or too large. */

import type { NumberRule } from '../schema/form.ts';
import { show } from '../schema/say.ts';
import type { Spot } from './spot.ts';
import { called, wrong } from './spot.ts';

export function readNumber(rule: NumberRule, value: unknown, spot: Spot): number | undefined {
  const unit = rule.unit === undefined ? '' : rule.unit;
  if (typeof value !== 'number' || !Number.isFinite(value))
    return wrong(spot, `${called(spot)} must be a number${unit && ` in ${unit}`}, got ${show(value)}.`);
  if (inRange(value, rule)) return value;
  return wrong(
    spot,
    `${called(spot)} is ${value}${unit && ` ${unit}`}, but must be ${rangeText(rule)}${slipHint(value, rule)}.`,
  );
}

/** Two numbers, the lesser first. */
export function readPair(rule: NumberRule, pair: readonly unknown[], spot: Spot): readonly unknown[] | undefined {
  const [low, high] = pair;
  const right =
    pair.length === 2 &&
    typeof low === 'number' &&
    typeof high === 'number' &&
    low <= high &&
    inRange(low, rule) &&
    inRange(high, rule);
  return right
    ? pair
    : wrong(spot, `it must be two numbers from ${rule.min} to ${rule.max} ${rule.unit}, the lesser first.`);
}

export function inRange(value: number, { min, above, max, whole }: NumberRule): boolean {
  return (
    (min === undefined || value >= min) &&
    (above === undefined || value > above) &&
    (max === undefined || value <= max) &&
    (whole !== true || Number.isInteger(value))
  );
}

function rangeText({ min, above, max, unit, whole }: NumberRule): string {
  const units = unit === undefined ? '' : ` ${unit}`;
  const kind = whole === true ? 'a whole number ' : '';
  if (above !== undefined) return `${kind}above ${above}${max === undefined ? units : ` and at most ${max}${units}`}`;
  if (min !== undefined && max !== undefined) return `${kind}from ${min} to ${max}${units}`;
  return `${kind}${min === undefined ? `at most ${max}` : `at least ${min}`}${units}`;
}

/** People write 60 for 60 %, and °F for °C. */
function slipHint(value: number, { min, max, unit }: NumberRule): string {
  if (min === 0 && max === 1 && unit === undefined && value > 1 && value <= 100)
    return `: write ${value / 100} for ${value} %`;
  if (unit === '°C' && max !== undefined && value > max && value <= 150)
    return `: ${value} °F would be ${Math.round((value - 32) / 1.8)} °C`;
  return '';
}

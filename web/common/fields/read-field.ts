import { formatLength, formatTemperature, parseLength, parseNumber, parseTemperature } from '../../../engine/index.ts';
import type { Units } from '../../../engine/index.ts';
import type { NumberField } from './number-field.ts';

/** A typed number in the plan's own unit, or one sentence about it. `unusual` asks back before it is taken. */
export type FieldEntry =
  | { readonly ok: true; readonly value: number | undefined; readonly unusual: string | null }
  | { readonly ok: false; readonly message: string };

/** Reads what was typed into a field, its range and what is odd about it. */
export function readField(field: NumberField, text: string, units: Units): FieldEntry {
  if (text.trim() === '')
    return field.optional
      ? { ok: true, value: undefined, unusual: null }
      : { ok: false, message: `${field.label}: type a number, such as ${example(field, units)}.` };
  const value = parse(field, text, units);
  if (value === null)
    return { ok: false, message: `${field.label}: "${text}" is not a number such as ${example(field, units)}.` };
  if (value < field.least || value > field.most) {
    return {
      ok: false,
      message:
        `${field.label} must lie between ${showNumber(field, field.least, units)} and ` +
        `${showNumber(field, field.most, units)}; ${showNumber(field, value, units)} does not.`,
    };
  }
  return { ok: true, value, unusual: unusual(field, value, units) };
}

/**
 * What usually is as tall as a person and was typed lower than a knee is likely metres typed as feet: 1.8 for a wall.
 * [m]
 */
const PERSON = 1.5;
const KNEE = 0.61;

function unusual(field: NumberField, value: number, units: Units): string | null {
  const shown = showNumber(field, value, units);
  if (field.unusualAbove !== undefined && value >= field.unusualAbove)
    return `${field.label} ${shown}: is that meant? It is unusually much.`;
  if (field.unusualBelow !== undefined && value <= field.unusualBelow)
    return `${field.label} ${shown}: is that meant? It is unusually little.`;
  if (field.key === 'height' && units === 'imperial' && (field.suggested ?? 0) >= PERSON && value > 0 && value < KNEE)
    return `${field.label} ${shown}: is that meant? It is below the knee.`;
  return null;
}

function parse(field: NumberField, text: string, units: Units): number | null {
  switch (field.unit) {
    case 'length':
      return parseLength(text, units);
    case 'temperature':
      return parseTemperature(text, units);
    case 'percent': {
      const percent = parseNumber(text.replace(/%\s*$/, ''));
      return percent === null ? null : percent / 100;
    }
    case 'degrees':
      return parseNumber(text.replace(/\s*(°|degrees?|deg)\s*$/i, ''));
    case 'lux':
      return parseNumber(text.replace(/\s*(lux|lx)\s*$/i, ''));
    case 'count':
      return parseNumber(text);
  }
}

/** A field's number with its unit, as it stands in the box and in sentences. */
export function showNumber(field: NumberField, value: number, units: Units): string {
  switch (field.unit) {
    case 'length':
      return formatLength(value, units);
    case 'temperature':
      return formatTemperature(value, units, 1);
    case 'percent':
      return `${trimmed(value * 100)} %`;
    case 'degrees':
      return `${trimmed(value)}°`;
    case 'lux':
      return `${trimmed(value)} lux`;
    case 'count':
      return trimmed(value);
  }
}

function example(field: NumberField, units: Units): string {
  return showNumber(field, field.suggested ?? Math.max(field.least, Math.min(1, field.most)), units);
}

function trimmed(value: number): string {
  return String(Number(value.toFixed(1)));
}

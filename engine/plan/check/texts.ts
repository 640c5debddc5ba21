/** Texts of the file: days, times, zones and pictures, and what is said of those that are none. */

import { isCivilDate, isDay } from '../dates/dates.ts';
import type { TextForm } from '../schema/form.ts';
import { show } from '../schema/say.ts';
import { YEAR } from '../schema/site.ts';
import { inRange } from './numbers.ts';
import type { Spot } from './spot.ts';
import { called, wrong } from './spot.ts';

export function readText(form: TextForm['form'], value: unknown, spot: Spot): string | undefined {
  if (typeof value !== 'string') return wrong(spot, `${called(spot)} must be text, got ${show(value)}.`);
  const message = form === 'text' ? null : faultOf(form, value, spot);
  return message === null ? value : wrong(spot, message);
}

function faultOf(form: Exclude<TextForm['form'], 'text'>, value: string, spot: Spot): string | null {
  switch (form) {
    case 'id':
      return value.trim() === '' ? `${called(spot)} must not be empty.` : null;
    case 'month-day':
      return monthDayFault(value, called(spot), undefined);
    case 'season-day':
      return monthDayFault(value, called(spot), yearOf(value, spot));
    case 'civil-date':
      return isCivilDate(value) ? null : `${called(spot)} must be a real day written YYYY-MM-DD, got ${show(value)}.`;
    case 'clock-time':
      return isClockTime(value)
        ? null
        : `${called(spot)} must be a clock time written YYYY-MM-DDTHH:MM, without an offset, got ${show(value)}.`;
    case 'planted':
      return /^\d{4}$/.test(value) || isCivilDate(value)
        ? null
        : `${called(spot)} must be a year, "2024", or a day, "2024-03-10", got ${show(value)}.`;
    case 'zone':
      return isTimeZone(value) ? null : `${show(value)} is not a time zone of the IANA list, such as "Europe/Madrid".`;
    case 'image':
      return /^data:image\/(?:jpeg|png|webp|gif);base64,/.test(value)
        ? null
        : `${called(spot)} must be a JPEG, PNG, WebP or GIF picture inside the file ` +
            `("data:image/jpeg;base64,…"), got ` +
            `${show(value)}.`;
  }
}

/** 02-29 passes unless a year is given that has none. */
function monthDayFault(value: string, name: string, year: number | undefined): string | null {
  const parts = /^(\d\d)-(\d\d)$/.exec(value);
  if (parts === null) return `${name} must be a day written MM-DD, such as "06-01", got ${show(value)}.`;
  if (isDay(year ?? 2000, Number(parts[1]), Number(parts[2]))) return null;
  return `${name} is ${show(value)}, a day that ${year === undefined ? 'no year has' : `${year} does not have`}.`;
}

/** The year that an end of the season lies in, if the season says. */
function yearOf(value: string, { key, owner: { year, from } }: Spot): number | undefined {
  if (typeof year !== 'number' || !inRange(year, YEAR.rule)) return undefined;
  return key === 'to' && typeof from === 'string' && value < from ? year + 1 : year;
}

function isClockTime(value: string): boolean {
  const parts = /^(.{10})T([01]\d|2[0-3]):[0-5]\d(:[0-5]\d)?$/.exec(value);
  return parts !== null && isCivilDate(parts[1]);
}

function isTimeZone(zone: string): boolean {
  if (!/^[A-Za-z]/.test(zone)) return false;
  try {
    return new Intl.DateTimeFormat('en', { timeZone: zone }) instanceof Intl.DateTimeFormat;
  } catch {
    return false;
  }
}

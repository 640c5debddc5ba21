/** The year's work as an iCalendar file (RFC 5545): all-day events, stable identifiers, no clock. */

import type { CivilDate } from '../../plan/types.ts';
import { daysAfter } from '../../sun/days/calendar.ts';

const LINE_OCTETS = 75;

export interface CalendarEvent {
  /** Unique in the calendar, and the same whenever the same work is meant: its identifier is made of this alone. */
  readonly id: string;
  /** One word for what sort of work it is. */
  readonly kind: string;
  /** First and last day, both included. */
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly title: string;
  /** A line each. */
  readonly notes: readonly string[];
  /** Reminds at six in the evening so many days before; absent: not at all. At least 1. */
  readonly remindsDaysBefore?: number;
}

export interface CalendarRequest {
  /** Shown as the calendar's name. */
  readonly name: string;
  /** Which yard its events are of: part of every identifier, so that two yards' calendars never meet. */
  readonly yard: string;
  /**
   * When the calendar was made, "20260101T000000Z". The same plan must pass the same, else a second import is a change.
   */
  readonly stamp: string;
}

/** The events as a calendar file, lines ended by CRLF and folded at 75 octets. */
export function icalendar(events: readonly CalendarEvent[], { name, yard, stamp }: CalendarRequest): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Shadewright//Season//EN',
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    `X-WR-CALNAME:${escapedText(name)}`,
    ...events.flatMap((event) => eventLines(event, yard, stamp)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

function eventLines(event: CalendarEvent, yard: string, stamp: string): string[] {
  return [
    'BEGIN:VEVENT',
    `UID:${plainName(event.id)}@${plainName(yard)}.shadewright.invalid`,
    `DTSTAMP:${stamp}`,
    `DTSTART;VALUE=DATE:${basicDate(event.from)}`,
    // The end of an all-day event is the day after its last.
    `DTEND;VALUE=DATE:${basicDate(daysAfter(event.to, 1))}`,
    `SUMMARY:${escapedText(event.title)}`,
    ...(event.notes.length === 0 ? [] : [`DESCRIPTION:${escapedText(event.notes.join('\n'))}`]),
    `CATEGORIES:${escapedText(event.kind)}`,
    'TRANSP:TRANSPARENT',
    ...alarmLines(event),
    'END:VEVENT',
  ];
}

/** An all-day event begins at midnight: six hours before are six in the evening of the day before. */
function alarmLines({ title, remindsDaysBefore: days }: CalendarEvent): string[] {
  return days === undefined
    ? []
    : [
        'BEGIN:VALARM',
        'ACTION:DISPLAY',
        `DESCRIPTION:${escapedText(title)}`,
        `TRIGGER:-P${days - 1}DT6H`,
        'END:VALARM',
      ];
}

/**
 * Letters, digits and hyphens stay; every other character as its code between underscores, so that two names never
 * meet.
 */
function plainName(text: string): string {
  return [...text]
    .map((character) => (/[A-Za-z0-9-]/.test(character) ? character : `_${character.codePointAt(0)?.toString(16)}_`))
    .join('');
}

function basicDate(date: CivilDate): string {
  return date.replaceAll('-', '');
}

/** TEXT of RFC 5545 §3.3.11. Control characters that no calendar may hold are dropped. */
function escapedText(text: string): string {
  return (
    text
      .replaceAll(/\r\n?/g, '\n')
      // oxlint-disable-next-line no-control-regex -- control characters are what is taken out
      .replaceAll(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/g, '')
      .replaceAll('\\', '\\\\')
      .replaceAll(';', '\\;')
      .replaceAll(',', '\\,')
      .replaceAll('\n', '\\n')
  );
}

/**
 * A line in pieces of at most 75 octets of UTF-8, no character cut in two; each piece after the first begins with a
 * space.
 */
function folded(line: string): string {
  const pieces: string[] = [];
  let piece = '';
  let octets = 0;
  for (const character of line) {
    const size = utf8Octets(character);
    if (octets + size > LINE_OCTETS) {
      pieces.push(piece);
      piece = ' ';
      octets = 1;
    }
    piece += character;
    octets += size;
  }
  pieces.push(piece);
  return pieces.join('\r\n');
}

function utf8Octets(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}

import { type Finding, found, refused } from '../estimate.ts';

export interface Coordinates {
  /** North positive. [°] */
  readonly latitude: number;
  /** East positive. [°] */
  readonly longitude: number;
}

const HOW = 'Write latitude, then longitude: "37.88, −4.78" or "37°53′N 4°47′W".';
const NUMBER = /[+-]?\d+(?:[.,]\d+)?/g;
const ONE_NUMBER = /^[+-]?\d+(?:[.,]\d+)?$/;

/**
 * Coordinates as people type or paste them: decimal degrees, degrees with minutes and seconds, signs or the letters N S
 * E W (before or behind), decimal commas. Latitude first unless letters say otherwise.
 */
export function parseCoordinates(text: string): Finding<Coordinates> {
  const tidy = text
    .trim()
    .toUpperCase()
    .replaceAll(/[−–]/g, '-')
    .replaceAll('º', '°')
    .replaceAll(/[’′]/g, "'")
    .replaceAll(/[”″]|''/g, '"')
    .replaceAll(/\s+/g, ' ');
  if (tidy === '') return refused(`There is no place yet. ${HOW}`);
  const odd = /[^-+0-9NSEW.,;/°'" ]/.exec(tidy);
  if (odd !== null) return refused(`"${odd[0]}" does not belong in coordinates. ${HOW}`);
  return /[NSEW]/.test(tidy) ? fromLetters(tidy) : fromSigns(tidy);
}

function fromLetters(text: string): Finding<Coordinates> {
  const leading = /^[NSEW]/.test(text);
  const chunks = [...text.matchAll(leading ? /([NSEW])([^NSEW]+)/g : /([^NSEW]+)([NSEW])/g)].map((match) => ({
    letter: leading ? match[1] : match[2],
    body: leading ? match[2] : match[1],
  }));
  if (
    chunks.length !== 2 ||
    chunks.map(({ letter, body }) => (leading ? letter + body : body + letter)).join('').length !== text.length
  ) {
    return refused(`"${text}" does not hold one latitude and one longitude. ${HOW}`);
  }
  let latitude: number | null = null;
  let longitude: number | null = null;
  for (const { letter, body } of chunks) {
    if (/[+-]\d/.test(body))
      return refused(`"${body.trim()} ${letter}" has both a sign and a letter: keep one of them.`);
    const angle = angleOf(body.replace(/^[,;/ ]+|[,;/ ]+$/g, ''));
    if (!angle.ok) return angle;
    const signed = letter === 'S' || letter === 'W' ? -angle.value : angle.value;
    if (letter === 'N' || letter === 'S') latitude = signed;
    else longitude = signed;
  }
  if (latitude === null || longitude === null)
    return refused(`Both numbers carry the letter of the same direction. ${HOW}`);
  return inRange(latitude, longitude);
}

function fromSigns(text: string): Finding<Coordinates> {
  const parts = text.includes('°')
    ? text.match(/[+-]?\d+(?:[.,]\d+)? ?°[^°]*?(?=[;, ]*[+-]?\d+(?:[.,]\d+)? ?°|$)/g)
    : decimalParts(text);
  if (parts?.length !== 2) return refused(`"${text}" does not hold one latitude and one longitude. ${HOW}`);
  const latitude = angleOf(parts[0].replace(/[,; ]+$/, ''));
  if (!latitude.ok) return latitude;
  const longitude = angleOf(parts[1].trim());
  if (!longitude.ok) return longitude;
  return inRange(latitude.value, longitude.value);
}

/** A comma separates or marks decimals: tried from the plainest reading to the most crowded. */
function decimalParts(text: string): string[] | null {
  for (const separator of [/ ?[;/] ?/, / ?, | ,/, / /, /,/]) {
    const parts = text.split(separator);
    if (parts.length === 2 && parts.every((part) => ONE_NUMBER.test(part))) return parts;
  }
  const commas = text.split(',');
  return commas.length === 4 ? [`${commas[0]}.${commas[1]}`, `${commas[2]}.${commas[3]}`] : null;
}

/** One angle of up to three numbers: degrees, minutes, seconds. */
function angleOf(text: string): Finding<number> {
  const numbers: readonly string[] = text.match(NUMBER) ?? [];
  if (numbers.length < 1 || numbers.length > 3 || text.replaceAll(NUMBER, '').replaceAll(/[°'" ]/g, '') !== '')
    return refused(`"${text}" is no angle. ${HOW}`);
  const [degrees, minutes = 0, seconds = 0] = numbers.map((number) => Number(number.replace(',', '.')));
  if (numbers.slice(0, -1).some((number) => /[.,]/.test(number)))
    return refused(`In "${text}" only the last number may have decimals.`);
  if (minutes < 0 || minutes >= 60 || seconds < 0 || seconds >= 60)
    return refused(`In "${text}" minutes and seconds run from 0 to 59.`);
  const size = Math.abs(degrees) + minutes / 60 + seconds / 3600;
  return found(numbers[0].startsWith('-') ? -size : size);
}

function inRange(latitude: number, longitude: number): Finding<Coordinates> {
  if (Math.abs(latitude) > 90 && Math.abs(longitude) <= 90)
    return refused(`A latitude of ${latitude}° is beyond 90°: was the longitude written first?`);
  if (Math.abs(latitude) > 90) return refused(`A latitude of ${latitude}° is beyond 90°.`);
  if (Math.abs(longitude) > 180) return refused(`A longitude of ${longitude}° is beyond 180°.`);
  return found({ latitude, longitude });
}

/** The site: where the yard is, how it lies, what was observed there. */
import { BEARING, checkCellCount, checkHow, checkOutline, SURFACES } from './rules.ts';
import { DEFAULTS } from '../defaults.ts';
import { distance } from '../geometry/shapes.ts';
import {
  eitherOf,
  readClockTime,
  readNumber,
  readObject,
  readOwners,
  readPoint,
  readPoints,
  readText,
  readWord,
  report,
  show,
} from './reader.ts';
import type { NumberRule, Owner } from './reader.ts';

const DOUBT: NumberRule = { min: 0, max: 180, unit: 'degrees' };
const OBSERVATIONS = ['shadow', 'vanish', 'compass', 'picture'] as const;

export function checkSite(plan: Owner): void {
  const site = readObject(plan, 'site', 'Site', 'required');
  if (site === undefined) return;
  readNumber(site, 'latitude', { min: -90, max: 90, unit: 'degrees' }, 'required');
  readNumber(site, 'longitude', { min: -180, max: 180, unit: 'degrees' }, 'required');
  readNumber(site, 'elevation', { min: -500, max: 9000, unit: 'm' }, 'optional');
  checkTimeZone(site);
  readNumber(site, 'upBearing', BEARING, 'optional');
  checkBoundary(site);
  readWord(site, 'shelter', ['open', 'sheltered', 'court'], 'optional');
  readWord(site, 'surface', SURFACES, 'optional');
  checkSkyline(site);
  checkUnderlay(site);
  for (const item of readOwners(site, 'northFrom', 'optional', (_, index) => `North observation ${index + 1}`))
    checkObservation(item);
  const pace = readObject(site, 'pace', 'Pace', 'optional');
  if (pace !== undefined) {
    readNumber(pace, 'steps', { above: 0, max: 10_000 }, 'required');
    readNumber(pace, 'length', { above: 0, max: 10_000, unit: 'm' }, 'required');
  }
  const rules = readObject(site, 'rules', 'Rules', 'optional');
  if (rules !== undefined) {
    readNumber(rules, 'maxHeight', { above: 0, max: 500, unit: 'm' }, 'optional');
    readNumber(rules, 'setback', { min: 0, max: 500, unit: 'm' }, 'optional');
    readText(rules, 'note', 'optional');
  }
  readPoint(site, 'tap', 'optional');
  readNumber(site, 'hose', { min: 0, max: 1000, unit: 'm' }, 'optional');
  checkHow(site);
}

function checkTimeZone(site: Owner): void {
  const zone = readText(site, 'timeZone', 'required');
  if (zone !== undefined && !isTimeZone(zone))
    report(site, 'timeZone', `${show(zone)} is not a time zone of the IANA list, such as "Europe/Madrid".`);
}

function isTimeZone(zone: string): boolean {
  if (!/^[A-Za-z]/.test(zone)) return false;
  try {
    return new Intl.DateTimeFormat('en', { timeZone: zone }) instanceof Intl.DateTimeFormat;
  } catch {
    return false;
  }
}

function checkBoundary(site: Owner): void {
  const ring = checkOutline(site, 'boundary');
  if (ring !== undefined) checkCellCount(site, 'boundary', ring, DEFAULTS.cell);
}

function checkSkyline(site: Owner): void {
  const seen = new Set<number>();
  const points = readOwners(site, 'skyline', 'optional', (_, index) => `Skyline point ${index + 1}`);
  for (const point of points) {
    const azimuth = readNumber(point, 'azimuth', { min: 0, max: 360, unit: 'degrees' }, 'required');
    readNumber(point, 'altitude', { min: -90, max: 90, unit: 'degrees' }, 'required');
    if (azimuth === undefined) continue;
    if (seen.has(azimuth % 360))
      report(point, 'azimuth', `there is already a point at azimuth ${azimuth % 360} degrees.`);
    seen.add(azimuth % 360);
  }
  if (Array.isArray(site.object.skyline) && site.object.skyline.length === 0)
    report(site, 'skyline', 'skyline has no points; leave it out for a level horizon.');
}

function checkUnderlay(site: Owner): void {
  const underlay = readObject(site, 'underlay', 'Underlay', 'optional');
  if (underlay === undefined) return;
  const image = readText(underlay, 'image', 'required');
  if (image !== undefined && !/^data:image\/(?:jpeg|png|webp|gif);base64,/.test(image)) {
    report(
      underlay,
      'image',
      `image must be a JPEG, PNG, WebP or GIF picture inside the file ("data:image/jpeg;base64,…"), got ` +
        `${show(image)}.`,
    );
  }
  readPoint(underlay, 'at', 'required');
  readNumber(underlay, 'width', { above: 0, max: 20_000, unit: 'm' }, 'required');
  readNumber(underlay, 'turn', { min: -3600, max: 3600, unit: 'degrees' }, 'optional');
  readNumber(underlay, 'opacity', { min: 0, max: 1 }, 'optional');
}

function checkObservation(item: Owner): void {
  const by = readText(item, 'by', 'required');
  if (by === undefined) return;
  readNumber(item, 'pm', DOUBT, 'optional');
  switch (by) {
    case 'shadow':
      checkLine(item, 'line');
      readClockTime(item, 'when');
      break;
    case 'vanish':
      checkLine(item, 'along');
      readClockTime(item, 'when');
      break;
    case 'compass':
      readNumber(item, 'reading', BEARING, 'required');
      checkLine(item, 'along');
      readNumber(item, 'declination', { min: -180, max: 180, unit: 'degrees' }, 'optional');
      break;
    case 'picture':
      readNumber(item, 'bearing', BEARING, 'required');
      break;
    default:
      report(item, 'by', `${show(by)} is not a way to find north; it must be ${eitherOf(OBSERVATIONS)}.`);
  }
}

/** Two different points. */
function checkLine(owner: Owner, key: string): void {
  const line = readPoints(owner, key);
  if (line === undefined) return;
  if (line.length !== 2 || distance(line[0], line[1]) === 0) report(owner, key, `${key} must be two different points.`);
}

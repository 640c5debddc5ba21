import { parseNumber, parseSide, sunAtMs, wrapBearing } from '../../../engine/index.ts';
import type { Knowledge, Site } from '../../../engine/index.ts';

/** How a person can tell at once which way the sheet lies. */
export const NORTH_WAYS = {
  unknown: 'I do not know yet',
  facing: 'I know which way the house or the street looks',
  shadow: 'The sun is out: by my own shadow',
  phone: 'By a compass, or this phone’s',
} as const;
type NorthWay = keyof typeof NORTH_WAYS;

/** The eight ways on the sheet, by the bearing that they would have if its top were north. */
export const SHEET_WAYS = {
  NW: 'up left',
  N: 'up',
  NE: 'up right',
  W: 'left',
  E: 'right',
  SW: 'down left',
  S: 'down',
  SE: 'down right',
} as const;
type SheetWay = keyof typeof SHEET_WAYS;

/** What was said of it, as it was said. */
export interface NorthAnswers {
  readonly northBy: NorthWay;
  readonly facing: SheetWay;
  readonly shadowTo: SheetWay;
  /** When the shadow was looked at. [ms] */
  readonly shadowAtMs: number;
  /** What a compass reads towards the top of the sheet, as typed. */
  readonly heading: string;
}

/** One of eight ways is good to half of the step between two. [°] */
const EIGHTH_PM = 22.5;
/** A phone held by hand, true north not told from the needle's. Our choice. [°] */
const PHONE_PM = 15;
/** Nothing is known: the sheet may lie any way round. [°] */
const UNKNOWN_PM = 180;
/** Lower, and a shadow leaves the yard. [°] */
const LEAST_SUN = 3;

export type FoundNorth =
  | { readonly ok: true; readonly upBearing: number; readonly how: Knowledge }
  | { readonly ok: false; readonly message: string };

/** Which way the top of the sheet looks, and how far that may be off. */
export function northOf(
  { northBy, facing, shadowTo, shadowAtMs, heading }: NorthAnswers,
  place: Pick<Site, 'latitude' | 'longitude' | 'timeZone'>,
): FoundNorth {
  switch (northBy) {
    case 'unknown':
      return { ok: true, upBearing: 0, how: { by: 'guess', pm: UNKNOWN_PM } };
    case 'facing':
      return { ok: true, upBearing: bearingOf(facing), how: { by: 'guess', pm: EIGHTH_PM } };
    case 'shadow': {
      const { altitude, azimuth } = sunAtMs(shadowAtMs, place);
      if (altitude < LEAST_SUN)
        return { ok: false, message: 'The sun is down there now, or too low: say it another way, or skip this.' };
      return {
        ok: true,
        upBearing: wrapBearing(azimuth + 180 - bearingOf(shadowTo)),
        how: { by: 'shadow', pm: EIGHTH_PM },
      };
    }
    case 'phone': {
      const read = parseNumber(heading.replace('°', ''));
      if (read === null || read < 0 || read > 360)
        return { ok: false, message: 'Type what the compass reads towards the top of the sheet, from 0 to 360.' };
      return { ok: true, upBearing: wrapBearing(read), how: { by: 'compass', pm: PHONE_PM } };
    }
  }
}

function bearingOf(way: SheetWay): number {
  const side = parseSide(way);
  return typeof side === 'number' ? side : 0;
}

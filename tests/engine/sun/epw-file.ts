import { DAYS_PER_MONTH } from '../../../engine/sun/weather/weather.ts';

/** What one row of a made weather file says; the rest of its 35 columns are the format's "missing" codes. */
export interface EpwRow {
  readonly air?: number | string;
  readonly humidity?: number | string;
  readonly beam?: number | string;
  readonly diffuse?: number | string;
  readonly wind?: number | string;
  readonly minute?: number;
}

export interface EpwFile {
  readonly location?: string;
  readonly recordsPerHour?: number;
  readonly leapYear?: boolean;
  /** Of a month, day and the hour's stamp, 1 to 24. */
  readonly row?: (month: number, day: number, hour: number) => EpwRow;
}

export const LOCATION = 'LOCATION,Somewhere,-,ESP,made for a test,999999,37.9,-4.8,1.0,110.0';

/**
 * A whole year in the format of the EPW Data Dictionary (EnergyPlus Auxiliary Programs), invented throughout; years
 * differ from month to month, as in typical years.
 */
export function epwLines({
  location = LOCATION,
  recordsPerHour = 1,
  leapYear = false,
  row = () => ({}),
}: EpwFile = {}): string[] {
  const lines = [
    location,
    'DESIGN CONDITIONS,0',
    'TYPICAL/EXTREME PERIODS,0',
    'GROUND TEMPERATURES,0',
    `HOLIDAYS/DAYLIGHT SAVINGS,${leapYear ? 'Yes' : 'No'},0,0,0`,
    'COMMENTS 1,invented',
    'COMMENTS 2,',
    `DATA PERIODS,1,${recordsPerHour},Data,Sunday, 1/ 1,12/31`,
  ];
  DAYS_PER_MONTH.forEach((days, index) => {
    const month = index + 1;
    for (let day = 1; day <= (leapYear && month === 2 ? 29 : days); day++) {
      for (let hour = 1; hour <= 24; hour++) {
        const { air = 25.5, humidity = 31, beam = 0, diffuse = 0, wind = 1.5, minute = 60 } = row(month, day, hour);
        lines.push(
          `${2001 + month},${month},${day},${hour},${minute},?9?9?9?9E0,${air},99.9,${humidity}` +
            `,999999,9999,9999,9999,9999,${beam},${diffuse},` +
            `999900,999900,999900,9999,999,${wind},99,99,9999,99999,9,999999999,999,.999,999,99,999,999,99`,
        );
      }
    }
  });
  return lines;
}

/** A made weather file as bytes, each character one byte (Latin-1). */
export function epwBytes(lines: readonly string[], newline: '\n' | '\r\n' = '\n'): Uint8Array {
  return Uint8Array.from(Buffer.from(lines.join(newline) + newline, 'latin1'));
}

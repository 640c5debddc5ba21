import { answerSheet, sheet } from './advice-methods/field-sheet.ts';
import { height } from './advice-methods/height.ts';
import { north } from './advice-methods/north.ts';
import { skyFrom } from './advice-methods/sky-from.ts';
import { weatherFile } from './advice-methods/weather-file.ts';
import { whereabouts } from './advice-methods/whereabouts.ts';
import { why } from './advice-methods/why.ts';
import type { Method } from './protocol.ts';

/**
 * What the first stages ask beyond the map: finding out the place, north, heights, the field sheet, and why something
 * burnt.
 */
export const methods = { answerSheet, height, north, sheet, skyFrom, weatherFile, whereabouts, why } satisfies Record<
  string,
  Method
>;

export type SurveyMethods = typeof methods;

import { check } from './check.ts';
import { compare } from './compare.ts';
import { doubt } from './doubt.ts';
import { load } from './load.ts';
import { place } from './place.ts';
import { report } from './report.ts';
import { review } from './review.ts';
import { season } from './season.ts';
import { sheet } from './sheet.ts';
import { site } from './site.ts';
import { spot } from './spot.ts';
import { SURVEY_VERBS } from './survey.ts';
import type { Verb } from './verb.ts';
import { why } from './why.ts';

/** Every verb of the command line, in the order of the help: add a line to bring in one more. */
export const VERBS: readonly Verb[] = [
  check,
  load,
  spot,
  compare,
  site,
  place,
  sheet,
  season,
  review,
  why,
  doubt,
  report,
  ...SURVEY_VERBS,
];

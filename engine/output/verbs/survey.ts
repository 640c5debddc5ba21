import { surveyHeight } from './survey-height.ts';
import { surveyPace, surveyScale, surveyTape, surveyWalk } from './survey-lengths.ts';
import { surveyMarks } from './survey-marks.ts';
import { surveyNorth } from './survey-north.ts';
import { surveyPlace } from './survey-place.ts';
import { surveyClimate, surveyShadows } from './survey-sun.ts';
import type { Verb } from './verb.ts';

/** What a person can find out with a tape, a pole and a clock. */
export const SURVEY_VERBS: readonly Verb[] = [surveyPlace, surveyNorth, surveyHeight, surveyMarks, surveyTape, surveyWalk, surveyPace, surveyScale, surveyShadows, surveyClimate];

import type { Verb } from './verb.ts';

/** A verb by its name alone: it is loaded when asked for, with the part of the engine behind it. */
export interface NamedVerb {
  readonly name: string;
  load(): Promise<Verb>;
}

/** Every verb of the command line, in the order of the help: add a line to bring in one more. */
export const VERBS: readonly NamedVerb[] = [
  { name: 'check', load: async () => (await import('./check.ts')).check },
  { name: 'load', load: async () => (await import('./load.ts')).load },
  { name: 'spot', load: async () => (await import('./spot.ts')).spot },
  { name: 'compare', load: async () => (await import('./compare.ts')).compare },
  { name: 'site', load: async () => (await import('./site.ts')).site },
  { name: 'place', load: async () => (await import('./place.ts')).place },
  { name: 'sheet', load: async () => (await import('./sheet.ts')).sheet },
  { name: 'season', load: async () => (await import('./season.ts')).season },
  { name: 'review', load: async () => (await import('./review.ts')).review },
  { name: 'why', load: async () => (await import('./why.ts')).why },
  { name: 'doubt', load: async () => (await import('./doubt.ts')).doubt },
  { name: 'draw', load: async () => (await import('./draw.ts')).draw },
  { name: 'outlines', load: async () => (await import('./outlines.ts')).outlines },
  { name: 'report', load: async () => (await import('./report.ts')).report },
  // What a person can find out with a tape, a pole and a clock.
  { name: 'survey place', load: async () => (await import('./survey-place.ts')).surveyPlace },
  { name: 'survey north', load: async () => (await import('./survey-north.ts')).surveyNorth },
  { name: 'survey height', load: async () => (await import('./survey-height.ts')).surveyHeight },
  { name: 'survey marks', load: async () => (await import('./survey-marks.ts')).surveyMarks },
  { name: 'survey tape', load: async () => (await import('./survey-lengths.ts')).surveyTape },
  { name: 'survey walk', load: async () => (await import('./survey-lengths.ts')).surveyWalk },
  { name: 'survey pace', load: async () => (await import('./survey-lengths.ts')).surveyPace },
  { name: 'survey scale', load: async () => (await import('./survey-lengths.ts')).surveyScale },
  { name: 'survey shadows', load: async () => (await import('./survey-sun.ts')).surveyShadows },
  { name: 'survey climate', load: async () => (await import('./survey-sun.ts')).surveyClimate },
];

/** The verb that an argument list begins with, alone; where it begins with none, all of them, to tell what there is. */
export async function verbsFor(argv: readonly string[]): Promise<Verb[]> {
  const asked = VERBS.filter(({ name }) => argv.slice(0, name.split(' ').length).join(' ') === name);
  return Promise.all((asked.length > 0 ? asked : VERBS).map((verb) => verb.load()));
}

/**
 * Every method that can be asked of the engine, and by whom it is answered; the functions that answer stand in
 * `answers/`, one file a worker, and are held to this table by the compiler.
 *
 * - `map`: what the map is painted by.
 * - `survey`: finds things out, beside what the map is being reckoned for.
 * - `advice`: the later stages; their long searches never hold up the map.
 * - `search`: what somebody waits for; it does not queue behind a comparison that nobody asked for.
 * - `quick`: answered while one looks, the field sheet too; no search and no comparison stands before it.
 * - `trial`: what is moved about by hand; nothing stands before it, and what it has laid out stays.
 */
export const METHODS = {
  day: 'map',
  load: 'map',
  spot: 'map',

  height: 'survey',
  north: 'survey',
  skyFrom: 'survey',
  weatherFile: 'survey',
  why: 'survey',

  cheaper: 'advice',
  compare: 'advice',
  doubt: 'advice',
  letter: 'advice',
  nextStep: 'advice',
  place: 'advice',
  report: 'advice',
  review: 'advice',
  season: 'advice',
  sunEyes: 'advice',
  tomorrow: 'advice',
  weeksAt: 'advice',

  lookOver: 'search',
  moreForms: 'search',
  site: 'search',

  answerSheet: 'quick',
  ground: 'quick',
  hidden: 'quick',
  marks: 'quick',
  payoff: 'quick',
  section: 'quick',
  shadowEdge: 'quick',
  sheet: 'quick',

  potThere: 'trial',
  trial: 'trial',
} as const;

export type MethodName = keyof typeof METHODS;
export type BridgeName = (typeof METHODS)[MethodName];

/** The methods of some bridges. */
export type MethodsOf<B extends BridgeName> = {
  [M in MethodName]: (typeof METHODS)[M] extends B ? M : never;
}[MethodName];

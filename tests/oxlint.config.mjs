import { readdirSync } from 'node:fs';

// The house's arrows, said once: what each room of the engine may import beside itself, types included.
// Paths are matched as written in the import, so no room inside another may bear the name of one of these.
const UPSTREAM = {
  plan: [],
  sun: ['plan'],
  scene: ['plan'],
  survey: ['plan', 'sun'],
  frame: ['plan'],
  cast: ['plan', 'sun', 'scene'],
  load: ['plan', 'sun', 'scene', 'cast'],
  advice: ['plan', 'sun', 'scene', 'cast', 'load', 'survey', 'frame'],
  output: ['plan', 'sun', 'scene', 'cast', 'load', 'survey', 'frame', 'advice'],
};
/** The same for the page, which imports the engine through its face and whose shell, `app`, may import every room. */
const WEB_UPSTREAM = {
  common: [],
  worker: ['common'],
  charts: ['common'],
  state: ['common', 'worker'],
  map: ['common', 'charts', 'state'],
  panels: ['common', 'charts', 'state', 'map'],
};
const WEB_ROOMS = [...Object.keys(WEB_UPSTREAM), 'app'];
/** Panels do not import each other: what they share stands in this room of theirs, which imports none of them. */
const PANEL_PARTS = 'parts';
const PANELS = readdirSync(new URL('../web/panels', import.meta.url));
/** Libraries that enter the engine in one room only. */
const HOME_OF = { suncalc: 'sun', magvar: 'survey', '@turf/*': 'plan/geometry' };
/** Tests hold the engine against these; it does without them. */
const REFERENCES = ['@photostructure/tz-lookup', 'temporal-polyfill', 'temporal-polyfill/**'];
const PAGE = ['**/web/**', 'leaflet', 'leaflet/**', 'preact', 'preact/**', '@preact/**', 'idb-keyval', 'node:*'];
const FACE = ['../index.ts', '../../index.ts', '../../../index.ts', '**/cli.ts'];

const LONGEST_FUNCTION = { max: 60, skipBlankLines: true, skipComments: true };

const rooms = Object.keys(UPSTREAM);
const noClock = 'The engine knows no page, no clock and no network.';
const noLuck = { object: 'Math', property: 'random', message: 'Randomness comes with a seed.' };
const turfAtHome = { group: ['@turf/*'], message: 'Turf stands in engine/plan/geometry only.' };
const throughFace = {
  group: ['**/engine/*', '**/engine/*/**', '!**/engine/index.ts'],
  message: 'The page imports the engine through engine/index.ts.',
};

function restricted(...patterns) {
  return { 'no-restricted-imports': ['error', { patterns }] };
}

/** @param home The part of the room, where a library enters there alone. */
function roomRules(room, home = room) {
  const downstream = rooms.filter((other) => other !== room && !UPSTREAM[room].includes(other));
  const strangers = Object.keys(HOME_OF).filter((library) => HOME_OF[library] !== home && HOME_OF[library] !== room);
  const message =
    `engine/${room} may import only from ${UPSTREAM[room].join(', ') || 'nothing upstream'} ` +
    `(DEVELOPERS.md, the arrows).`;
  return restricted(
    { group: [...downstream.map((other) => `**/${other}/**`), ...FACE], message },
    { group: PAGE, message: 'The engine knows no page and no machine.' },
    ...strangers.map((library) => ({
      group: [library],
      message: `${library} enters the engine in engine/${HOME_OF[library]} only.`,
    })),
    { group: REFERENCES, message: 'Tests hold the engine against this library; the engine does without it.' },
  );
}

const noLeaflet = { group: ['leaflet', 'leaflet/**'], message: 'Leaflet stands in web/map only.' };
const throughAsk = {
  group: ['**/worker/**', '!**/worker/ask.ts'],
  message: 'The page asks its workers through web/worker/ask.ts.',
};

function webRules(room, ...more) {
  const downstream = WEB_ROOMS.filter((other) => other !== room && !WEB_UPSTREAM[room].includes(other));
  return restricted(
    throughFace,
    turfAtHome,
    {
      group: downstream.flatMap((other) => [`**/${other}/**`]),
      message: `web/${room} may import only from ${WEB_UPSTREAM[room].join(', ') || 'the engine'} (DEVELOPERS.md).`,
    },
    ...(room === 'map' ? [] : [noLeaflet]),
    ...more,
  );
}

function panelRules(panel) {
  const others = PANELS.filter((other) => other !== panel && other !== PANEL_PARTS);
  return webRules('panels', {
    group: others.map((other) => `**/${other}/**`),
    message: `Panels do not import each other; what they share stands in web/panels/${PANEL_PARTS}.`,
  });
}

export default {
  plugins: ['typescript', 'import', 'unicorn', 'oxc'],
  categories: { correctness: 'error' },
  rules: {
    'typescript/no-explicit-any': 'error',
    'typescript/consistent-type-imports': 'error',
    'import/no-cycle': ['error', { ignoreTypes: false }],
    'no-console': 'off',
    'no-eval': 'error',
    eqeqeq: 'error',
    'prefer-const': 'error',
  },
  overrides: [
    {
      files: ['**/engine/**/*.ts'],
      rules: {
        'no-restricted-globals': [
          'error',
          ...['Date', 'document', 'window', 'performance', 'fetch', 'navigator', 'localStorage', 'setTimeout'].map(
            (name) => ({ name, message: noClock }),
          ),
        ],
        'no-restricted-properties': ['error', noLuck],
      },
    },
    {
      files: ['**/engine/sun/position.ts', '**/engine/sun/days/calendar.ts'],
      rules: {
        'no-restricted-globals': 'off',
        'no-restricted-properties': [
          'error',
          { object: 'Date', property: 'now', message: 'The engine has no clock.' },
          noLuck,
        ],
      },
    },
    ...rooms.map((room) => ({ files: [`**/engine/${room}/**/*.ts`], rules: roomRules(room) })),
    { files: ['**/engine/plan/geometry/**/*.ts'], rules: roomRules('plan', 'plan/geometry') },
    {
      files: ['**/engine/cli.ts'],
      rules: {
        'no-restricted-globals': 'off',
        ...restricted({
          group: ['./{scene,cast,survey,frame,load,advice}/**', './index.ts'],
          message: 'The command line reads plans and runs verbs; what a verb computes is loaded with it.',
        }),
      },
    },
    { files: ['**/web/**/*.ts', '**/web/**/*.tsx'], rules: restricted(throughFace, turfAtHome) },
    ...Object.keys(WEB_UPSTREAM).map((room) => ({
      files: [`**/web/${room}/**`],
      rules: room === 'state' ? webRules(room, throughAsk) : webRules(room),
    })),
    ...PANELS.map((panel) => ({ files: [`**/web/panels/${panel}/**`], rules: panelRules(panel) })),
    { files: ['**/web/worker/**'], rules: { 'import/default': 'off' } },
    { files: ['**/engine/**', '**/web/**'], rules: { 'max-lines-per-function': ['error', LONGEST_FUNCTION] } },
    // Relative to this folder: the tests, which may look anywhere.
    {
      files: ['engine/**', 'web/**'],
      rules: {
        'max-lines-per-function': 'off',
        'no-restricted-globals': 'off',
        'no-restricted-imports': 'off',
        'no-restricted-properties': 'off',
      },
    },
  ],
  ignorePatterns: ['node_modules', 'dist'],
};

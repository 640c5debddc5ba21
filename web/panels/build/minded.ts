import { type Caution, reminderOf, type Units } from '../../../engine/index.ts';

/** Work at which there is something to mind. */
export type MindedWork = keyof typeof MINDED;

/** Which cautions are told whole at which work, once on the sheet, and which are only reminded of there. */
const MINDED = {
  'Shopping list': { whole: [], short: ['pvc'] },
  'Tools and time': { whole: ['heat', 'pvc', 'fire'], short: ['cloth-off', 'ladder'] },
  'Cut list': { whole: ['cutting'], short: [] },
  'Set out the posts': { whole: ['paths'], short: ['buried-lines', 'shared-wall', 'heat'] },
  'Ready the ground': { whole: ['cement'], short: ['overhead-line', 'buried-lines', 'shared-wall', 'heat'] },
  'Put up the frame': { whole: ['ladder'], short: ['overhead-line', 'heat'] },
  'Hang the cloth': { whole: [], short: ['cloth-off', 'ladder', 'heat', 'fire'] },
  'Storm plan': { whole: ['cloth-off', 'winter-cover'], short: ['ladder', 'heat'] },
  Anchors: { whole: ['wind-orientation', 'anchors'], short: [] },
  'As built': { whole: [], short: ['overhead-line', 'ladder', 'heat'] },
} as const satisfies Record<string, { readonly whole: readonly string[]; readonly short: readonly string[] }>;

/** What a work has to mind, in the sheet's order: stops first. */
export function mindedAt(work: MindedWork, cautions: readonly Caution[], units: Units): readonly Caution[] {
  const whole: readonly string[] = MINDED[work].whole;
  const short: readonly string[] = MINDED[work].short;
  return cautions
    .filter(({ id }) => whole.includes(id) || short.includes(id))
    .map((caution) => (whole.includes(caution.id) ? caution : { ...caution, text: reminderOf(caution, units) }));
}

/** What is answered or read before anything is bought: the stops, and what no single work tells whole. */
export function mindedFirst(cautions: readonly Caution[]): readonly Caution[] {
  const told: readonly string[] = Object.values(MINDED).flatMap(({ whole }) => whole);
  return cautions.filter(({ id }) => !told.includes(id));
}

/** What each stop is of, in so few words that all are seen at once. */
export const STOP_TITLES: Readonly<Record<string, string>> = {
  'overhead-line': 'Power lines above',
  'buried-lines': 'Pipes and cables below',
  'flat-roof': 'A flat roof, a balcony',
  'shared-wall': 'A wall that is not yours alone',
  children: 'Children who climb',
  permission: 'Rules and permission',
  engineer: 'When to ask an engineer',
};

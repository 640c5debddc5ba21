import { type Caution, reminderOf, type Units } from '../../../engine/index.ts';

/** Blocks of the sheet at whose work there is something to mind. */
export type MindedBlock = keyof typeof MINDED;

/** Which cautions are told whole at which work, once on the sheet, and which are only reminded of there. */
const MINDED = {
  'Shopping list': { whole: ['pvc'], short: [] },
  Tools: { whole: [], short: ['cloth-off', 'ladder', 'heat'] },
  Cuts: { whole: ['cutting'], short: [] },
  Posts: { whole: ['paths', 'heat'], short: ['buried-lines', 'shared-wall'] },
  Ground: { whole: ['cement'], short: ['overhead-line', 'buried-lines', 'shared-wall', 'heat'] },
  Frame: { whole: ['ladder'], short: ['overhead-line', 'heat'] },
  Cloth: { whole: [], short: ['cloth-off', 'ladder', 'heat', 'fire'] },
  Storm: { whole: ['cloth-off', 'winter-cover'], short: ['ladder', 'heat'] },
  Anchors: { whole: ['wind-orientation', 'anchors'], short: [] },
  'As built': { whole: [], short: ['overhead-line', 'ladder', 'heat'] },
} as const satisfies Record<string, { readonly whole: readonly string[]; readonly short: readonly string[] }>;

/** What a block has to mind, in the sheet's order: stops first. */
export function mindedAt(block: MindedBlock, cautions: readonly Caution[], units: Units): readonly Caution[] {
  const whole: readonly string[] = MINDED[block].whole;
  const short: readonly string[] = MINDED[block].short;
  return cautions
    .filter(({ id }) => whole.includes(id) || short.includes(id))
    .map((caution) => (whole.includes(caution.id) ? caution : { ...caution, text: reminderOf(caution, units) }));
}

/** What is answered or read before anything is bought: the stops, and what no single work tells whole. */
export function mindedFirst(cautions: readonly Caution[]): readonly Caution[] {
  const told: readonly string[] = Object.values(MINDED).flatMap(({ whole }) => whole);
  return cautions.filter(({ id }) => !told.includes(id));
}

import { formatLength, gradeOf, GRADE_WORDS, nameOf, QUANTITY_UNITS, formatShare } from '../../../engine/index.ts';
import type { PlantLoad, Quantity, Units } from '../../../engine/index.ts';
import { plan } from '../../state/yard.ts';

/** A quantity as a person asks for it, and what its number says. */
export const QUANTITY_WORDS: Readonly<Record<Quantity, { readonly name: string; readonly says: string }>> = {
  hotLoad: { name: 'Hot sun', says: 'sun that arrives while the air is hot, our own index' },
  grade: { name: 'Grade', says: 'hot sun in five steps, our own index' },
  hotHours: { name: 'Hot hours', says: 'hours of sun while the air is at or above your hot limit' },
  sunHours: { name: 'Sun hours', says: 'hours of direct sun; under 60 % cloth an hour counts 0.4' },
  morningHours: { name: 'Morning hours', says: 'sun hours before the sun is highest' },
  afternoonHours: { name: 'Afternoon hours', says: 'sun hours after the sun is highest' },
  beamDose: { name: 'Beam dose', says: 'all the direct sun on a surface that faces it' },
  dailyLight: { name: 'Daily light', says: 'light left for growing' },
  skyView: { name: 'Sky view', says: 'how much of the sky’s light reaches the spot' },
};

/** Whether a quantity's map falls into the five grades. */
export function isGraded(quantity: Quantity): quantity is 'grade' | 'hotLoad' {
  return quantity === 'hotLoad' || quantity === 'grade';
}

/** A value with its unit: "14.3 MJ/m², harsh", "62 % of the sky". */
export function valueWords(quantity: Quantity, value: number): string {
  switch (quantity) {
    case 'skyView':
      return `${formatShare(value)} of the sky`;
    case 'grade':
      return `grade ${value}, ${GRADE_WORDS[value - 1]}`;
    case 'hotLoad':
      return `${value.toFixed(1)} MJ/m², ${GRADE_WORDS[gradeOf(value) - 1]}`;
    default:
      return `${value.toFixed(1)} ${QUANTITY_UNITS[quantity]}`;
  }
}

const COMMON_HEIGHTS = [
  [0, 'the ground'],
  [0.5, 'your knee'],
  [1.2, 'your chest'],
] as const;

/** Heights a map is often wanted at, in words, and the tops of the yard's own plants. [m] */
export function heightChoices(
  plants: readonly PlantLoad[],
  units: Units,
  nameOf: (id: string) => string,
): { readonly height: number; readonly words: string }[] {
  return [
    ...COMMON_HEIGHTS.map(([height, words]) => ({ height, words: `${words}, ${formatLength(height, units)}` })),
    ...plants.map(({ id, height }) => ({ height, words: `the top of ${nameOf(id)}, ${formatLength(height, units)}` })),
  ];
}

/** A height as one can picture it: "at your knee, 0.50 m up". */
export function mapHeightWords(
  height: number,
  plants: readonly PlantLoad[],
  units: Units,
  nameOf: (id: string) => string,
): string {
  if (height === 0) return 'on the ground';
  const known = COMMON_HEIGHTS.find(([at]) => at === height)?.[1];
  const plant = plants.find((one) => one.height === height);
  const picture = known ?? (plant && `the top of ${nameOf(plant.id)}`);
  return `${picture ? `at ${picture}, ` : ''}${formatLength(height, units)} up`;
}

/** What stands before the sun, by the person's own name for it. */
export function shapeName(id: string): string {
  return id === 'skyline' ? 'the skyline' : nameOf(plan.value, id);
}

import { addFeature, freshId, middleOf, parseLight, parseTemperature } from '../../../../engine/index.ts';
import type { FeatureOf, Plan, PlanPoint, PlantSide } from '../../../../engine/index.ts';
import { plantsOf } from '../lists.ts';

/** What stands in the boxes of a reading, or of a pair. */
export interface TypedReading {
  readonly date: string;
  readonly time: string;
  readonly open: string;
  readonly covered: string;
  readonly air: string;
  readonly openLight: string;
  readonly coveredLight: string;
}

/** Coldest and hottest that a leaf and the air are believed to be. [°C] */
const OF_LEAF = [-30, 75] as const;
const OF_AIR = [-30, 60] as const;
/** Brighter than any sun. [lux] */
const BRIGHTEST = 200_000;

const DEGREES = { open: 'Leaf in the open', covered: 'Leaf under cloth', air: 'Air in the shade' } as const;
const LIGHTS = { openLight: 'Light in the open', coveredLight: 'Light under cloth' } as const;
export const BOX_WORDS = { ...DEGREES, ...LIGHTS } as const;

/**
 * The plan with what was read, one open and one covered where both were typed; or the sentence that says what is wrong.
 */
export function withReadings(
  plan: Plan,
  typed: TypedReading,
  pair: boolean,
  plant: string | undefined,
  side: PlantSide,
): Plan | string {
  const units = plan.units ?? 'metric';
  for (const [key, words] of Object.entries(DEGREES) as [keyof typeof DEGREES, string][]) {
    if (typed[key] === '') continue;
    const value = parseTemperature(typed[key], units);
    const [coldest, hottest] = key === 'air' ? OF_AIR : OF_LEAF;
    if (value === null || value < coldest || value > hottest)
      return `${words}: type a temperature, such as ${units === 'metric' ? '42 °C' : '108 °F'}.`;
  }
  for (const [key, words] of Object.entries(LIGHTS) as [keyof typeof LIGHTS, string][]) {
    if (typed[key] === '') continue;
    const value = parseLight(typed[key], units);
    if (value === null || value < 0 || value > BRIGHTEST)
      return `${words}: type what the light meter says, such as ${units === 'metric' ? '98000 lux' : '9100 fc'}.`;
  }
  const open = readingTyped(typed.open, typed.openLight, units);
  const covered = readingTyped(typed.covered, typed.coveredLight, units);
  if (pair && !((typed.open !== '' && typed.covered !== '') || (typed.openLight !== '' && typed.coveredLight !== '')))
    return 'A pair is two leaves, or two lights: one in the open and one under cloth.';
  if (open === null && covered === null)
    return 'Type what the thermometer or the light meter says, in the open or under cloth.';

  const thing = plantsOf(plan).find(({ id }) => id === plant);
  const at: PlanPoint = thing ? middleOf(thing) : plan.site.boundary[0];
  const air = parseTemperature(typed.air, units);
  const base = {
    kind: 'reading',
    at,
    when: `${typed.date}T${typed.time}`,
    ...(plant === undefined ? {} : { plant, side }),
    ...(air === null ? {} : { air }),
  } as const;
  const openId = freshId(plan, 'reading');
  const first =
    open === null
      ? plan
      : addFeature(plan, { ...base, ...open, id: openId, covered: false } satisfies FeatureOf<'reading'>);
  return covered === null
    ? first
    : addFeature(first, {
        ...base,
        ...covered,
        id: freshId(first, 'reading'),
        covered: true,
        ...(open === null ? {} : { pair: openId }),
      } satisfies FeatureOf<'reading'>);
}

function readingTyped(
  leafText: string,
  lightText: string,
  units: 'metric' | 'imperial',
): { readonly leaf?: number; readonly light?: number } | null {
  const leaf = parseTemperature(leafText, units);
  const light = parseLight(lightText, units);
  return leaf === null && light === null
    ? null
    : { ...(leaf === null ? {} : { leaf }), ...(light === null ? {} : { light }) };
}

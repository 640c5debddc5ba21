import { dayWords, monthWord } from '../../plan/dates/dates.ts';
import { upBearingOf } from '../../plan/defaults.ts';
import { heldAt } from '../../plan/schema/say.ts';
import type { CivilDate, Feature, How, Knowledge, Plan, PlanPoint } from '../../plan/types.ts';
import { formatLength, formatSpeed, formatTemperature, formatShare } from '../../plan/units/shown.ts';
import { type Units, unitsOf } from '../../plan/units/units.ts';
import { nameOf } from '../../plan/words/names.ts';
import { knownMonthOf } from '../../survey/climate/rough-climate.ts';
import { type StickShadow, shadowTable } from '../../survey/height/shadow-table.ts';
import { defaultPm, type Quantity } from '../../survey/known-by.ts';
import { northTimes, type ClockWindow } from '../../survey/north/times.ts';

/** What kind of answer a blank takes. A `sketch` is drawn on the paper and not typed. */
type BlankKind = 'length' | 'height' | 'share' | 'bearing' | 'temperature' | 'speed' | 'position' | 'kind' | 'sketch';

/** An empty box on the paper, and the field of the same number on the screen. */
export interface Blank {
  /** Stays the same while other blanks are answered: "gum/height". */
  readonly id: string;
  /** On this sheet, from 1. */
  readonly number: number;
  /** The feature it belongs to; `null` for the site and the climate. */
  readonly feature: string | null;
  readonly key: string;
  readonly kind: BlankKind;
  /** "Neighbour's gum: height" */
  readonly label: string;
  /** What is taken till then: "guessed 11.00 m (± 2.00 m)"; `null` where there is nothing. */
  readonly now: string | null;
  /** How to find out. */
  readonly ways: string;
  /** Where on the drawing its number stands; `null` beside it. [m] */
  readonly at: PlanPoint | null;
}

/** A day's shadow clock: where a 1 m stick's shadow points and how long it is, every half hour. */
export interface SheetDay {
  readonly date: CivilDate;
  readonly title: string;
  readonly shadows: readonly StickShadow[];
  /** When the shadow tells north best. */
  readonly northTimes: readonly ClockWindow[];
}

export interface FieldSheet {
  readonly title: string;
  readonly blanks: readonly Blank[];
  readonly days: readonly SheetDay[];
  /** For the ruler of steps; `null` where no pace is known. */
  readonly pace: { readonly steps: number; readonly length: number } | null;
}

const UNSURE: readonly Knowledge['by'][] = ['guess', 'catalogue'];

const LABELS: Readonly<Record<string, { label: string; kind: BlankKind; ways: string }>> = {
  height: { label: 'height', kind: 'height', ways: 'tape, courses, or its shadow with the minute' },
  plantHeight: { label: 'height of the plants', kind: 'length', ways: 'tape' },
  crownWidth: { label: "crown's width", kind: 'length', ways: 'pace or tape under the edge of the crown, both sides' },
  crownBase: { label: 'where the crown begins', kind: 'length', ways: 'tape, or a helper of known height' },
  spread: { label: 'width', kind: 'length', ways: 'tape' },
  foliageFrom: { label: 'where the leaves begin', kind: 'length', ways: 'tape' },
  thickness: { label: 'thickness', kind: 'length', ways: 'tape' },
  eaves: { label: 'overhang of the roof', kind: 'length', ways: 'tape from the wall to under the edge' },
  width: { label: 'width', kind: 'length', ways: 'tape' },
  length: { label: 'length', kind: 'length', ways: 'tape' },
  bottom: { label: 'lower edge above the ground', kind: 'length', ways: 'tape' },
  rise: { label: 'rise of the front edge', kind: 'length', ways: 'tape' },
  openness: {
    label: 'share of light that passes',
    kind: 'share',
    ways: 'light meter in and out of the shade in the same minute, or by eye',
  },
  density: { label: 'share of light that the cloth blocks', kind: 'share', ways: "the cloth's label" },
  measuredDensity: {
    label: 'share of light that the cloth blocks, measured',
    kind: 'share',
    ways: 'light meter above and below the cloth in the same minute',
  },
  turn: { label: "direction, clockwise from the plan's top", kind: 'bearing', ways: 'by the drawing' },
  at: { label: 'place', kind: 'position', ways: 'tape to two drawn corners' },
  center: { label: 'place', kind: 'position', ways: 'tape to two drawn corners' },
};

/** Lines and outlines are sketched, not typed. */
const SKETCH = { label: 'outline', kind: 'sketch', ways: 'tape each side, or walk round it' } as const;

/**
 * What the field sheet prints: a numbered blank for everything guessed or missing, and the shadow clock of the days
 * given.
 * @param dates Days on which the person may go out, "YYYY-MM-DD".
 */
export function fieldSheet(plan: Plan, dates: readonly CivilDate[]): FieldSheet {
  const up = upBearingOf(plan);
  return {
    title: plan.name?.trim() || 'My yard',
    blanks: blanksOf(plan),
    days: dates.map((date) => ({
      date,
      title: dayWords(date),
      shadows: shadowTable(plan.site, date, up),
      northTimes: northTimes(plan.site, date),
    })),
    pace: plan.site.pace ?? null,
  };
}

/** The blanks alone: the site's first, then the climate's, then every feature's in the plan's order. */
export function blanksOf(plan: Plan): Blank[] {
  const blanks = [
    ...siteBlanks(plan),
    ...climateBlanks(plan),
    ...plan.features.flatMap((feature) => featureBlanks(plan, feature)),
  ];
  return blanks.map((blank, index) => ({ ...blank, number: index + 1 }));
}

type Unnumbered = Omit<Blank, 'number'>;

function siteBlanks(plan: Plan): Unnumbered[] {
  const { site } = plan;
  const known = site.how?.upBearing;
  const northMissing = site.upBearing === undefined && (site.northFrom ?? []).length === 0;
  if (!northMissing && !unsure(known)) return [];
  const now = northMissing
    ? null
    : `${knownWord(known)} ${upBearingOf(plan).toFixed(0)}° ` +
      `${pmWords(known, upBearingOf(plan), 'bearing', unitsOf(plan))}`;
  return [
    {
      id: 'site/upBearing',
      feature: null,
      key: 'upBearing',
      kind: 'bearing',
      label: "True bearing of the drawing's top",
      now,
      ways: "a pole's shadow with the minute, or a compass",
      at: null,
    },
  ];
}

function climateBlanks(plan: Plan): Unnumbered[] {
  const { climate, site } = plan;
  const units = unitsOf(plan);
  const blanks: Unnumbered[] = [];
  const blank = (key: string, kind: BlankKind, label: string, now: string | null, ways: string): void =>
    void blanks.push({ id: `climate/${key}`, feature: null, key, kind, label, now, ways, at: null });
  // Of a rough climate everything is a guess that nobody says otherwise of.
  const open = (key: string): boolean =>
    unsure(climate.how?.[key]) || (climate.from === 'rough' && climate.how?.[key] === undefined);
  if (climate.months.length > 0) {
    const month = knownMonthOf(climate, site.latitude);
    const name = monthWord(month.month);
    const ways = "the weather service's page, or what you know";
    if (open('high'))
      blank('high', 'temperature', `Usual high in ${name}`, `rough ${formatTemperature(month.high, units)}`, ways);
    if (open('low'))
      blank('low', 'temperature', `Usual low in ${name}`, `rough ${formatTemperature(month.low, units)}`, ways);
  }
  if (open('heatwaveHigh')) {
    blank(
      'heatwaveHigh',
      'temperature',
      'High of the hottest day last year',
      `rough ${formatTemperature(climate.heatwaveHigh, units)}`,
      'the weather service, or your own thermometer in the shade',
    );
  }
  if (climate.gust === undefined || unsure(climate.how?.gust)) {
    const now = climate.gust === undefined ? null : `guessed ${formatSpeed(climate.gust, units)}`;
    blank('gust', 'speed', 'Strongest gust to build for', now, 'the local building code, or the building office');
  }
  return blanks;
}

function featureBlanks(plan: Plan, feature: Feature): Unnumbered[] {
  const how: How = feature.how ?? {};
  const guessed = Object.entries(how)
    .filter(([key, known]) => unsure(known) && heldAt(feature, key) !== undefined)
    .map(([key, known]) => guessedBlank(plan, feature, key, known, heldAt(feature, key)));
  const nameless = (feature.kind === 'plant' || feature.kind === 'bed') && feature.plant === undefined;
  return nameless ? [...guessed, kindBlank(plan, feature)] : guessed;
}

function guessedBlank(plan: Plan, feature: Feature, key: string, known: Knowledge, value: unknown): Unnumbered {
  const { label, kind, ways } = Object.hasOwn(LABELS, key) ? LABELS[key] : SKETCH;
  const units = unitsOf(plan);
  const now =
    typeof value === 'number'
      ? `${knownWord(known)} ${valueWords(kind, value, units)} ${pmWords(known, value, quantityOf(kind), units)}`
      : knownWord(known);
  return {
    id: `${feature.id}/${key}`,
    feature: feature.id,
    key,
    kind: typeof value === 'number' || kind === 'position' ? kind : 'sketch',
    label: `${nameOf(plan, feature.id)}: ${label}`,
    now,
    ways,
    at: blankAt(feature),
  };
}

function kindBlank(plan: Plan, feature: Feature): Unnumbered {
  return {
    id: `${feature.id}/plant`,
    feature: feature.id,
    key: 'plant',
    kind: 'kind',
    label: `${nameOf(plan, feature.id)}: which plant is it`,
    now: null,
    ways: 'the label, or a leaf to show somebody',
    at: blankAt(feature),
  };
}

function unsure(known: Knowledge | undefined): known is Knowledge {
  return known !== undefined && UNSURE.includes(known.by);
}

function knownWord(known: Knowledge | undefined): string {
  return known?.by === 'catalogue' ? 'usual' : 'guessed';
}

function quantityOf(kind: BlankKind): Quantity {
  return kind === 'share' || kind === 'bearing' ? kind : 'length';
}

function valueWords(kind: BlankKind, value: number, units: Units): string {
  if (kind === 'share') return formatShare(value);
  return kind === 'bearing' ? `${value.toFixed(0)}°` : formatLength(value, units);
}

function pmWords(known: Knowledge | undefined, value: number, quantity: Quantity, units: Units): string {
  const pm = known?.pm ?? defaultPm(known?.by ?? 'guess', value, quantity);
  return `(± ${valueWords(quantity, pm, units)})`;
}

function blankAt(feature: Feature): PlanPoint {
  if ('at' in feature) return feature.at;
  if ('center' in feature) return feature.center;
  const points = 'outline' in feature ? feature.outline : feature.path;
  return points[Math.floor(points.length / 2)];
}

import { postsInTheWay } from '../../frame/sheet.ts';
import { createSharedLeaves, type SharedLeaves } from '../../load/leaf/heat-day.ts';
import { leastLight, lightStanding } from '../../load/light/light-class.ts';
import { plantLoadsOf } from '../../load/load-of.ts';
import type { Nine, Outcome } from '../../load/types.ts';
import { harmOf, type PlantHarm, weighedHarm } from '../../load/verdict/harm-of.ts';
import { type PlantFeature, plantFeatures, rowOf } from '../../load/verdict/planted.ts';
import { worthOf } from '../../plan/defaults.ts';
import { KeptByContent } from '../../plan/kept.ts';
import { isCloth } from '../../plan/kinds.ts';
import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import { refusal } from '../../plan/problems.ts';
import type { Feature, Plan } from '../../plan/types.ts';
import { unitsOf } from '../../plan/units/units.ts';
import { nameOf } from '../../plan/words/names.ts';
import { withOptions } from '../../plan/yards/options.ts';
import { withoutDiary } from '../../plan/yards/without-diary.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { createRayYard } from '../doubt/rays.ts';
import { seenFrom } from '../sight/seen.ts';
import { dayLight } from '../words/plant-light.ts';
import { effectOn, type Harmed, sharedBy } from '../words/served.ts';
import { clothArea, costOfAll } from './cost.ts';
import { differenceOf, type DoubtedYard, type HarmInDoubt, harmsInDoubt } from './doubt.ts';
import type {
  ChoiceCost,
  ComparedChoice,
  ComparedPlant,
  CompareRequest,
  CompareResult,
  PlantLight,
  PlantStand,
} from './types.ts';
import { bestSentence, choiceSentences, TODAY, weightsSentence } from './words.ts';

/** A hundredth of what is harmed today: differences below it are no reason to prefer one choice. */
const NEXT_TO_NOTHING = 0.01;

interface JudgedPlants {
  readonly stands: ReadonlyMap<string, PlantStand>;
  readonly harms: readonly PlantHarm[];
  readonly doubted: DoubtedYard;
}

interface JudgedYard extends JudgedPlants {
  readonly plan: Plan;
}

type Bare = Omit<ComparedChoice, 'together' | 'asGoodAs' | 'beatenBy' | 'sentences'>;

/**
 * Today held against options or combinations of them: what each plant suffers and what light is left, on the heatwave
 * day and over the season, what it costs and pays off, who sees it, and which differences are no greater than their
 * doubt.
 * @returns the comparison, or what is wrong: an unknown option, a month without climate, a frame that cannot be built
 */
export function compareOptions(plan: Plan, request: CompareRequest = {}): Outcome<CompareResult> {
  const asked = request.choices ?? (plan.options ?? []).map(({ id }) => [id]);
  if (asked.length === 0)
    return refusal('/options', 'There is nothing to compare: this plan has no options. Ask first where cloth pays.');
  request.progress?.(0, 'the yard as it is');
  const shareLeaves = createSharedLeaves();
  const today = judge(plan, request, shareLeaves);
  if (!today.ok) return today;
  const yards: JudgedYard[] = [];
  for (const options of asked) {
    request.progress?.((yards.length + 1) / (asked.length + 1), options.join(' + '));
    const changed = withOptions(plan, options);
    if (!changed.ok) return changed;
    const yard = judge(changed.plan, request, shareLeaves);
    if (!yard.ok) return yard;
    yards.push(yard.value);
  }
  const inDoubt = harmsInDoubt([today.value, ...yards].map(({ doubted }) => doubted));
  if (!inDoubt.ok) return inDoubt;
  const [doubtToday, ...doubts] = inDoubt.value;
  const had = new Set(plan.features.map(({ id }) => id));
  const bare: Bare[] = [];
  for (const [k, yard] of yards.entries()) {
    const added = yard.plan.features.filter(({ id }) => !had.has(id));
    const cost = costOfAll(added, yard.plan);
    if (!cost.ok) return cost;
    const { pm } = differenceOf(doubtToday, doubts[k]);
    bare.push(choiceOf(asked[k], today.value, yard, pm, added, cost.value));
  }
  const served = [...new Set(bare.flatMap(({ effect }) => effect.plants.map(({ id }) => id)))];
  const choices = bare.map((choice, k): ComparedChoice => {
    const asGoodAs = [
      ...(within(doubts[k], doubtToday) ? [TODAY] : []),
      ...bare
        .filter((other, n) => n !== k && servesAllOf(other, choice) && within(doubts[k], doubts[n]))
        .map(({ name }) => name),
    ];
    const beatenBy =
      bare.find(
        (other, n) => n !== k && servesAllOf(other, choice) && beats(other, choice, weighedHarm(today.value.harms)),
      )?.name ?? null;
    const whole = { ...choice, together: togetherOf(choice, served), asGoodAs, beatenBy, sentences: [] };
    return { ...whole, sentences: choiceSentences(plan, whole, request.units ?? unitsOf(plan)) };
  });
  const ranked = choices.toSorted((a, b) => b.spared - a.spared).map(({ name }) => name);
  const plants = comparedPlants(today.value, today.value);
  return {
    ok: true,
    value: {
      today: { harm: weighedHarm(today.value.harms), plants },
      choices,
      ranked,
      served,
      sentence: bestSentence(plan, choices, served),
      weights: weightsSentence(plants),
    },
  };
}

/** Whether one choice is for all that the other is for: cloth for one plant is no better than cloth for another. */
function servesAllOf({ effect: { plants: mine } }: Bare, { effect: { plants: theirs } }: Bare): boolean {
  return theirs.every(({ id }) => mine.some((plant) => plant.id === id));
}

/** Of a plant that is in one yard only nothing is spared. */
function harmedOf({ id, worth, before, after }: ComparedPlant): Harmed {
  const harm = before?.harm ?? 0;
  return { id, worth, before: harm, after: after === null || before === null ? harm : (after.harm ?? 0) };
}

function togetherOf({ plants, sparedPm }: Bare, served: readonly string[]): ComparedChoice['together'] {
  const told = plants.filter(({ id }) => served.includes(id)).map(harmedOf);
  const harm = told.reduce((sum, { worth, before }) => sum + worth * before, 0);
  return harm > 0 ? { share: sharedBy(told), pm: sparedPm / harm } : null;
}

/** Of several options one is changed at a time, and today seldom. */
const known = new KeptByContent<Outcome<JudgedPlants>>(12);

function judge(plan: Plan, request: CompareRequest, shareLeaves: SharedLeaves): Outcome<JudgedYard> {
  const { weather } = request;
  const yard = { ...withoutDiary(plan), options: undefined };
  const make = () => judgePlants(yard, shareLeaves, weather);
  // A weather file is too long to be compared.
  const judged = weather === undefined ? known.of(yard, make) : make();
  return judged.ok ? { ok: true, value: { plan, ...judged.value } } : judged;
}

function judgePlants(plan: Plan, shareLeaves: SharedLeaves, weather?: Weather): Outcome<JudgedPlants> {
  const loads = plantLoadsOf(plan, { period: { kind: 'heatwave' }, weather, pots: false });
  if (!loads.ok) return loads;
  const season = dayLight(plan, { kind: 'season' }, weather);
  if (!season.ok) return season;
  const harms = harmOf(plan, weather);
  if (!harms.ok) return harms;
  const rays = createRayYard(plan, weather, shareLeaves);
  if (!rays.ok) return rays;
  const features = plantFeatures(plan);
  const stands = new Map(
    loads.value.map((load, k): [string, PlantStand] => [
      load.id,
      {
        harm: harms.value.find(({ id }) => id === load.id)?.harm ?? null,
        scorchDose: load.scorchDose,
        peak: load.peak,
        verdict: load.verdict,
        close: load.close,
        when: load.when,
        light: lightOf(plan, features[k], season.value.of(features[k])),
        sides: (load.sides ?? []).map(({ side, scorchDose, peak, hotHours }) => ({ side, scorchDose, peak, hotHours })),
      },
    ]),
  );
  return { ok: true, value: { stands, harms: harms.value, doubted: { plan, rays: rays.value } } };
}

function lightOf(plan: Plan, feature: PlantFeature, { sunHours, dailyLight }: Nine): PlantLight {
  const row = rowOf(plan, feature);
  if (!row) return { sunHours, dailyLight, least: null, standing: 'enough' };
  return { sunHours, dailyLight, least: leastLight(row), standing: lightStanding(row, dailyLight) };
}

function choiceOf(
  options: readonly string[],
  today: JudgedYard,
  yard: JudgedYard,
  sparedPm: number,
  added: readonly Feature[],
  cost: ChoiceCost,
): Bare {
  const plants = comparedPlants(today, yard);
  const harmed = plants.map(harmedOf);
  const spared = harmed.reduce((sum, { worth, before, after }) => sum + worth * (before - after), 0);
  const harmToday = weighedHarm(today.harms);
  const cloths = added.filter(isCloth);
  const area = cloths.reduce((sum, cloth) => sum + clothArea(cloth), 0);
  const tooDark = plants.filter(({ after }) => after?.light.standing === 'too dark').map(({ id }) => id);
  return {
    options,
    name: options.join(' + '),
    plants,
    harm: weighedHarm(yard.harms),
    spared,
    sparedShare: harmToday > 0 ? spared / harmToday : null,
    sparedPm,
    effect: effectOn(harmed),
    clothArea: area,
    cost,
    payoff: {
      perSquareMetre: area > 0 ? spared / area : null,
      perMoney: cost.total !== null && cost.total > 0 ? spared / cost.total : null,
    },
    seenFrom: seenFrom(yard.plan, cloths),
    inTheWay: cloths.flatMap((cloth) => postsInTheWay(cloth, yard.plan)),
    tooDark,
    newlyTooDark: tooDark.filter((id) => today.stands.get(id)?.light.standing !== 'too dark'),
  };
}

function comparedPlants(today: JudgedYard, yard: JudgedYard): ComparedPlant[] {
  const features = [
    ...plantFeatures(today.plan),
    ...plantFeatures(yard.plan).filter(({ id }) => !today.stands.has(id)),
  ];
  return features.map((feature) => ({
    id: feature.id,
    name: nameOf(today.stands.has(feature.id) ? today.plan : yard.plan, feature.id),
    kind: feature.kind,
    worth: worthOf(feature),
    before: today.stands.get(feature.id) ?? null,
    after: yard.stands.get(feature.id) ?? null,
  }));
}

function within(a: HarmInDoubt, b: HarmInDoubt): boolean {
  const { difference, pm } = differenceOf(a, b);
  return Math.abs(difference) <= pm;
}

/** Whether a choice is as good as another in everything and better in something. Without prices neither is cheaper. */
function beats(a: Bare, b: Bare, harmToday: number): boolean {
  const little = NEXT_TO_NOTHING * harmToday;
  const [costA, costB] = [a.cost.total, b.cost.total];
  if ((costA === null) !== (costB === null)) return false;
  const money = (costA ?? 0) - (costB ?? 0);
  const shows = (choice: Bare) => choice.seenFrom.reduce((sum, seen) => sum + seen.shows, 0);
  const noWorse =
    a.spared >= b.spared - ROUNDING &&
    money <= 0 &&
    a.newlyTooDark.length <= b.newlyTooDark.length &&
    a.inTheWay.length <= b.inTheWay.length &&
    shows(a) <= shows(b) + ROUNDING;
  const better =
    a.spared > b.spared + little ||
    money < 0 ||
    a.newlyTooDark.length < b.newlyTooDark.length ||
    shows(a) < shows(b) - ROUNDING;
  return noWorse && better;
}

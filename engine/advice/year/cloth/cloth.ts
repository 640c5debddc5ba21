/**
 * When each cloth should hang: by what it spares its own plants and the light it leaves them, not by the date of habit.
 */
import { dayWords } from '../../../plan/dates.ts';
import { harmOf, type PlantHarm } from '../../../load/verdict/harm-of.ts';
import { isTooDark } from '../../../load/light/light-class.ts';
import { isEstablished } from '../../../load/verdict/limit.ts';
import { plantFeatures, rowOf } from '../../../load/verdict/planted.ts';
import type { Outcome } from '../../../load/types.ts';
import { milderBy } from '../../../load/verdict/verdict.ts';
import type { Canopy, CivilDate, Plan, Screen } from '../../../plan/types.ts';
import { formatTemperature, unitsOf } from '../../../plan/units.ts';
import { datesBetween, dateIn } from '../../../sun/calendar.ts';
import { seasonDates, seasonMonths } from '../../../sun/season.ts';
import type { Weather } from '../../../sun/weather.ts';
import { dayLight } from '../../words/plant-light.ts';
import { type DatedValue, stretchAbove } from '../span.ts';
import type { Advice } from '../advice.ts';
import type { ClothLight, ClothMonth, ClothSeason } from '../season/types.ts';
import { namesInside } from '../words.ts';

/**
 * A cloth is worth hanging while it spares one of its plants this much, and a tenth of what it spares in the worst
 * month. Our choice. [K·h/day]
 */
const WORTH_HANGING = 1;
const WORTH_HANGING_SHARE = 0.1;

type Cloth = Canopy | Screen;

/**
 * When the cloth of every canopy and screen should hang.
 * @param wide the plan with a season of all months to look at @param harms of it as it stands
 */
export function clothSeasons(
  plan: Plan,
  wide: Plan,
  harms: readonly PlantHarm[],
  weather?: Weather,
): Outcome<ClothSeason[]> {
  const cloths = wide.features.filter(
    (feature): feature is Cloth => feature.kind === 'canopy' || feature.kind === 'screen',
  );
  if (cloths.length === 0) return { ok: true, value: [] };
  // Together all cloths are judged as hanging all year: the question is when each should.
  const hung: Plan = {
    ...wide,
    features: wide.features.map((feature) => (isCloth(feature) ? { ...feature, up: undefined } : feature)),
  };
  const covered = cloths.every(({ up }) => up === undefined)
    ? { ok: true as const, value: harms }
    : harmOf(hung, weather);
  if (!covered.ok) return covered;
  const value: ClothSeason[] = [];
  for (const cloth of cloths) {
    const found = clothSeason(plan, hung, cloth, covered.value, weather);
    if (!found.ok) return found;
    value.push(found.value);
  }
  return { ok: true, value };
}

function isCloth(feature: { readonly kind: string }): feature is Cloth {
  return feature.kind === 'canopy' || feature.kind === 'screen';
}

function clothSeason(
  plan: Plan,
  hung: Plan,
  cloth: Cloth,
  covered: readonly PlantHarm[],
  weather?: Weather,
): Outcome<ClothSeason> {
  const without: Plan = { ...hung, features: hung.features.filter(({ id }) => id !== cloth.id) };
  const open = harmOf(without, weather);
  if (!open.ok) return open;
  const heatDates = heatDatesOf(hung);
  const spared = open.value.map(({ id, byHeatDay }, k) => ({
    id,
    by: byHeatDay.map((dose, day) => dose - covered[k].byHeatDay[day]),
  }));
  const sheltered = spared
    .filter(({ id, by }) => wantsShade(plan, id) && by.some((value) => value >= WORTH_HANGING))
    .map(({ id }) => id);
  const most: DatedValue[] = heatDates.map((date, day) => ({
    date,
    value: Math.max(0, ...spared.filter(({ id }) => sheltered.includes(id)).map(({ by }) => by[day])),
  }));
  const dates = seasonDates(hung);
  if (!dates.ok) return dates;
  const worth = Math.max(WORTH_HANGING, WORTH_HANGING_SHARE * Math.max(...most.map(({ value }) => value)));
  const span = stretchAbove(most, worth, dates.value[0], dates.value[dates.value.length - 1]);
  const sum = (harms: readonly PlantHarm[], day: number) =>
    harms.reduce((total, { id, byHeatDay }) => total + (sheltered.includes(id) ? byHeatDay[day] : 0), 0);
  const months = heatDates.map((date, day): ClothMonth => ({
    date,
    harmOpen: sum(open.value, day),
    harmCovered: sum(covered, day),
  }));
  const light =
    span === null
      ? { ok: true as const, value: [] }
      : lightUnder(
          hung,
          without,
          sheltered,
          heatDates.filter((date) => date >= span.first && date <= span.last),
          weather,
        );
  if (!light.ok) return light;
  const earlierUnknown = span !== null && span.first === dates.value[0];
  const laterUnknown = span !== null && span.last === dates.value[dates.value.length - 1];
  const season = {
    canopy: cloth.id,
    plants: sheltered,
    up: span?.first ?? null,
    down: span?.last ?? null,
    earlierUnknown,
    laterUnknown,
    drawn: plan.features.filter(isCloth).find(({ id }) => id === cloth.id)?.up ?? null,
    months,
    light: light.value,
  };
  return { ok: true, value: { ...season, advice: clothAdvice(plan, season) } };
}

/** A plant that stands in the sun unharmed once established needs no cloth, however hot its leaves. */
function wantsShade(plan: Plan, id: string): boolean {
  const feature = plantFeatures(plan).find((candidate) => candidate.id === id);
  const row = feature && rowOf(plan, feature);
  return feature !== undefined && row !== undefined && milderBy(row, isEstablished(plan, feature)) === null;
}

function heatDatesOf(plan: Plan): CivilDate[] {
  const months = seasonMonths(plan);
  return months.ok
    ? months.value.map(({ month, year }) => dateIn(year, `${String(month).padStart(2, '0')}-21`) ?? '')
    : [];
}

/** Light of each sheltered plant on the 21st on which the cloth leaves it least. */
function lightUnder(
  hung: Plan,
  without: Plan,
  sheltered: readonly string[],
  dates: readonly CivilDate[],
  weather?: Weather,
): Outcome<ClothLight[]> {
  const darkest = new Map<string, ClothLight>();
  for (const date of dates) {
    const covered = dayLight(hung, { kind: 'day', date: date.slice(5) }, weather);
    const open = dayLight(without, { kind: 'day', date: date.slice(5) }, weather);
    if (!covered.ok) return covered;
    if (!open.ok) return open;
    for (const feature of plantFeatures(hung).filter(({ id }) => sheltered.includes(id))) {
      const nine = covered.value.of(feature);
      const before = darkest.get(feature.id);
      if (before !== undefined && before.covered <= nine.dailyLight) continue;
      const row = rowOf(hung, feature);
      const uncovered = open.value.of(feature);
      darkest.set(feature.id, {
        plant: feature.id,
        open: uncovered.dailyLight,
        covered: nine.dailyLight,
        tooDark: row !== undefined && isTooDark(row, nine) && !isTooDark(row, uncovered),
      });
    }
  }
  return { ok: true, value: [...darkest.values()] };
}

function clothAdvice(plan: Plan, season: Omit<ClothSeason, 'advice'>): Advice[] {
  const names = namesInside(plan, [season.canopy]);
  if (season.up === null || season.down === null) {
    return [
      {
        basis: 'our estimate',
        text:
          `Leave the cloth of ${names} off: on no month’s hot day does it spare a plant that needs it more ` +
          `than ${WORTH_HANGING} K·h of heat damage.`,
      },
    ];
  }
  const advice: Advice[] = [];
  const from = season.earlierUnknown ? `by ${dayWords(season.up)} at the latest` : `about ${dayWords(season.up)}`;
  const to = season.laterUnknown ? `not before ${dayWords(season.down)}` : `about ${dayWords(season.down)}`;
  advice.push({
    basis: 'our estimate',
    text:
      `Put the cloth of ${names} up ${from} and take it down ${to}: that is when a hot day would hurt ` +
      `${namesInside(plan, season.plants)} more without it.`,
  });
  if (season.earlierUnknown || season.laterUnknown) {
    const which =
      season.earlierUnknown && season.laterUnknown ? 'before and after' : season.earlierUnknown ? 'before' : 'after';
    advice.push({
      basis: 'our estimate',
      text: `The climate has no figures for the month ${which}: add its high and low, and the date can be told.`,
    });
  }
  advice.push({
    basis: 'extension practice',
    source: 'University of Arizona, Maricopa County Cooperative Extension',
    text:
      'Put it up earlier if leaves bleach or wilt in the afternoon before then; do not leave it up out of ' +
      'habit once the heat is over.',
  });
  for (const { plant, open, covered, tooDark } of season.light) {
    const left =
      `Of ${open.toFixed(0)} mol/m² of daily light, ${covered.toFixed(0)} are left for ` +
      `${namesInside(plan, [plant])} under the cloth in the darkest of its months`;
    advice.push({
      basis: 'our estimate',
      text: `${left}${
        tooDark ? ': too little for it, so take a thinner cloth or fold this one back in the ' + 'mornings' : ''
      }.`,
    });
  }
  return advice;
}

/** Where the plan's own dates for a cloth leave out days on which it is wanted. */
export function clothNotes(plan: Plan, { canopy, up, down, drawn }: ClothSeason): string[] {
  if (up === null || down === null || drawn === null) return [];
  const inside = (date: CivilDate) => {
    const day = date.slice(5);
    return drawn.from <= drawn.to ? day >= drawn.from && day <= drawn.to : day >= drawn.from || day <= drawn.to;
  };
  const missed = datesBetween(up, down).filter((date) => !inside(date)).length;
  return missed === 0
    ? []
    : [
        `The plan hangs ${namesInside(plan, [canopy])} from ${dayWords(drawn.from)} to ${dayWords(drawn.to)}; that ` +
          `leaves out ${missed} days on which it is wanted.`,
      ];
}

/**
 * Leaves that grew under cloth: how to bring them into the sun.
 * @param heat an air temperature not to do it above [°C]
 */
export function uncoverAdvice(plan: Plan, heat: number): Advice[] {
  return [
    {
      basis: 'common practice',
      text:
        'Take the cloth down in steps: fold it back for an hour more of sun every day over 10 to 14 days, the ' +
        'morning sun first, or wait for a cloudy spell.',
    },
    {
      basis: 'extension practice',
      source: 'UF/IFAS Gardening Solutions; University of Arizona, Maricopa County',
      text:
        `Do not begin within 3 days of a hot spell (${formatTemperature(heat, unitsOf(plan))} or more), water ` +
        `the day before, and go back a step if leaves bleach.`,
    },
  ];
}

import { leastLight } from '../../load/light/light-class.ts';
import { rootWords } from '../../load/pot/pot-words.ts';
import type { Roots } from '../../load/types.ts';
import { potOf } from '../../plan/defaults.ts';
import { PATH_WIDTH } from '../../plan/geometry/gates.ts';
import type { Plan, Plant, PlantRow } from '../../plan/types.ts';
import { formatLength, formatFrostLimit, formatTemperature, formatShare } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { agreeingWith } from '../../plan/words/agreement.ts';
import { capital } from '../../plan/words/first-letter.ts';
import { listWords } from '../../plan/words/list-words.ts';
import { namedInside, nameOf } from '../../plan/words/names.ts';
import { lessDamage } from '../../plan/words/spoken.ts';
import { WORTH_NAMING } from '../cheaper-first/step.ts';
import { endsWithFrost } from '../year/frost/frost.ts';
import type { Tried } from './rank.ts';
import type { PlaceResult, PlaceSpot } from './types.ts';
import { wayNote, wayWords } from './way.ts';

/** @param plant id of the pot's */
export function spotSentence(plan: Plan, plant: string, spot: Omit<PlaceSpot, 'sentence'>, units: Units): string {
  const { stay, where, harm, spared, verdict, light, standing, overRange, pot, winterSunHours, hardening } = spot;
  const { they, them, does: verb } = agreeingWith(nameOf(plan, plant));
  const begins = stay ? `Where ${they} ${verb('stand')}` : `${capital(where)}, ${wayWords(plan, spot, units)}`;
  const today = harm + spared;
  const which = spared < 0 ? 'more' : 'less';
  const does =
    stay || today <= 0 ? verdict : `${formatShare(Math.abs(spared) / today)} ${which} heat damage, ${verdict}`;
  const sun =
    `${light.sunHours.toFixed(0)} h of sun a ` +
    `day${standing === 'enough' ? '' : standing === 'short' ? ' (a little short)' : ' (too dark)'}` +
    `${overRange >= 0.5 ? `, ${overRange.toFixed(0)} h more than ${they} ${verb('like')}` : ''}`;
  const after = hardening === null ? '' : ` Harden ${them} off first.`;
  return (
    `${begins}: ${does}; ${sun}; roots in the pot ${rootsBriefly(pot.roots, units)}` +
    `${winterSunHours === null ? '' : `; ${winterSunHours.toFixed(0)} h of sun in mid-winter`}.${after}`
  );
}

/** What is gained by going to a place: "half the heat damage", or what else is better there. */
export function gainWords(best: PlaceSpot, stay: PlaceSpot): string {
  const share = stay.harm > 0 ? best.spared / stay.harm : 0;
  if (share >= WORTH_NAMING) return lessDamage(share);
  if (best.standing !== stay.standing) return 'the light is better';
  return best.pot.roots.warmest < stay.pot.roots.warmest ? 'the roots stand cooler' : 'winter has more sun there';
}

/** Whose pot it is that must be kept cool: at the best place, and today. */
function rootsWhere([best, ...others]: readonly PlaceSpot[], their: string): string {
  if (best.stay) return capital(their);
  return others.some(({ stay, pot }) => stay && pot.roots.verdict === 'cooking')
    ? `At place 1 too ${their}`
    : `At place 1 ${their}`;
}

/** "fine", "49 °C: too hot": never a bare number. */
export function rootsBriefly({ warmest, verdict }: Roots, units: Units): string {
  const words = { fine: '', 'hot roots': ': they stop growing', cooking: ': they die' } as const;
  return verdict === 'fine' ? 'fine' : `${formatTemperature(warmest, units)}${words[verdict]}`;
}

/** @param spared share of what harms both today @param heated whose roots live where they are, there only kept cool */
export function swapSentence(plan: Plan, id: string, other: string, spared: number, heated: readonly string[]): string {
  const [one, two] = [namedInside(plan, id), namedInside(plan, other)];
  const names = heated.map((each) => namedInside(plan, each));
  const cool = names.length === 0 ? '' : `; then keep the pot of ${listWords(names)} cool`;
  return `Let ${one} and ${two} change places: ${lessDamage(spared)} for the two together${cool}.`;
}

interface Told {
  readonly plan: Plan;
  readonly plant: Plant;
  readonly row: PlantRow;
  readonly spots: readonly PlaceSpot[];
  readonly tried: readonly Tried[];
  /** Places where it may stand. */
  readonly allowed: number;
  readonly winterBest: PlaceResult['winterBest'];
  readonly units: Units;
}

/** What holds for the list as a whole. */
export function placeNotesOf({ plan, plant, row, spots, tried, allowed, winterBest, units }: Told): string[] {
  const notes: string[] = [];
  const name = nameOf(plan, plant.id);
  const { they, them, their, are, does } = agreeingWith(name);
  if (allowed === 0) notes.push(`There is no other place on the property where ${they} may stand.`);
  if (spots.every(({ standing }) => standing === 'too dark')) notes.push(darkNote(name, row, tried));
  const { roots } = spots[0].pot;
  if (roots.verdict === 'cooking')
    notes.push(`${rootsWhere(spots, their)} pot must be kept cool.${rootWords(roots, units, name)}`);
  if (winterBest !== null) {
    const sun = `${winterBest.where} ${they} ${does('get')} ${winterBest.sunHours.toFixed(0)} h of sun in mid-winter`;
    const hours = spots[0].winterSunHours ?? 0;
    const here = hours < 0.5 ? 'none' : `${hours.toFixed(0)} h`;
    notes.push(
      winterBest.isWanted
        ? `Winter is spent elsewhere: ${sun}, at the best summer place ${here}. Carry ${them} there in autumn.`
        : `In winter another place is sunnier: ${sun}, at the best summer place ${here}.`,
    );
  }
  const lowest = plan.climate.frost?.lowest;
  if (lowest !== undefined && row.frostDamage !== undefined && lowest <= row.frostDamage && !endsWithFrost(row)) {
    notes.push(
      `Winter nights fall to ${formatTemperature(lowest, units)} here, and ${they} ${are} damaged from ` +
        `${formatFrostLimit(row.frostDamage, units)}: carry ${them} in for such nights.`,
    );
  }
  if (plant.move === 'trolley')
    notes.push(
      `${capital(they)} ${does('need')} a trolley: two people, and a level way at least ` +
        `${formatLength(PATH_WIDTH, units)} wide.`,
    );
  notes.push(wayNote(plan, potOf(plant).width, spots, units));
  return notes;
}

/** No place has light enough: how near the best comes, and what to do about it. */
function darkNote(name: string, row: PlantRow, tried: readonly Tried[]): string {
  const least = leastLight(row);
  const { they, does } = agreeingWith(name);
  const best = Math.max(...tried.map(({ light }) => light.dailyLight));
  return (
    `No place where ${they} may stand has light enough: at the brightest ${they} ${does('get')} ` +
    `${formatShare(best / least)} of the light that ${they} ${does('need')}.`
  );
}

import { leastLight } from '../../load/light/light-class.ts';
import { rootWords } from '../../load/pot/pot-words.ts';
import type { Roots } from '../../load/types.ts';
import { percent } from '../cheaper-first/step.ts';
import { lessDamage } from '../../plan/spoken.ts';
import { potOf } from '../../plan/defaults.ts';
import { namedInside } from '../../plan/names.ts';
import type { Plan, Plant, PlantRow } from '../../plan/types.ts';
import { formatLength, formatFrostLimit, formatTemperature } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { PATH_WIDTH } from '../../plan/geometry/gates.ts';
import { wayNote, wayWords } from './way.ts';
import { endsWithFrost } from '../year/frost/frost.ts';
import type { Tried } from './rank.ts';
import type { PlaceResult, PlaceSpot } from './types.ts';
import { sentenceCase } from '../year/words.ts';

export function spotSentence(plan: Plan, spot: Omit<PlaceSpot, 'sentence'>, units: Units): string {
  const { stay, where, harm, spared, verdict, light, standing, overRange, pot, winterSunHours, hardening } = spot;
  const begins = stay ? 'Where it stands' : `${sentenceCase(where)}, ${wayWords(plan, spot, units)}`;
  const today = harm + spared;
  const which = spared < 0 ? 'more' : 'less';
  const does = stay || today <= 0 ? verdict : `${percent(Math.abs(spared) / today)} ${which} heat damage, ${verdict}`;
  const sun =
    `${light.sunHours.toFixed(0)} h of sun a ` +
    `day${standing === 'enough' ? '' : standing === 'short' ? ' (a little short)' : ' (too dark)'}` +
    `${overRange >= 0.5 ? `, ${overRange.toFixed(0)} h more than it likes` : ''}`;
  const after = hardening === null ? '' : ' Harden it off first.';
  return (
    `${begins}: ${does}; ${sun}; roots in the pot ${rootsBriefly(pot.roots, units)}; ` +
    `${winterSunHours.toFixed(0)} h of sun in mid-winter.${after}`
  );
}

/** "fine", "49 °C: too hot": never a bare number. */
export function rootsBriefly({ warmest, verdict }: Roots, units: Units): string {
  const words = { fine: '', 'hot roots': ': they stop growing', cooking: ': they die' } as const;
  return verdict === 'fine' ? 'fine' : `${formatTemperature(warmest, units)}${words[verdict]}`;
}

/** @param spared share of what harms both today */
export function swapSentence(plan: Plan, id: string, other: string, spared: number): string {
  const [one, two] = [namedInside(plan, id), namedInside(plan, other)];
  return `Let ${one} and ${two} change places: ${lessDamage(spared)} for the two together.`;
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
  if (allowed === 0) notes.push('There is no other place on the property where it may stand.');
  else if (spots[0].stay) notes.push('It stands where it is best already.');
  if (spots.every(({ standing }) => standing === 'too dark')) notes.push(darkNote(row, tried));
  const { roots } = spots[0].pot;
  if (roots.verdict === 'cooking')
    notes.push(`${spots[0].stay ? 'Its' : 'At place 1 too its'} pot must be kept cool.${rootWords(roots, units)}`);
  if (winterBest !== null) {
    const sun = `${winterBest.where} it gets ${winterBest.sunHours.toFixed(0)} h of sun in mid-winter`;
    const here = spots[0].winterSunHours < 0.5 ? 'none' : `${spots[0].winterSunHours.toFixed(0)} h`;
    notes.push(
      winterBest.isWanted
        ? `Winter is spent elsewhere: ${sun}, at the best summer place ${here}. Carry it there in autumn.`
        : `In winter another place is sunnier: ${sun}, at the best summer place ${here}.`,
    );
  }
  const lowest = plan.climate.frost?.lowest;
  if (lowest !== undefined && row.frostDamage !== undefined && lowest <= row.frostDamage && !endsWithFrost(row)) {
    notes.push(
      `Winter nights fall to ${formatTemperature(lowest, units)} here, and it is damaged from ` +
        `${formatFrostLimit(row.frostDamage, units)}: carry it in for such nights.`,
    );
  }
  if (plant.move === 'trolley')
    notes.push(`It needs a trolley: two people, and a level way at least ${formatLength(PATH_WIDTH, units)} wide.`);
  notes.push(wayNote(plan, potOf(plant).width, spots, units));
  return notes;
}

/** No place has light enough: how near the best comes, and what to do about it. */
function darkNote(row: PlantRow, tried: readonly Tried[]): string {
  const least = leastLight(row);
  const best = Math.max(...tried.map(({ light }) => light.dailyLight));
  return (
    `No place where it may stand has light enough: at the brightest it gets ${percent(best / least)} of the light ` +
    `that it needs.`
  );
}

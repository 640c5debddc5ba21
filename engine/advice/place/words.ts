import { leastLight } from '../../load/light/light-class.ts';
import { lessDamage } from '../../plan/spoken.ts';
import { namedInside } from '../../plan/names.ts';
import type { Plan, Plant, PlantRow } from '../../plan/types.ts';
import { formatDistance, formatLength, formatFrostLimit, formatTemperature, type Units } from '../../plan/units.ts';
import { PATH_WIDTH } from './ground.ts';
import type { Tried } from './rank.ts';
import type { PlaceResult, PlaceSpot } from './types.ts';
import { sentenceCase } from '../year/season/words.ts';

export function spotSentence(spot: Omit<PlaceSpot, 'sentence'>, units: Units): string {
  const { stay, where, metres, spared, verdict, light, standing, overRange, pot, winterSunHours, hardening } = spot;
  const begins = stay ? 'Where it stands' : `${sentenceCase(where)}, ${formatDistance(metres, units)} away`;
  const does = stay
    ? `${verdict}`
    : Math.abs(spared) < 0.05
      ? `harmed as much as now, ${verdict}`
      : `${Math.abs(spared).toFixed(1)} K·h a day ${spared > 0 ? 'less' : 'more'} harm, ${verdict}`;
  const sun =
    `${light.sunHours.toFixed(1)} h of sun a ` +
    `day${standing === 'enough' ? '' : standing === 'short' ? ' (a little short)' : ' (too dark)'}` +
    `${overRange > 0.05 ? `, ${overRange.toFixed(1)} h more than it likes` : ''}`;
  const after = hardening === null ? '' : ' Harden it off first.';
  return (
    `${begins}: ${does}; ${sun}; roots in the pot about ${formatTemperature(pot.roots.warmest, units)}` +
    `${pot.roots.verdict === 'fine' ? '' : ` (${pot.roots.verdict})`}; ` +
    `${winterSunHours.toFixed(1)} h of sun in mid-winter.${after}`
  );
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
  if (lowest !== undefined && row.frostDamage !== undefined && lowest <= row.frostDamage) {
    notes.push(
      `Winter nights fall to ${formatTemperature(lowest, units)} here, and it is damaged from ` +
        `${formatFrostLimit(row.frostDamage, units)}: in winter it belongs against a wall or under cover.`,
    );
  }
  if (plant.move === 'trolley')
    notes.push(`It needs a trolley: two people, and a level way at least ${formatLength(PATH_WIDTH, units)} wide.`);
  notes.push('How far to carry is told as the crow flies: mind gates and steps on the way.');
  return notes;
}

/** No place has light enough: how near the best comes, and what to do about it. */
function darkNote(row: PlantRow, tried: readonly Tried[]): string {
  const least = leastLight(row);
  const best = Math.max(...tried.map(({ light }) => light.dailyLight));
  return (
    `No place where it may stand has light enough. What fails by least is the light itself: ` +
    `${(least - best).toFixed(1)} of the ${least} mol/m² of light that it needs a day are missing at the brightest.`
  );
}

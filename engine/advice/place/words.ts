import { nameOf, namedInside } from '../../plan/names.ts';
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
    `day${standing === 'enough' ? '' : standing === 'nearly' ? ' (nearly enough)' : ' (too dark)'}` +
    `${overRange > 0.05 ? `, ${overRange.toFixed(1)} h more than it likes` : ''}`;
  const after = hardening === null ? '' : ' Harden it off first.';
  return (
    `${begins}: ${does}; ${sun}; ${pot.hotHours.toFixed(1)} hot hours on the pot’s wall; ` +
    `${winterSunHours.toFixed(1)} h of sun in mid-winter.${after}`
  );
}

export function swapSentence(
  plan: Plan,
  id: string,
  other: string,
  spared: number,
  tooDark: readonly string[],
): string {
  const does = spared >= 0 ? `spares ${spared.toFixed(1)}` : `adds ${(-spared).toFixed(1)}`;
  const dark =
    tooDark.length === 0 ? '' : ` Too dark afterwards: ${tooDark.map((each) => nameOf(plan, each)).join(' and ')}.`;
  return (
    `Changing places with ${namedInside(plan, other)} ${does} K·h a day of harm, ${nameOf(plan, id)} and ` +
    `${namedInside(plan, other)} together.${dark}`
  );
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
    notes.push(
      `In mid-winter it gets ${spots[0].winterSunHours.toFixed(1)} h of sun at the best summer place; ` +
        `${winterBest.where} it would get ${winterBest.sunHours.toFixed(1)} h. Move it again in autumn.`,
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
  notes.push('Ways are straight lines; gates and steps are not known.');
  return notes;
}

/** No place has light enough: how near the best comes, and what to do about it. */
function darkNote(row: PlantRow, tried: readonly Tried[]): string {
  const quantity = typeof row.minDLI === 'number' ? 'dailyLight' : 'sunHours';
  const least = typeof row.minDLI === 'number' ? row.minDLI : row.sunHours[0];
  const best = Math.max(...tried.map(({ light }) => light[quantity]));
  const unit = quantity === 'dailyLight' ? 'mol/m² of light' : 'h of sun';
  return (
    `No place where it may stand has light enough. What fails by least is the light itself: ` +
    `${(least - best).toFixed(1)} of the ${least.toFixed(1)} ${unit} that it needs a day are missing at the brightest.`
  );
}

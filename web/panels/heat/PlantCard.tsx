import './card.css';
import { compassWord, formatHeatLimit, formatTemperature, formatPlusMinus, wallWords } from '../../../engine/index.ts';
import type { PlantLoad } from '../../../engine/index.ts';
import { guessesOf } from '../../state/next.ts';
import { askWhy, aside, periodKind } from '../../state/view.ts';
import { plan, units } from '../../state/yard.ts';
import { timesIn } from '../parts/times.ts';
import { plantHours } from './hours.ts';
import { HoursTable } from './HoursTable.tsx';
import { plantPictures } from './pictures/pictured.ts';
import { PlantRose } from './pictures/PlantRose.tsx';
import { SkyPicture } from './pictures/SkyPicture.tsx';
import { WeeksTable } from './pictures/WeeksTable.tsx';

/** How a chosen plant fares, side by side and in numbers. */
export function PlantCard({ plant, name }: { readonly plant: PlantLoad; readonly name: string }) {
  const sides = plant.sides ?? [];
  return (
    <>
      <p>
        <button type="button" onClick={() => askWhy(plant.id)}>
          It burnt: why?
        </button>
      </p>
      <details>
        <summary>In numbers</summary>
        <dl class="plant-numbers">
          <LeafNumbers leaf={plant.leaf} />
          {plant.walls.length > 0 && (
            <>
              <dt>Walls</dt>
              <dd>{wallWords(plan.value, plant.walls, units.value)}</dd>
            </>
          )}
          <LightNumbers plant={plant} />
          {plant.pot && <PotNumbers pot={plant.pot} />}
          <HowSure id={plant.id} />
        </dl>
      </details>
      <HoursTable live={plantHours.value} place="its top" />
      <SkyPicture pictured={plantPictures} place="its top" />
      <WeeksTable pictured={plantPictures} place="its top" />
      {sides.length > 0 && plant.leaf && <PlantRose plant={plant} name={name} />}
      {sides.length > 0 && <SideTable sides={sides} worst={plant.from} />}
    </>
  );
}

function LeafNumbers({ leaf }: Pick<PlantLoad, 'leaf'>) {
  if (!leaf) return null;
  const degrees = (celsius: number): string => formatTemperature(celsius, units.value);
  const off = (kelvin: number): string => formatPlusMinus(kelvin, units.value);
  return (
    <>
      <dt>Leaf, heatwave day</dt>
      <dd>
        thirsty {degrees(leaf.thirsty)} {off(leaf.spread.thirsty)}, watered {degrees(leaf.watered)}{' '}
        {off(leaf.spread.watered)}; limit {formatHeatLimit(leaf.limit, units.value)} {off(leaf.spread.limit)}
      </dd>
    </>
  );
}

/** Of which days hours of sun and light are told: those of a hot day are more than the season's. */
const WHOSE = { season: 'season’s mean', heatwave: 'heatwave day', day: 'that day' } as const;

/** Light is a matter of the top, as in every verdict on it; harm of all sides. */
function LightNumbers({ plant }: { readonly plant: PlantLoad }) {
  const top = plant.sides?.find(({ side }) => side === 'top');
  const kind = periodKind.value;
  const hours = `${(top ?? plant).sunHours.toFixed(1)} h a day${top ? ' at its top' : ''}`;
  return (
    <>
      <dt>Sun, {WHOSE[kind]}</dt>
      <dd>
        {/* A seed packet's word is of a whole season. */}
        {kind === 'season' ? `${hours}, ${plant.lightClass}` : hours}; {plant.hotHours.toFixed(1)} hot hours
        {top && ', all sides taken together'}
      </dd>
      <dt>Light for growing, {WHOSE[kind]}</dt>
      <dd>
        {(top ?? plant).dailyLight.toFixed(0)} mol/m² a day{top && ' at its top'}
      </dd>
    </>
  );
}

function PotNumbers({ pot }: { readonly pot: NonNullable<PlantLoad['pot']> }) {
  return (
    <>
      <dt>Its pot’s wall</dt>
      <dd>
        {pot.sunHours.toFixed(1)} h of sun, {pot.hotHours.toFixed(1)} hot hours a day
      </dd>
    </>
  );
}

function HowSure({ id }: { readonly id: string }) {
  const guesses = guessesOf(plan.value);
  const own = guesses.filter(({ feature }) => feature?.id === id).length;
  const many =
    guesses.length === 1 ? '1 number of the plan is a guess' : `${guesses.length} numbers of the plan are guesses`;
  return (
    <>
      <dt>How sure</dt>
      <dd>
        {guesses.length === 0 ? 'every number is measured' : `${many}${own > 0 ? `, ${own} of this plant` : ''}`}{' '}
        <button type="button" class="in-words" onClick={() => (aside.value = 'sure')}>
          What hangs on them?
        </button>
      </dd>
    </>
  );
}

interface SideTableProps {
  readonly sides: NonNullable<PlantLoad['sides']>;
  readonly worst: PlantLoad['from'];
}

function SideTable({ sides, worst }: SideTableProps) {
  return (
    <details>
      <summary>Side by side, as a table</summary>
      <table class="side-table">
        <thead>
          <tr>
            <th scope="col">Side</th>
            <th scope="col">Hot hours, h</th>
            <th scope="col">Over limit, K·h a day</th>
            <th scope="col">Warmest at</th>
          </tr>
        </thead>
        <tbody>
          {sides.map(({ side, hotHours, scorchDose, peakAt }) => (
            <tr key={side} class={side === worst ? 'worst-side' : undefined}>
              <th scope="row">
                {side === 'top' ? 'top' : compassWord(side)}
                {side === worst && ' (worst)'}
              </th>
              <td>{hotHours.toFixed(1)}</td>
              <td>{scorchDose === null ? '–' : scorchDose.toFixed(0)}</td>
              <td>{peakAt === null ? 'never over' : timesIn(peakAt)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

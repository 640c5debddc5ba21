import './card.css';
import {
  compassWord,
  formatHeatLimit,
  formatTemperature,
  formatTemperatureDifference,
  rootsAbout,
  wallWords,
} from '../../../engine/index.ts';
import type { PlantLoad } from '../../../engine/index.ts';
import { guessesOf } from '../../state/next.ts';
import { askWhy, aside } from '../../state/view.ts';
import { plan, units } from '../../state/yard.ts';
import { HoursTable } from './HoursTable.tsx';
import { PlantRose } from './pictures/PlantRose.tsx';
import { plantHours } from './hours.ts';
import { plantPictures } from './pictures/pictured.ts';
import { SkyPicture } from './pictures/SkyPicture.tsx';
import { WeeksTable } from './pictures/WeeksTable.tsx';

/** How a chosen plant fares, side by side and in numbers. */
export function PlantCard({ plant, name }: { readonly plant: PlantLoad; readonly name: string }) {
  const degrees = (celsius: number): string => formatTemperature(celsius, units.value);
  const off = (kelvin: number): string => formatTemperatureDifference(kelvin, units.value).split(' ')[0];
  const guesses = guessesOf(plan.value);
  const own = guesses.filter(({ feature }) => feature?.id === plant.id).length;
  const sides = plant.sides ?? [];
  // Light is a matter of the top, as in every verdict on it; harm of all sides.
  const top = sides.find(({ side }) => side === 'top');
  return (
    <>
      <dl class="plant-numbers">
        {plant.leaf && (
          <>
            <dt>Leaf, heatwave day</dt>
            <dd>
              thirsty {degrees(plant.leaf.thirsty)} ± {off(plant.leaf.spread.thirsty)}, watered{' '}
              {degrees(plant.leaf.watered)} ± {off(plant.leaf.spread.watered)}; limit{' '}
              {formatHeatLimit(plant.leaf.limit, units.value)} ± {off(plant.leaf.spread.limit)}
            </dd>
          </>
        )}
        {plant.when && (
          <>
            <dt>Over its limit</dt>
            <dd>
              {plant.when.from} to {plant.when.to}
            </dd>
          </>
        )}
        {plant.walls.length > 0 && (
          <>
            <dt>Walls</dt>
            <dd>{wallWords(plan.value, plant.walls, units.value)}</dd>
          </>
        )}
        <dt>Sun</dt>
        <dd>
          {top
            ? `${top.sunHours.toFixed(1)} h a day at its top, ${plant.lightClass}`
            : `${plant.sunHours.toFixed(1)} h a day, ${plant.lightClass}`}
          ; {plant.hotHours.toFixed(1)} hot hours{top && ', all sides taken together'}
        </dd>
        <dt>Light for growing</dt>
        <dd>
          {(top ?? plant).dailyLight.toFixed(0)} mol/m² a day{top && ' at its top'}
        </dd>
        {plant.pot && (
          <>
            <dt>Its pot’s wall</dt>
            <dd>
              {plant.pot.sunHours.toFixed(1)} h of sun, {plant.pot.hotHours.toFixed(1)} hot hours a day
            </dd>
            <dt>Roots in the pot, heatwave day</dt>
            <dd>
              {rootsAbout(plant.pot.roots, units.value)}: {plant.pot.roots.verdict}
            </dd>
          </>
        )}
        <dt>How sure</dt>
        <dd>
          {guesses.length === 0
            ? 'every number is measured'
            : `${guesses.length} ${
                guesses.length === 1 ? 'number of the plan is ' + 'a guess' : 'numbers of the plan are guesses'
              }${own > 0 ? `, ${own} of this plant` : ''}`}{' '}
          <button type="button" class="in-words" onClick={() => (aside.value = 'sure')}>
            What hangs on them?
          </button>
        </dd>
      </dl>
      <p>
        <button type="button" onClick={() => askWhy(plant.id)}>
          It burnt: why?
        </button>
      </p>
      <HoursTable live={plantHours.value} place="its top" />
      <SkyPicture pictured={plantPictures} place="its top" />
      <WeeksTable pictured={plantPictures} place="its top" />
      {sides.length > 0 && plant.leaf && <PlantRose plant={plant} name={name} />}
      {sides.length > 0 && (
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
                <tr key={side} class={side === plant.from ? 'worst-side' : undefined}>
                  <th scope="row">
                    {side === 'top' ? 'top' : compassWord(side)}
                    {side === plant.from && ' (worst)'}
                  </th>
                  <td>{hotHours.toFixed(1)}</td>
                  <td>{scorchDose === null ? '–' : scorchDose.toFixed(0)}</td>
                  <td>{peakAt ?? 'never over'}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </details>
      )}
    </>
  );
}

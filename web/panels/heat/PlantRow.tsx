import { useEffect, useRef } from 'preact/hooks';
import { capital, compassWord, formatStretch } from '../../../engine/index.ts';
import type { PlantLoad } from '../../../engine/index.ts';
import { sunUp } from '../../state/results.ts';
import { selection } from '../../state/view.ts';
import { timesIn } from '../parts/times.ts';
import { HoursBar } from './HoursBar.tsx';
import { plantCard } from './slots.ts';

interface PlantRowProps {
  readonly plant: PlantLoad;
  readonly name: string;
  readonly open: boolean;
}

/** One plant in a line with its harmful hours; opened, all that is known of it. */
export function PlantRow({ plant, name, open }: PlantRowProps) {
  const row = useRef<HTMLLIElement>(null);
  useEffect(() => {
    // Its head alone: a list that was opened by hand does not jump.
    if (open) row.current?.querySelector('button')?.scrollIntoView({ block: 'nearest' });
  }, [open]);
  const told = timesIn(plant.sentence.replace(`${name}: `, ''));
  const harmed = plant.when !== null && (plant.verdict === 'will burn' || plant.verdict === 'at risk');
  return (
    <li ref={row} class={open ? 'heat-plant chosen' : 'heat-plant'}>
      <button type="button" aria-expanded={open} onClick={() => (selection.value = open ? [] : [plant.id])}>
        <strong dir="auto">{name}</strong>{' '}
        <span class={`verdict ${(plant.verdict ?? 'none').replaceAll(' ', '-')}`}>
          {plant.verdict ?? 'no verdict yet'}
        </span>
        {harmed && plant.when !== null && <HoursBar when={plant.when} />}
        {!open && harmed && plant.when !== null && (
          <span class="heat-plant-line">
            {timesIn(formatStretch(plant.when, 'metric', sunUp.value))}
            {sideWords(plant)}
          </span>
        )}
      </button>
      {open && (
        <div class="plant-card">
          <p>{capital(told)}</p>
          <plantCard.Part plant={plant} name={name} />
        </div>
      )}
    </li>
  );
}

/** Where the sun comes from that harms it: its worst side, and of a top the worst side besides. */
function sideWords({ from, sides = [] }: PlantLoad): string {
  if (from === null) return '';
  const flank = sides
    .filter(({ side }) => side !== 'top')
    .toSorted((a, b) => (b.scorchDose ?? 0) - (a.scorchDose ?? 0))[0]?.side;
  const side = from === 'top' ? flank : from;
  return typeof side === 'number' ? `, ${compassWord(side)} side` : '';
}

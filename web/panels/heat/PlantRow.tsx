import { useEffect, useRef } from 'preact/hooks';
import type { PlantLoad } from '../../../engine/index.ts';
import { selection } from '../../state/view.ts';
import { plantCard } from './slots.ts';

interface PlantRowProps {
  readonly plant: PlantLoad;
  readonly name: string;
  readonly open: boolean;
}

/** One plant in a line; opened, all that is known of it. */
export function PlantRow({ plant, name, open }: PlantRowProps) {
  const row = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (open) row.current?.scrollIntoView({ block: 'nearest' });
  }, [open]);
  const told = plant.sentence.slice(plant.sentence.indexOf(': ') + 2);
  const first = told.split('; ')[0];
  return (
    <li ref={row} class={open ? 'heat-plant chosen' : 'heat-plant'}>
      <button type="button" aria-expanded={open} onClick={() => (selection.value = open ? [] : [plant.id])}>
        <strong dir="auto">{name}</strong>{' '}
        <span class={`verdict ${(plant.verdict ?? 'none').replaceAll(' ', '-')}`}>
          {plant.verdict ?? 'no verdict yet'}
        </span>
        {!open && first !== plant.verdict && (
          <span class="heat-plant-line">
            {first}
            {first.endsWith('.') ? '' : '.'}
          </span>
        )}
      </button>
      {open && (
        <div class="plant-card">
          <p>{told[0].toUpperCase() + told.slice(1)}</p>
          <plantCard.Part plant={plant} name={name} />
        </div>
      )}
    </li>
  );
}

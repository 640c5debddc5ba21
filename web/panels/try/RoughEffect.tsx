import { useEffect } from 'preact/hooks';
import { lessWords } from '../../../engine/index.ts';
import type { PlantEffect } from '../../../engine/index.ts';
import { calledById } from '../../map/drawing/feature-edits.ts';
import { plan } from '../../state/yard.ts';
import { compared } from '../parts/tried.ts';
import { followCloth, rough } from './live-trial.ts';

/** A smaller share of a plant's heat damage is no change. */
const TELLING = 0.02;

/** What the cloth in hand does where it is now, each number rough until the full answer comes. */
export function RoughEffect() {
  useEffect(followCloth, []);
  const now = rough.value;
  if (now === null || compared.value === null) return null;
  const effects = now.plants
    .map(({ id, spared }): PlantEffect => ({ id, share: spared / harmToday(id) }))
    .filter(({ share }) => Math.abs(share) >= TELLING)
    .toSorted((a, b) => b.share - a.share);
  const touched = now.plants.filter(({ id }) => effects.some((effect) => effect.id === id));
  return (
    <p class="rough-effect" aria-busy="true">
      ~ {effects.length === 0 ? 'No less heat damage' : lessWords(plan.value, effects)}.
      {touched.map(({ id, verdict }) => ` ${calledById(id)}: ~ ${verdict}.`).join('')}
    </p>
  );
}

/** As the comparison has it, whatever the plant counts; without one nothing can be told of it. [K·h/day] */
function harmToday(id: string): number {
  const plant = compared.value?.today.plants.find((each) => each.id === id);
  return plant?.before?.harm ? plant.worth * plant.before.harm : Infinity;
}

import { computed, signal } from '@preact/signals';
import type { Canopy, DropSide, Feature, FeatureOf, Section } from '../../../engine/index.ts';
import { changeFeature, compassWord, formatUpToHand, toMillimetre, upToHand } from '../../../engine/index.ts';
import { sectionDrawing } from '../../charts/section-drawing.ts';
import type { Drawn } from '../../charts/section-drawing.ts';
import { calledOf } from '../../map/drawing/feature-edits.ts';
import { commitEdit } from '../../state/edit.ts';
import { isStale, liveAnswer } from '../../state/live.ts';
import { reckonedPlan } from '../../state/reckoned.ts';
import { say } from '../../state/speech.ts';
import { stage } from '../../state/view.ts';
import { plan, units } from '../../state/yard.ts';
import { timesIn } from '../parts/times.ts';
import { openOption } from '../parts/tried.ts';

const askedCanopy = signal<string | null>(null);
const askedPlant = signal<string | null>(null);

const canopies = computed(() =>
  [...(openOption.value?.adds ?? []), ...plan.value.features].filter(
    (feature): feature is Canopy => feature.kind === 'canopy',
  ),
);
const plants = computed(() =>
  plan.value.features.filter((feature): feature is FeatureOf<'plant'> => feature.kind === 'plant'),
);
const canopy = computed(() => canopies.value.find(({ id }) => id === askedCanopy.value) ?? canopies.value[0] ?? null);
const plant = computed(
  () => plants.value.find(({ id }) => id === askedPlant.value) ?? (canopy.value && nearest(canopy.value)),
);

const cutting = liveAnswer('section', () => {
  if (stage.value !== 'try' || canopy.value === null || plant.value === null) return null;
  const options = openOption.value ? [openOption.value.id] : [];
  return {
    plan: reckonedPlan.value,
    options,
    request: { canopy: canopy.value.id, plant: plant.value.id, units: units.value },
  };
});

function nearest({ center: [x, y] }: Canopy): FeatureOf<'plant'> | null {
  const away = ({ at }: FeatureOf<'plant'>): number => Math.hypot(at[0] - x, at[1] - y);
  return plants.value.toSorted((a, b) => away(a) - away(b))[0] ?? null;
}

/** A cut through a roof and a plant at the moment when the low sun first slips under, and the drop that stops it. */
export function SectionPicture() {
  if (canopy.value === null || plant.value === null) return null;
  const { shown, problems } = cutting.value;
  const section = shown?.value;
  return (
    <section class="section-picture" aria-label="Cut through the roof">
      <h2>Cut through the roof</h2>
      <p class="wish">
        <Pick label="Roof" things={canopies.value} chosen={canopy.value} onChange={(id) => (askedCanopy.value = id)} />
        {' and '}
        <Pick
          label="Plant under it"
          things={plants.value}
          chosen={plant.value}
          onChange={(id) => (askedPlant.value = id)}
        />
      </p>
      {problems.map(({ message }) => (
        <p key={message} class="said problem" role="alert">
          {message}
        </p>
      ))}
      {!section && problems.length === 0 && (
        <p class="quiet" role="status">
          Following the sun through the day…
        </p>
      )}
      {section && (
        <>
          <Picture section={section} stale={isStale(cutting.value)} />
          <p class="low-sun">
            {isStale(cutting.value) && '~ '}
            {section.sentence}
          </p>
          {section.slip && <SidesTable section={section} />}
          {section.slip?.cure.drops && <CureButton drops={section.slip.cure.drops} roof={canopy.value} />}
        </>
      )}
    </section>
  );
}

function Pick({
  label,
  things,
  chosen,
  onChange,
}: {
  readonly label: string;
  readonly things: readonly Feature[];
  readonly chosen: Feature;
  readonly onChange: (id: string) => void;
}) {
  return (
    <select class="word" aria-label={label} value={chosen.id} onChange={(event) => onChange(event.currentTarget.value)}>
      {things.map((thing) => (
        <option key={thing.id} value={thing.id}>
          {calledOf(thing)}
        </option>
      ))}
    </select>
  );
}

function Picture({ section, stale }: { readonly section: Section; readonly stale: boolean }) {
  const { viewBox, ground, cloth, ray, cure } = sectionDrawing(section);
  const { foliageFrom, top, halfWidth, pot } = section.plant;
  const line = ([a, b]: readonly [Drawn, Drawn], name: string) => (
    <line class={name} x1={a[0]} y1={a[1]} x2={b[0]} y2={b[1]} />
  );
  return (
    <svg class={stale ? 'section stale' : 'section'} viewBox={viewBox} role="img" aria-label={section.sentence}>
      {line(ground, 'ground')}
      {pot && <rect class="pot" x={-pot.width / 2} y={-pot.height} width={pot.width} height={pot.height} />}
      <line class="stem" x1={0} y1={-(pot?.height ?? 0)} x2={0} y2={-foliageFrom} />
      <rect
        class="foliage"
        x={-halfWidth}
        y={-top}
        width={2 * halfWidth}
        height={top - foliageFrom}
        rx={Math.min(halfWidth, (top - foliageFrom) / 2)}
      />
      {cloth.map((sheet, k) => (
        <g key={k}>{line(sheet, 'cloth')}</g>
      ))}
      {cloth.length > 0 && [0, 1].map((end) => <g key={end}>{line([cloth[0][end], [cloth[0][end][0], 0]], 'post')}</g>)}
      {cure && line(cure, 'cure')}
      {ray && line(ray, 'ray')}
      {ray && section.slip && (
        <text class="ray-time" x={ray[1][0]} y={ray[1][1]} text-anchor="end" dy={-0.08}>
          {timesIn(section.slip.when)}
        </text>
      )}
    </svg>
  );
}

function SidesTable({ section }: { readonly section: Section }) {
  const reached = section.sides.filter(({ evening, morning }) => evening !== null || morning !== null);
  return (
    <details>
      <summary>Low sun under the cloth, side by side of the plant</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">Side</th>
            <th scope="col">Morning</th>
            <th scope="col">Evening</th>
          </tr>
        </thead>
        <tbody>
          {reached.map(({ side, morning, evening }) => (
            <tr key={side}>
              <th scope="row">{side === 'top' ? 'top' : compassWord(side)}</th>
              <td>{morning ? timesIn(`${morning.from}–${morning.to}`) : '–'}</td>
              <td>{evening ? timesIn(`${evening.from}–${evening.to}`) : '–'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

function CureButton({ drops, roof }: { readonly drops: Readonly<Record<DropSide, number>>; readonly roof: Canopy }) {
  const wanted = (Object.entries(drops) as [DropSide, number][]).filter(([, depth]) => depth > 0.005);
  if (wanted.length === 0) return null;
  const words = wanted.map(([side, depth]) => `${formatUpToHand(depth, units.value)} at the ${side}`).join(' and ');
  const hang = (): void => {
    const kept = (roof.drops ?? []).filter(({ side }) => !wanted.some(([each]) => each === side));
    const next = [
      ...kept,
      ...wanted.map(([side, depth]) => ({
        side,
        depth: Math.min(roof.height, toMillimetre(upToHand(depth, units.value))),
        density: roof.density,
      })),
    ];
    if (commitEdit(`Hang drops from ${calledOf(roof)}`, changeFeature(plan.value, roof.id, { drops: next })))
      say(`Hung ${words} from ${calledOf(roof)}. Undo takes it down.`);
  };
  return (
    <button type="button" onClick={hang}>
      Hang this drop: {words}
    </button>
  );
}

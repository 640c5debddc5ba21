import { useState } from 'preact/hooks';
import { towns, townWords } from '../../../../engine/index.ts';
import type { Town } from '../../../../engine/index.ts';
import land from './land.json' with { type: 'json' };

interface Props {
  /** Where the yard is as far as it is known. */
  readonly at: { readonly latitude: number; readonly longitude: number } | null;
  /** A place as one would type it. */
  readonly onTap: (text: string) => void;
}

/** What is in sight: the upper left corner from 180° west and the picture's north, and its size. [°] */
interface Sight {
  readonly x: number;
  readonly y: number;
  readonly across: number;
  readonly up: number;
}

const WHOLE: Sight = { x: 0, y: 0, across: 360, up: land.north - land.south };
const NEAR = { across: 48, up: 24 };
const PARALLELS = [60, 50, 40, 30, 20, 10, 0, -10, -20, -30, -40, -50];

/** The outline of the land: one tap brings a part of it near, the next one says where the yard is. */
export function WorldPicture({ at, onTap }: Props) {
  const [sight, setSight] = useState(WHOLE);
  const near = sight !== WHOLE;
  const letter = sight.across / 26;
  const inSight = near ? towns().filter((town) => isIn(sight, town)) : [];

  function tap(event: MouseEvent): void {
    const box = (event.currentTarget as SVGElement).getBoundingClientRect();
    const x = sight.x + ((event.clientX - box.left) / box.width) * sight.across;
    const y = sight.y + ((event.clientY - box.top) / box.height) * sight.up;
    if (!near)
      return setSight({
        x: between(x - NEAR.across / 2, 0, 360 - NEAR.across),
        y: between(y - NEAR.up / 2, 0, WHOLE.up - NEAR.up),
        ...NEAR,
      });
    const town = inSight.find((each) => Math.hypot(xOf(each) - x, yOf(each) - y) < letter / 2);
    onTap(town ? townWords(town) : `${(land.north - y).toFixed(1)}, ${(x - 180).toFixed(1)}`);
  }

  return (
    <figure class="world-picture">
      <svg
        viewBox={`${sight.x} ${sight.y} ${sight.across} ${sight.up}`}
        role="img"
        aria-label="The outline of the land, to tap where the yard is. Typing the town does the same."
        onClick={tap}
      >
        <path class="world-land" d={land.path} />
        <Graticule step={near ? 10 : 30} />
        <Towns towns={inSight} letter={letter} />
        {at && <circle class="world-here" cx={xOf(at)} cy={yOf(at)} r={letter / 2} />}
      </svg>
      <figcaption class="quiet">
        {near ? 'Tap the place, or the town nearest to it. ' : 'Tap the part of the world; it comes nearer. '}
        {near && (
          <button type="button" onClick={() => setSight(WHOLE)}>
            The whole world
          </button>
        )}
      </figcaption>
    </figure>
  );
}

/** Meridians and parallels. @param step From one to the next. [°] */
function Graticule({ step }: { readonly step: number }) {
  return (
    <>
      {Array.from({ length: 360 / step + 1 }, (_, k) => (
        <line key={`x${k}`} class="world-line" x1={k * step} x2={k * step} y1="0" y2={WHOLE.up} />
      ))}
      {PARALLELS.filter((latitude) => latitude % step === 0).map((latitude) => (
        <line
          key={latitude}
          class={latitude === 0 ? 'world-equator' : 'world-line'}
          x1="0"
          x2="360"
          y1={land.north - latitude}
          y2={land.north - latitude}
        />
      ))}
    </>
  );
}

/** @param letter Height of a letter. [°] */
function Towns({ towns, letter }: { readonly towns: readonly Town[]; readonly letter: number }) {
  const keyOf = (town: Town): string => `${xOf(town)} ${yOf(town)}`;
  return (
    <>
      {towns.map((town) => (
        <circle key={keyOf(town)} class="world-town" cx={xOf(town)} cy={yOf(town)} r={letter / 7} />
      ))}
      {namedOf(towns, letter).map((town) => (
        <text key={keyOf(town)} x={xOf(town) + letter / 4} y={yOf(town) - letter / 4} font-size={letter}>
          {town.name}
        </text>
      ))}
    </>
  );
}

function xOf({ longitude }: { readonly longitude: number }): number {
  return longitude + 180;
}

function yOf({ latitude }: { readonly latitude: number }): number {
  return land.north - latitude;
}

function isIn({ x, y, across, up }: Sight, town: Town): boolean {
  return xOf(town) > x && xOf(town) < x + across && yOf(town) > y && yOf(town) < y + up;
}

/** Those whose names do not lie over each other, larger towns first. @param letter Height of a letter. [°] */
function namedOf(towns: readonly Town[], letter: number): readonly Town[] {
  const named: Town[] = [];
  for (const town of towns) {
    const width = (name: string): number => 0.6 * letter * name.length;
    const free = named.every(
      (other) =>
        Math.abs(yOf(other) - yOf(town)) > letter ||
        xOf(town) > xOf(other) + width(other.name) ||
        xOf(other) > xOf(town) + width(town.name),
    );
    if (free) named.push(town);
  }
  return named;
}

function between(value: number, least: number, most: number): number {
  return Math.max(least, Math.min(most, value));
}

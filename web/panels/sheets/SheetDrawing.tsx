import { METRES_PER_FOOT, scaleFor } from '../../../engine/index.ts';
import type { Blank, Feature, Plan, PlanPoint, Units } from '../../../engine/index.ts';
import { pointsOf } from '../parts/feature/place-fields.ts';

/** Squares of the ruled paper and the bar under the drawing, as people measure. [m] */
export const RULING = {
  metric: { square: 1, squareWords: '1 m', bar: 5, barWords: '5 m' },
  imperial: { square: 3 * METRES_PER_FOOT, squareWords: '3 ft', bar: 15 * METRES_PER_FOOT, barWords: '15 ft' },
} as const;
/** Ground that is drawn round the yard's edge. [m] */
const MARGIN = 1;

/** What the drawing shows, and how many times smaller than it is. [m] */
interface Window {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly letter: number;
  readonly scale: number;
}

export function windowOn({ site, features }: Plan): Window {
  const points = [
    ...site.boundary,
    ...features
      .filter(({ kind }) => kind !== 'eye' && kind !== 'building')
      .flatMap((feature) => pointsOf(feature).points),
  ];
  const left = Math.floor(Math.min(...points.map((point) => point[0]))) - MARGIN;
  const right = Math.ceil(Math.max(...points.map((point) => point[0]))) + MARGIN;
  const foot = Math.floor(Math.min(...points.map((point) => point[1]))) - MARGIN;
  const top = Math.ceil(Math.max(...points.map((point) => point[1]))) + MARGIN;
  const [width, height] = [right - left, top - foot];
  const letter = Math.max(width, height) / 38;
  return { left, top, width, height, letter, scale: scaleFor(width, height + 2 * letter, 0) };
}

interface Props {
  readonly plan: Plan;
  readonly blanks: readonly Blank[];
  readonly window: Window;
  readonly units: Units;
}

/** The yard in black on ruled paper, true to scale, with the number of each blank beside its thing. */
export function SheetDrawing({ plan, blanks, window, units }: Props) {
  const { left, top, width, height, letter, scale } = window;
  const { square, squareWords, bar, barWords } = RULING[units];
  const y = (value: number): number => top - value;
  const x = (value: number): number => value - left;
  const path = (list: readonly PlanPoint[]): string => list.map((point) => `${x(point[0])},${y(point[1])}`).join(' ');
  const numbered = blanks.filter(({ at }) => at).length;
  // What stands outside has its number at the edge.
  const within = (value: number, most: number): number => Math.min(most - letter, Math.max(letter, value));
  return (
    <svg
      class="sheet-drawing"
      width={`${(width * 1000) / scale}mm`}
      viewBox={`0 0 ${width} ${height + 2 * letter}`}
      role="img"
      aria-label={`The yard on a grid of ${squareWords}, with the numbers of ${numbered} blanks`}
    >
      {Array.from({ length: Math.floor(width / square) + 1 }, (_, k) => (
        <line key={`x${k}`} class="sheet-grid" x1={k * square} x2={k * square} y1={0} y2={height} />
      ))}
      {Array.from({ length: Math.floor(height / square) + 1 }, (_, k) => (
        <line key={`y${k}`} class="sheet-grid" y1={k * square} y2={k * square} x1={0} x2={width} />
      ))}
      <polygon class="sheet-edge" points={path(plan.site.boundary)} />
      {plan.features.map((feature) => (
        <Outline key={feature.id} feature={feature} x={x} y={y} path={path} />
      ))}
      {spreadOut(blanks, letter * 2).map(({ blank, at }) => (
        <g key={blank.id}>
          <circle class="sheet-mark" cx={within(x(at[0]), width)} cy={within(y(at[1]), height)} r={letter * 0.85} />
          <text
            x={within(x(at[0]), width)}
            y={within(y(at[1]), height) + letter * 0.36}
            font-size={letter}
            text-anchor="middle"
          >
            {blank.number}
          </text>
        </g>
      ))}
      <line class="sheet-scale" x1={0} x2={bar} y1={height + letter * 0.5} y2={height + letter * 0.5} />
      <text x={bar + letter * 0.4} y={height + letter * 0.9} font-size={letter}>
        {barWords}, a square {squareWords}, 1 : {scale}
      </text>
    </svg>
  );
}

interface OutlineProps {
  readonly feature: Feature;
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  readonly path: (points: readonly PlanPoint[]) => string;
}

function Outline({ feature, x, y, path }: OutlineProps) {
  switch (feature.kind) {
    case 'wall':
    case 'hedge':
    case 'screen':
      return <polyline class="sheet-wall" points={path(feature.path)} />;
    case 'tree':
      return <circle class="sheet-thing" cx={x(feature.at[0])} cy={y(feature.at[1])} r={feature.crownWidth / 2} />;
    case 'plant':
      return <circle class="sheet-thing" cx={x(feature.at[0])} cy={y(feature.at[1])} r={feature.spread / 2} />;
    case 'building':
    case 'bed':
      return <polygon class="sheet-thing" points={path(feature.outline)} />;
    default:
      return null;
  }
}

/** Several numbers of one thing stand in a row. @param step [m] */
function spreadOut(blanks: readonly Blank[], step: number): { readonly blank: Blank; readonly at: PlanPoint }[] {
  const seen = new Map<string, number>();
  return blanks.flatMap((blank) => {
    if (!blank.at) return [];
    const place = blank.at.join();
    const before = seen.get(place) ?? 0;
    seen.set(place, before + 1);
    return [{ blank, at: [blank.at[0] + before * step, blank.at[1]] as const }];
  });
}

import type { Blank, Feature, Plan, PlanPoint } from '../../../engine/index.ts';

/** A step of the ruled paper. [m] */
const GRID = 1;
/** Ground that is drawn round the yard's edge. [m] */
const MARGIN = 1;

/** The yard in black on ruled paper, 1 m a square, with the number of each blank beside its thing. */
export function SheetDrawing({ plan, blanks }: { readonly plan: Plan; readonly blanks: readonly Blank[] }) {
  const { boundary } = plan.site;
  const points = [
    ...boundary,
    ...plan.features.filter(({ kind }) => kind !== 'eye' && kind !== 'building').flatMap(pointsOf),
  ];
  const left = Math.floor(Math.min(...points.map((point) => point[0]))) - MARGIN;
  const right = Math.ceil(Math.max(...points.map((point) => point[0]))) + MARGIN;
  const foot = Math.floor(Math.min(...points.map((point) => point[1]))) - MARGIN;
  const top = Math.ceil(Math.max(...points.map((point) => point[1]))) + MARGIN;
  const y = (value: number): number => top - value;
  const x = (value: number): number => value - left;
  const path = (list: readonly PlanPoint[]): string => list.map((point) => `${x(point[0])},${y(point[1])}`).join(' ');
  const width = right - left;
  const height = top - foot;
  const letter = Math.max(width, height) / 38;
  return (
    <svg
      class="sheet-drawing"
      viewBox={`0 0 ${width} ${height + 2 * letter}`}
      role="img"
      aria-label={`The yard on a grid of 1 m, with the numbers of ${blanks.filter(({ at }) => at).length} blanks`}
    >
      {Array.from({ length: Math.round(width / GRID) + 1 }, (_, k) => (
        <line key={`x${k}`} class="sheet-grid" x1={k} x2={k} y1={0} y2={height} />
      ))}
      {Array.from({ length: Math.round(height / GRID) + 1 }, (_, k) => (
        <line key={`y${k}`} class="sheet-grid" y1={k} y2={k} x1={0} x2={width} />
      ))}
      <polygon class="sheet-edge" points={path(boundary)} />
      {plan.features.map((feature) => (
        <Outline key={feature.id} feature={feature} x={x} y={y} path={path} />
      ))}
      {spreadOut(blanks, letter * 2).map(({ blank, at }) => (
        <g key={blank.id}>
          <circle class="sheet-mark" cx={x(at[0])} cy={y(at[1])} r={letter * 0.85} />
          <text x={x(at[0])} y={y(at[1]) + letter * 0.36} font-size={letter} text-anchor="middle">
            {blank.number}
          </text>
        </g>
      ))}
      <line class="sheet-scale" x1={0} x2={5} y1={height + letter * 0.5} y2={height + letter * 0.5} />
      <text x={5 + letter * 0.4} y={height + letter * 0.9} font-size={letter}>
        5 m, a square 1 m
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

function pointsOf(feature: Feature): readonly PlanPoint[] {
  if ('outline' in feature) return feature.outline;
  if ('path' in feature) return feature.path;
  return 'at' in feature ? [feature.at] : [feature.center];
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

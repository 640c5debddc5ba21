import { MONTHS } from '../../../../engine/index.ts';
import type { PathStep, SkyPicture as Sky, SkyPoint } from '../../../../engine/index.ts';
import { labelsOf } from '../../../charts/dome-labels.ts';
import { domePoint, HORIZON, linePath, loopsPath } from '../../../charts/dome.ts';
import type { DomeSide } from '../../../charts/dome.ts';
import { fullHoursOf } from '../../../charts/sun-path.ts';
import { hourNumber } from '../../../common/words.ts';
import { shownClock } from '../../../state/clock.ts';
import { sunNow } from '../../../state/results.ts';
import { shapeName } from '../../parts/quantity-words.ts';

type Path = Sky['paths'][number];

const QUARTERS = [
  ['North', 0],
  ['East', 90],
  ['South', 180],
  ['West', 270],
] as const;

interface DomeProps {
  readonly sky: Sky;
  /** The path whose hours are told. */
  readonly told: Path | null;
  readonly side: DomeSide;
  readonly finding: string;
}

/** The sky laid flat: straight up in the middle, the horizon round it. */
export function Dome({ sky: { silhouettes, paths }, told, side, finding }: DomeProps) {
  const labels = labelsOf(
    silhouettes.map(({ id, parts }) => ({ name: shapeName(id), parts })),
    side,
  );
  return (
    <svg class="dome" viewBox="-124 -120 248 240" role="img" aria-label={finding}>
      <Hatches />
      <circle r={HORIZON} class="dome-sky" />
      {silhouettes.map(({ id, kind, parts }) => (
        <g key={id} class={`silhouette ${kind}`}>
          {(['outline', 'body'] as const).map((layer) =>
            parts.map((loops, k) => (
              <path key={layer + k} class={layer} d={loopsPath(loops, side)} fill-rule="evenodd" />
            )),
          )}
        </g>
      ))}
      {[30, 60].map((altitude) => (
        <circle key={altitude} r={HORIZON * (1 - altitude / 90)} class="dome-ring" />
      ))}
      {paths.map((path) => (
        <SunPath key={path.monthDay} path={path} isTold={path === told} side={side} />
      ))}
      {labels.map(({ name, x, y }) => (
        <text key={name} class="shape-name" x={x} y={y}>
          {name}
        </text>
      ))}
      <SunDisc side={side} />
      <circle r={HORIZON} class="dome-rim" />
      <Quarters side={side} />
      {monthLabels(paths).map(({ name, azimuth }) => {
        const [x, y] = domePoint([azimuth, -4], side);
        return (
          <text key={name} class="month-name" x={x} y={y + 2} text-anchor={x > 0 ? 'start' : 'end'}>
            {name}
          </text>
        );
      })}
    </svg>
  );
}

/** What silhouettes are filled with: cloth woven, crowns stippled. */
function Hatches() {
  return (
    <defs>
      <pattern id="weave" width="4" height="4" patternUnits="userSpaceOnUse">
        <path d="M0 2H4M2 0V4" class="weave-thread" />
      </pattern>
      <pattern id="stipple" width="4" height="4" patternUnits="userSpaceOnUse">
        <circle cx="1" cy="1" r="0.8" class="stipple-dot" />
        <circle cx="3" cy="3" r="0.8" class="stipple-dot" />
      </pattern>
    </defs>
  );
}

function SunPath({ path, isTold, side }: { readonly path: Path; readonly isTold: boolean; readonly side: DomeSide }) {
  return (
    <g>
      {runsOf(path.steps).map(({ name, points }, k) => (
        <g key={k}>
          <path class="sun-edge" d={linePath(points, side)} />
          <path class={`sun-path ${name}`} d={linePath(points, side)} />
        </g>
      ))}
      {fullHoursOf(path.steps).map(({ hour, azimuth, altitude }) => {
        const [x, y] = domePoint([azimuth, altitude], side);
        return (
          <g key={hour}>
            <circle class="hour-dot" cx={x} cy={y} r={isTold ? 1.8 : 1.1} />
            {isTold && hour % 2 === 0 && (
              <text class="hour-name" x={x} y={y - 5}>
                {hourNumber(hour, shownClock.value)}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

function SunDisc({ side }: Pick<DomeProps, 'side'>) {
  const sun = sunNow.value;
  if (!sun || sun.altitude <= 0) return null;
  const [x, y] = domePoint([sun.azimuth, sun.altitude], side);
  return <circle class="sun-disc" cx={x} cy={y} r="4" />;
}

function Quarters({ side }: Pick<DomeProps, 'side'>) {
  return (
    <>
      {QUARTERS.map(([word, bearing]) => {
        const [x, y] = domePoint([bearing, -8], side);
        const east = Math.abs(x) > 50;
        return (
          <text
            key={word}
            class="quarter"
            x={east ? Math.sign(x) * 111 : x}
            y={y + 3}
            transform={east ? `rotate(${x > 0 ? 90 : -90} ${Math.sign(x) * 111} ${y})` : undefined}
          >
            {word}
          </text>
        );
      })}
    </>
  );
}

/** Runs of a path that look alike, each ending where the next begins. */
function runsOf(steps: readonly PathStep[]): { name: string; points: SkyPoint[] }[] {
  const runs: { name: string; points: SkyPoint[] }[] = [];
  for (const { azimuth, altitude, share, hot } of steps) {
    const name = `${share >= 0.5 ? 'lit' : 'hidden'} ${hot ? 'hot' : ''}`;
    const last = runs.at(-1);
    if (last) last.points.push([azimuth, altitude]);
    if (last?.name !== name) runs.push({ name, points: [[azimuth, altitude]] });
  }
  return runs;
}

/** Months at the rim where their sun rises, those that rise close together in one word. */
function monthLabels(paths: Sky['paths']): { name: string; azimuth: number }[] {
  const rises = paths
    .flatMap(({ monthDay, steps }) =>
      steps.length > 0
        ? [{ name: MONTHS[Number(monthDay.slice(0, 2)) - 1].slice(0, 3), azimuth: steps[0].azimuth }]
        : [],
    )
    .toSorted((a, b) => a.azimuth - b.azimuth);
  const labels: { name: string; azimuth: number; last: number }[] = [];
  for (const { name, azimuth } of rises) {
    const near = labels.at(-1);
    if (near && azimuth - near.last < 5) {
      near.name += ` ${name}`;
      near.last = azimuth;
    } else labels.push({ name, azimuth, last: azimuth });
  }
  return labels;
}

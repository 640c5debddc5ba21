/** The sun's day as lines on a picture: minutes along, altitude up, the horizon at `horizon`. All in px, y down. */
export interface DayArcBox {
  readonly width: number;
  /** Room above the horizon: the zenith's height. */
  readonly horizon: number;
  /** Minutes of the day along the width. */
  readonly minutes: number;
}

const STEP = 5;

export function xOf(minute: number, box: DayArcBox): number {
  return (minute / box.minutes) * box.width;
}

/** 90° is the top edge; below the horizon the scale goes on. */
export function yOf(altitude: number, box: DayArcBox): number {
  return box.horizon * (1 - altitude / 90);
}

/** Path of the sun above the horizon, "M…L…"; empty when it does not rise. */
export function arcPath(altitude: Float64Array, box: DayArcBox): string {
  return runsOf(altitude.length, (minute) => altitude[minute] > 0)
    .map(([from, to]) => `M${pointsAlong(altitude, from, to, box).join('L')}`)
    .join('');
}

/** Area under the arc wherever `harm` is at least `least`. */
export function harmPath(altitude: Float64Array, harm: Float64Array, least: number, box: DayArcBox): string {
  return runsOf(harm.length, (minute) => harm[minute] >= least && altitude[minute] > 0)
    .map(
      ([from, to]) =>
        `M${xOf(from, box).toFixed(1)},${box.horizon}L${pointsAlong(altitude, from, to, box).join('L')}V` +
        `${box.horizon}Z`,
    )
    .join('');
}

/** Stretches of minutes, [from, to] both included, in which `holds` is true. */
export function runsOf(count: number, holds: (minute: number) => boolean): [number, number][] {
  const runs: [number, number][] = [];
  for (let minute = 0; minute < count; minute++) {
    if (!holds(minute)) continue;
    const last = runs.at(-1);
    if (last && last[1] === minute - 1) last[1] = minute;
    else runs.push([minute, minute]);
  }
  return runs;
}

function pointsAlong(altitude: Float64Array, from: number, to: number, box: DayArcBox): string[] {
  const points: string[] = [];
  for (let minute = from; minute < to; minute += STEP) points.push(point(minute));
  points.push(point(to));
  return points;

  function point(minute: number): string {
    return `${xOf(minute, box).toFixed(1)},${yOf(altitude[minute], box).toFixed(1)}`;
  }
}

import type { PathStep, SkyPicture } from '../../load/light/sky-from.ts';
import type { SpotWeek } from '../../load/light/weeks-at.ts';
import { dayWords } from '../../plan/dates/dates.ts';
import type { Plan } from '../../plan/types.ts';
import { formatStretch, clockAt } from '../../plan/units/clock.ts';
import type { Units } from '../../plan/units/units.ts';
import { nameOf } from '../../plan/words/names.ts';
import { sunUp } from '../../sun/sun-up.ts';
import { table } from './plain-text.ts';

/** Below this share of an hour hot sun is not named in a week's line. */
const NAMED_FROM = 0.1;

/** In how many weeks hot sun comes there, and between which hours. */
export function weeksAnswer(weeks: readonly SpotWeek[], units: Units): string {
  const hot = weeks.filter(({ harmful }) => harmful.some(isNamed));
  if (hot.length === 0) return 'No hot sun comes there in any week.';
  const hours = hot[0].harmful.map((_, hour) => hot.some(({ harmful }) => isNamed(harmful[hour])));
  return `Hot sun comes there in ${hot.length} of ${weeks.length} weeks, ${hoursWords(hours, units)}.`;
}

function isNamed(share: number): boolean {
  return share >= NAMED_FROM;
}

/** Week by week at a spot: how much sun, how much of it hot, and between which hours. */
export function weeksText(weeks: readonly SpotWeek[], units: Units, columns: number): string {
  const judged = weeks.some(({ over }) => over !== null);
  const rows = weeks.map(({ from, sun, harmful, over, clocksChanged }) => [
    `${dayWords(from)}${clocksChanged ? ', clocks changed' : ''}`,
    sumOf(sun).toFixed(1),
    sumOf(harmful).toFixed(1),
    hoursWords(harmful.map(isNamed), units),
    ...(judged ? [over === null ? 'not judged' : hoursWords(over, units)] : []),
  ]);
  const head = ['week from', 'sun h/day', 'hot h/day', 'hot between', ...(judged ? ['leaf too hot'] : [])];
  return table(columns, head, rows, [1, 2]);
}

/** When the sun first and last reaches a spot on the 21st of a month of the season. */
export function skyAnswer(plan: Plan, { paths }: SkyPicture, monthDay: string, units: Units): string {
  const path = paths.find((each) => each.monthDay === monthDay) ?? paths[0];
  const lit = path.steps.filter(({ share }) => share > 0);
  const on = dayWords(`2001-${path.monthDay}`);
  return lit.length === 0
    ? `On ${on} no sun reaches it.`
    : `On ${on} sun reaches it ${pathWords(plan, path.monthDay, lit, units)}.`;
}

/** From when to when some of the sun's way is. */
function pathWords(plan: Plan, monthDay: string, steps: readonly PathStep[], units: Units): string {
  const [from, to] = [steps[0], steps[steps.length - 1]].map(({ clock }) => clockAt(Math.round(clock)));
  return formatStretch({ from, to }, units, sunUp(plan, `${plan.season.year}-${monthDay}`));
}

/** Month by month, the 21st: when the sun reaches a spot, and what it goes behind. */
export function skyText(plan: Plan, { paths }: SkyPicture, units: Units, columns: number): string {
  const rows = paths.flatMap(({ monthDay, steps }) =>
    stretchesOf(steps).map((stretch, k): string[] => {
      const shares = stretch.map(({ share }) => Math.round(share * 100));
      const [least, most] = [Math.min(...shares), Math.max(...shares)];
      return [
        k === 0 ? dayWords(`2001-${monthDay}`) : '',
        pathWords(plan, monthDay, stretch, units),
        `${stretch[0].azimuth.toFixed(0)}° → ${stretch[stretch.length - 1].azimuth.toFixed(0)}°`,
        least === most ? `${least} %` : `${least} to ${most} %`,
        stretch[0].blockers.map((id) => (id === 'skyline' ? 'the skyline' : nameOf(plan, id))).join(', ') || 'nothing',
      ];
    }),
  );
  return table(columns, ['day', 'clock', 'bearing', 'beam left', 'in the way'], rows);
}

/** Moments in a row with the same things in the way. */
function stretchesOf(steps: readonly PathStep[]): PathStep[][] {
  const stretches: PathStep[][] = [];
  for (const step of steps) {
    const last = stretches.at(-1);
    if (last && last[0].blockers.join('\n') === step.blockers.join('\n')) last.push(step);
    else stretches.push([step]);
  }
  return stretches;
}

/** "09:00 to 12:00, 15:00 to 19:00": full hours, the end that of the last hour; a dash for none. */
function hoursWords(hours: readonly boolean[], units: Units): string {
  const runs: [number, number][] = [];
  hours.forEach((is, hour) => {
    if (!is) return;
    const last = runs.at(-1);
    if (last && last[1] === hour) last[1] = hour + 1;
    else runs.push([hour, hour + 1]);
  });
  const told = runs.map(([from, to]) => formatStretch({ from: clockAt(60 * from), to: clockAt(60 * to) }, units));
  return told.join(', ') || '–';
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}

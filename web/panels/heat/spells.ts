import type { SpotStep } from '../../../engine/index.ts';

/** A stretch of the day in which the same things stand before the sun. */
export interface Spell {
  /** Minutes after midnight by the site's clocks. */
  readonly from: number;
  readonly to: number;
  /** Share of the beam that arrives, mean. */
  readonly share: number;
  /** Feature ids, nearest first; 'skyline' for the land's. */
  readonly blockers: readonly string[];
}

/** Minutes after midnight of a local time "2026-07-21T16:25:00+02:00". */
function clockOf(when: string): number {
  return Number(when.slice(11, 13)) * 60 + Number(when.slice(14, 16)) + Number(when.slice(17, 19)) / 60;
}

/** The day from sunrise to sunset in stretches: a new one begins where something comes before the sun or leaves it. */
export function spellsOf(steps: readonly SpotStep[]): readonly Spell[] {
  const spells: { from: number; to: number; sum: number; hours: number; key: string; blockers: readonly string[] }[] =
    [];
  for (const { when, hours, altitude, share, blockers } of steps) {
    if (altitude <= 0) continue;
    const ids = blockers.map(({ id }) => id);
    const key = share <= 0 ? `none:${ids[0]}` : ids.join(' ');
    const middle = clockOf(when);
    const last = spells.at(-1);
    if (last?.key === key) {
      last.to = middle + hours * 30;
      last.sum += share * hours;
      last.hours += hours;
    } else
      spells.push({
        from: last && middle - hours * 30 - last.to < 1 ? last.to : middle - hours * 30,
        to: middle + hours * 30,
        sum: share * hours,
        hours,
        key,
        blockers: ids,
      });
  }
  return spells.map(({ from, to, sum, hours, blockers }) => ({ from, to, share: sum / hours, blockers }));
}

/**
 * The step with the most sun in the hottest air (share × sunshine × air), or `null` where no sun arrives. `clock`:
 * minutes after midnight.
 */
export function hottestOf(
  steps: readonly SpotStep[],
): { readonly clock: number; readonly air: number; readonly share: number } | null {
  let best: SpotStep | null = null;
  const heat = ({ share, sunshine, air }: SpotStep): number => share * sunshine * air;
  for (const step of steps)
    if (step.share > 0 && step.altitude > 0 && (best === null || heat(step) > heat(best))) best = step;
  return best && { clock: clockOf(best.when), air: best.air, share: best.share };
}

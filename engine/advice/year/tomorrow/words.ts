import { formatClock } from '../../../plan/units/clock.ts';
import type { Units } from '../../../plan/units/units.ts';
import type { Tomorrow, TomorrowTask } from './types.ts';

/** When a task is due, as one says it: "The evening before", "At sunrise, 7:10 am", "10:30". */
export function dueWords({ sunUp }: Pick<Tomorrow, 'sunUp'>, at: TomorrowTask['at'], units: Units): string {
  if (at === 'the evening before') return 'The evening before';
  return at === sunUp?.from ? `At sunrise, ${formatClock(at, units)}` : formatClock(at, units);
}

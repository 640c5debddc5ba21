import { monthWord } from '../../../plan/dates/dates.ts';
import { monthOfDate } from '../../../plan/dates/parts.ts';
import type { CivilDate, Plan } from '../../../plan/types.ts';
import { monthClimate } from '../../../sun/climate.ts';
import type { Advice } from '../advice.ts';

/**
 * A hot month in which the afternoons get less sun than a month before, and the air more moisture, by at least so much:
 * of the rough climates those with a monsoon, and inland of the Mediterranean September. Our choice. [share, %, °C]
 */
const CLOUDS_OVER = { sunshine: 0.045, humidity: 5, high: 30 };

/**
 * The first month under a cloth in which rains come, so far as the climate's clouds and moisture tell; that every storm
 * takes the cloth off stands among the cautions in any case.
 */
export function stormAdvice(plan: Plan, up: CivilDate, down: CivilDate): Advice[] {
  const last = monthOfDate(down);
  for (let month = monthOfDate(up); ; month = (month % 12) + 1) {
    if (cloudsOver(plan, month))
      return [
        {
          basis: 'our estimate',
          text:
            `About ${monthWord(month)} the sky clouds over and the air turns damp, as where storms build: look at ` +
            'the forecast from then on, and take the cloth down before each storm. Hot days are told under a ' +
            'clear sky; through cloudy weeks it may stay down.',
        },
      ];
    if (month === last) return [];
  }
}

function cloudsOver(plan: Plan, month: number): boolean {
  const is = monthClimate(plan, month);
  const was = monthClimate(plan, ((month + 10) % 12) + 1);
  if (is === null || was === null) return false;
  return (
    is.high >= CLOUDS_OVER.high &&
    was.sunshineAfternoon - is.sunshineAfternoon >= CLOUDS_OVER.sunshine &&
    is.humidity - was.humidity >= CLOUDS_OVER.humidity
  );
}

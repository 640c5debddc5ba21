import { lieOf, parseNumber, wrapBearing } from '../../../engine/index.ts';
import type { NorthObservation } from '../../../engine/index.ts';
import { keptForYard } from '../../state/kept.ts';
import { plan } from '../../state/yard.ts';
import type { When } from '../parts/boxes/WhenFields.tsx';
import { pointOf, siteNow } from '../parts/typed.ts';

export type Way = NorthObservation['by'];

/** A look at north as it is being typed. */
export interface Sighting {
  readonly by: Way;
  readonly from: string;
  readonly to: string;
  readonly when: When;
  readonly reading: string;
}

export const typedSighting = keptForYard<Sighting>('north', {
  by: 'shadow',
  from: '',
  to: '',
  when: { ...siteNow(), time: '' },
  reading: '',
});

export type ReadSighting = { readonly observation: NorthObservation } | { readonly lacks: string };

/** What was typed as the plan keeps it, or what is still lacking. */
export function readSighting({ by, from, to, when, reading }: Sighting): ReadSighting {
  if (by === 'picture') {
    const { underlay } = plan.value.site;
    return underlay
      ? { observation: { by, bearing: wrapBearing(-lieOf(underlay).turn) } }
      : { lacks: 'There is no picture under the drawing yet.' };
  }
  const line = [pointOf(from), pointOf(to)] as const;
  const [foot, tip] = line;
  if (foot === null || tip === null) return { lacks: lackOf(foot === null ? from : to) };
  if (by === 'compass') {
    const bearing = parseNumber(reading.replace('°', ''));
    if (bearing === null || bearing < 0 || bearing > 360)
      return {
        lacks:
          reading.trim() === ''
            ? 'The compass reading is still to come.'
            : `"${reading}" is no bearing from 0 to 360°.`,
      };
    return { observation: { by, reading: bearing, along: [foot, tip] } };
  }
  if (when.date === '' || when.time === '') return { lacks: 'The minute is still to come.' };
  const clock = `${when.date}T${when.time}`;
  return {
    observation: by === 'shadow' ? { by, line: [foot, tip], when: clock } : { by, along: [foot, tip], when: clock },
  };
}

function lackOf(text: string): string {
  return text.trim() === ''
    ? 'Both points are still to come.'
    : `"${text}" is no point: write how far right and up, as 3 2.`;
}

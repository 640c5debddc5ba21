import { computed, signal } from '@preact/signals';
import type { ReadonlySignal, Signal } from '@preact/signals';
import type { MonthDay, PlanPoint } from '../../../../engine/index.ts';
import { liveAnswer } from '../../../state/live.ts';
import type { Live } from '../../../state/live.ts';
import { reckonedPlan } from '../../../state/reckoned.ts';
import { day, heat } from '../../../state/results.ts';
import { mapHeight, monthDay, pin, selection, shownOptions, stage } from '../../../state/view.ts';

/** A plant's crown ends here; its top is looked at from just above. [m] */
const ABOVE = 0.01;

/** A place that pictures are drawn of. */
interface Place {
  readonly at: PlanPoint;
  /** [m] */
  readonly height: number;
  /** The plant whose top it is. */
  readonly plant?: string;
}

/** What the cells of hour by date tell. */
export type WeeksShown = 'harmful' | 'sun' | 'year';
export const weeksShown = signal<WeeksShown>('harmful');

/** The pictures of one place: asked for while they are open. */
export interface Pictured {
  readonly place: ReadonlySignal<Place | null>;
  readonly skyOpen: Signal<boolean>;
  readonly sky: ReadonlySignal<Live<'skyFrom'>>;
  readonly weeksOpen: Signal<boolean>;
  readonly weeks: ReadonlySignal<Live<'weeksAt'>>;
}

/** The day whose leaves and cloth are drawn: the one under the bead, or the heatwave's. */
export const picturedDay: ReadonlySignal<MonthDay> = computed(
  () => day.value.shown?.value.date.slice(5) ?? monthDay.value,
);

/** Of the top of the chosen plant. */
export const plantPictures = picturesOf(
  computed(() => {
    const plant = heat.value.shown?.value.plants.find(({ id }) => id === selection.value[0]);
    return plant ? { at: plant.at, height: plant.height + ABOVE, plant: plant.id } : null;
  }),
);

/** Of the pinned spot, at the map's height. */
export const pinPictures = picturesOf(computed(() => pin.value && { at: pin.value, height: mapHeight.value }));

function picturesOf(place: ReadonlySignal<Place | null>): Pictured {
  const skyOpen = signal(false);
  const weeksOpen = signal(false);
  const asked = (open: Signal<boolean>): Place | null => (open.value && stage.value === 'heat' ? place.value : null);
  return {
    place,
    skyOpen,
    sky: liveAnswer('skyFrom', () => {
      const spot = asked(skyOpen);
      return spot && { plan: reckonedPlan.value, options: shownOptions.value, monthDay: picturedDay.value, ...spot };
    }),
    weeksOpen,
    weeks: liveAnswer('weeksAt', () => {
      const spot = asked(weeksOpen);
      return (
        spot && {
          plan: reckonedPlan.value,
          options: shownOptions.value,
          ...spot,
          span: weeksShown.value === 'year' ? 'year' : 'season',
        }
      );
    }),
  };
}

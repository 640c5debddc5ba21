import { batch, signal } from '@preact/signals';
import type { MonthDay, PlanPoint, Quantity } from '../../engine/index.ts';

/** The six stages, in the order of the work. */
export const STAGES = ['draw', 'heat', 'place', 'try', 'build', 'year'] as const;
export type Stage = (typeof STAGES)[number];

export const stage = signal<Stage>('heat');

/** Ids of the features chosen on the map or in the list; looking is not an edit, so no undo. */
export const selection = signal<readonly string[]>([]);

/** The drawing tool in hand, by the map's own name for it; `null` is the hand that selects and pans. */
export const tool = signal<string | null>(null);

/** A spot pinned by a tap on open ground. [m] */
export const pin = signal<PlanPoint | null>(null);

/** Whether numbers are for the mean season day, the chosen date, or the heatwave day. */
export type PeriodKind = 'season' | 'day' | 'heatwave';
export const periodKind = signal<PeriodKind>('heatwave');

/** The date of the bead on the season strip. */
export const monthDay = signal<MonthDay>('07-21');

/** The time bead: minutes elapsed since the chosen civil day began. Whole. */
export const minute = signal(17 * 60);

/** Whether the time bead runs by itself. */
export const playing = signal(false);

/** [m] */
const KNEE = 0.5;

/** Height above the ground at which the map is reckoned. [m] */
export const mapHeight = signal(KNEE);

/** Side of a map cell; `null` where nobody chose. [m] */
export const mapCell = signal<0.1 | 0.25 | null>(null);

/** Whether the map shows its cells as blocks instead of the field they stand for. */
export const mapBlocks = signal(false);

/** Which quantity the map paints. */
export const quantity = signal<Quantity>('hotLoad');

/** Ids of the plan's options that are shown as if they were built; empty: the yard as it is. */
export const shownOptions = signal<readonly string[]>([]);

/** A card that stands in the slip for a while instead of the stage's own. */
export type Aside = 'files' | 'settings' | 'happened' | 'why' | 'survey' | 'sheet' | 'sure';
export const aside = signal<Aside | null>(null);

/** What a person may want to find out in the yard. */
export type SurveyTopic = 'north' | 'height' | 'skyline' | 'picture' | 'climate' | 'place' | 'lengths' | 'marks';
export const surveyTopic = signal<SurveyTopic>('north');

/** Heights of the slip on a phone. */
export const slipHeight = signal<'line' | 'half' | 'full'>('half');

/** Looks at a yard as if for the first time: another one's things, day and height are not meant. */
export function lookAnew(): void {
  selection.value = [];
  pin.value = null;
  shownOptions.value = [];
  periodKind.value = 'heatwave';
  mapHeight.value = KNEE;
  quantity.value = 'hotLoad';
}

/** Stages that show the yard as it is, whatever is tried. */
const AS_IT_IS: readonly Stage[] = ['draw', 'heat'];

/** Goes to a stage, and to its card. A drawing tool goes back to its place. */
export function goToStage(next: Stage): void {
  // At once: what is tried is kept by the stage that it is tried in, and must not be seen to go while that is open.
  batch(() => {
    aside.value = null;
    if (next !== 'draw') tool.value = null;
    // Left as it is where nothing is shown: another empty list would have the yard worked out again.
    if (AS_IT_IS.includes(next) && shownOptions.value.length > 0) shownOptions.value = [];
    stage.value = next;
  });
}

/** Opens the card that helps to find something out. */
export function findOut(topic: SurveyTopic): void {
  surveyTopic.value = topic;
  aside.value = 'survey';
}

/** Opens the card that says why a plant burnt. */
export function askWhy(plantId: string): void {
  selection.value = [plantId];
  aside.value = 'why';
}

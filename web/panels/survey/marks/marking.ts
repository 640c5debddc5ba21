import { computed, signal } from '@preact/signals';
import { changeFeature, setHow, setPartHow, setSite, toCentimetre } from '../../../../engine/index.ts';
import type { Feature, Plan, ShadowCure, ShadowMark } from '../../../../engine/index.ts';
import { commitEdit } from '../../../state/edit.ts';
import { liveAnswer } from '../../../state/live.ts';
import { reckonedPlan } from '../../../state/reckoned.ts';
import { say } from '../../../state/speech.ts';
import { aside, surveyTopic } from '../../../state/view.ts';
import { plan, preview, units } from '../../../state/yard.ts';
import type { When } from '../../parts/boxes/WhenFields.tsx';
import { siteNow } from '../../parts/typed.ts';

const CASTERS: ReadonlySet<Feature['kind']> = new Set(['wall', 'hedge', 'building', 'tree', 'canopy', 'screen']);

/** What throws a shadow with an edge that can be marked. */
export const casters = computed(() => plan.value.features.filter(({ kind }) => CASTERS.has(kind)));

const asked = signal<string | null>(null);
export const caster = computed(() => casters.value.find(({ id }) => id === asked.value) ?? casters.value[0] ?? null);
export function chooseCaster(id: string): void {
  asked.value = id;
}

export const when = signal<When>(siteNow());

/** Kept while the card is closed; those of things that are gone do not count. */
const put = signal<readonly ShadowMark[]>([]);
export const marks = computed(() => put.value.filter(({ feature }) => casters.value.some(({ id }) => id === feature)));

export function addMark(mark: ShadowMark): void {
  put.value = [...marks.value, mark];
}

export function takeOut(mark: ShadowMark): void {
  put.value = put.value.filter((each) => each !== mark);
}

const open = computed(() => aside.value === 'survey' && surveyTopic.value === 'marks' && preview.value === null);
const whenSaid = computed(() =>
  when.value.date === '' || when.value.time === '' ? null : `${when.value.date}T${when.value.time}`,
);

/** The clock time of the next mark; `null` while it is not said. */
export const clockTime = whenSaid;

export const checked = liveAnswer('marks', () =>
  open.value && marks.value.length > 0 ? { plan: reckonedPlan.value, marks: marks.value, units: units.value } : null,
);

/** The shadow as the plan has it at that minute. */
export const edge = liveAnswer('shadowEdge', () =>
  open.value && caster.value && whenSaid.value
    ? { plan: reckonedPlan.value, feature: caster.value.id, when: whenSaid.value }
    : null,
);

/** Sets the numbers that the shadows tell, in one step. */
export function correct(cures: readonly ShadowCure[]): void {
  const words = cures.map((cure) => cure.words).join(' and ');
  if (commitEdit(`Correct by a shadow: ${words}`, cures.reduce(corrected, plan.value)))
    say(`Corrected: ${words}. Undo takes it back.`);
}

function corrected(before: Plan, { what, feature, to }: ShadowCure): Plan {
  if (what === 'north')
    return setPartHow(setSite(before, { upBearing: Math.round(to * 10) / 10 }), 'site', 'upBearing', { by: 'shadow' });
  if (feature === null) return before;
  return setHow(changeFeature(before, feature, { height: toCentimetre(to) }), feature, 'height', {
    by: 'shadow',
  });
}

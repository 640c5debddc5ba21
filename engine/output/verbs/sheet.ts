import { sheetOf } from '../../frame/sheet.ts';
import { windSources } from '../../frame/strength/wind-sources.ts';
import { isCloth } from '../../plan/kinds.ts';
import type { Plan } from '../../plan/types.ts';
import { withOptions } from '../../plan/yards/options.ts';
import { sheetText } from '../sheet/text.ts';
import type { Verb } from './verb.ts';
import { featureGiven, planOf } from './verb.ts';

export const sheet: Verb = {
  name: 'sheet',
  summary: 'the build sheet of a roof or screen: what to buy, cut, dig and do, and when the cloth comes off',
  plan: 'required',
  common: ['option', 'units'],
  options: [
    {
      name: 'canopy',
      kind: 'text',
      placeholder: 'ID',
      summary: 'the roof or screen to build; unless said, the first that is drawn, else that of the first option',
    },
  ],
  examples: [
    'sheet demo',
    'sheet demo --option A --canopy lemon-roof',
    'sheet demo --option B --canopy lemon-screen --units imperial',
    'sheet demo --option B --canopy lemon-low-roof --json',
  ],
  run(request) {
    const asked = featureGiven(request, 'canopy');
    const { plan, id, notes } =
      asked === undefined ? firstToBuild(planOf(request)) : { plan: planOf(request), id: asked };
    const result = sheetOf({ ...plan, units: request.units }, id ?? '');
    if (!result.ok) return result;
    const uplift = { ...result.sheet.uplift, sources: windSources(result.sheet) };
    const text = sheetText(result.sheet, request.units, request.page.columns);
    return { ok: true, json: { ...result.sheet, uplift }, text, notes };
  },
};

/** The first roof or screen that stands in the yard; where none does, that of the first option that brings one. */
function firstToBuild(plan: Plan): { plan: Plan; id?: string; notes?: readonly string[] } {
  const standing = plan.features.find(isCloth);
  if (standing !== undefined) return { plan, id: standing.id };
  for (const { id: option, adds = [] } of plan.options ?? []) {
    const brought = adds.find(isCloth);
    const tried = withOptions(plan, [option]);
    if (brought === undefined || !tried.ok) continue;
    return {
      plan: tried.plan,
      id: brought.id,
      notes: [`The sheet is of ${brought.id}, which option ${option} brings.`],
    };
  }
  return { plan };
}

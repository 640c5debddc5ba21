import { withOutlines } from '../../plan/file/outlines/put-in.ts';
import { OUTLINE_KINDS } from '../../plan/file/outlines/types.ts';
import { planText } from '../../plan/file/serialize.ts';
import type { Verb } from './verb.ts';
import { planOf, pointGiven, textGiven } from './verb.ts';

export const outlines: Verb = {
  name: 'outlines',
  summary: 'the plan with outlines out of a DXF or GeoJSON drawing put in as walls, buildings or beds',
  plan: 'required',
  common: [],
  options: [
    { name: 'drawing', kind: 'text', placeholder: 'FILE', summary: 'a .dxf or .geojson file', required: true },
    {
      name: 'as',
      kind: 'text',
      placeholder: 'WORD',
      summary: 'wall, building or bed',
      required: true,
      choices: OUTLINE_KINDS,
    },
    { name: 'at', kind: 'point', placeholder: 'X,Y', summary: 'where the drawing’s lower left corner goes' },
  ],
  examples: [],
  run(request) {
    const kind = OUTLINE_KINDS.find((one) => one === textGiven(request, 'as')) ?? 'wall';
    const result = withOutlines(planOf(request), request.drawing ?? '', kind, pointGiven(request, 'at'));
    if (!result.ok) return result;
    const { plan, ids, notes } = result;
    const text = planText(plan);
    return { ok: true, json: { added: ids, notes, plan }, text, file: [text], notes };
  },
};

import { sheetOf } from '../../frame/sheet.ts';
import { sheetText } from '../sheet/text.ts';
import type { Verb } from './verb.ts';
import { featureGiven, planOf } from './verb.ts';

export const sheet: Verb = {
  name: 'sheet',
  summary: 'the build sheet of a roof or screen: what to buy, cut, dig and do, and when the cloth comes off',
  plan: 'required',
  common: ['option', 'units'],
  options: [
    { name: 'canopy', kind: 'text', placeholder: 'ID', summary: 'the roof or screen to build', required: true },
  ],
  examples: [
    'sheet demo --option A --canopy lemon-roof',
    'sheet demo --option B --canopy lemon-screen --units imperial',
    'sheet demo --option B --canopy lemon-low-roof --json',
  ],
  run(request) {
    const result = sheetOf({ ...planOf(request), units: request.units }, featureGiven(request, 'canopy') ?? '');
    if (!result.ok) return result;
    return { ok: true, json: result.sheet, text: sheetText(result.sheet, request.units, request.page.columns) };
  },
};

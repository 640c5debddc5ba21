import { sheetOf } from '../../frame/sheet.ts';
import type { BuildSheet } from '../../frame/types.ts';
import type { Units } from '../../plan/units/units.ts';
import { frameDxf } from '../drawing/frame-dxf.ts';
import { yardDxf } from '../drawing/yard-dxf.ts';
import { planPicture } from '../report/plan.ts';
import { planDrawing, sideDrawing } from '../sheet/drawing.ts';
import { settingOutDrawing } from '../sheet/setting-out-drawing.ts';
import type { Verb } from './verb.ts';
import { featureGiven, planOf, textGiven } from './verb.ts';

const VIEWS = ['above', 'side', 'setting-out'] as const;

export const draw: Verb = {
  name: 'draw',
  summary: 'the yard, or a frame, drawn for other programs: SVG to scale, or DXF in metres',
  plan: 'required',
  common: ['option', 'units'],
  options: [
    { name: 'as', kind: 'text', placeholder: 'WORD', summary: 'svg (unless said) or dxf', choices: ['svg', 'dxf'] },
    { name: 'canopy', kind: 'text', placeholder: 'ID', summary: 'the frame of that roof or screen, not the yard' },
    {
      name: 'view',
      kind: 'text',
      placeholder: 'WORD',
      summary: 'a frame from above, from the side, or where its posts stand (setting-out)',
      choices: VIEWS,
    },
  ],
  examples: [
    'draw demo',
    'draw demo --as dxf',
    'draw demo --option A --canopy lemon-roof --view setting-out',
    'draw demo --option A --canopy lemon-roof --as dxf',
  ],
  run(request) {
    const plan = { ...planOf(request), units: request.units };
    const dxf = textGiven(request, 'as') === 'dxf';
    const id = featureGiven(request, 'canopy');
    if (id === undefined) return drawn(dxf ? yardDxf(plan) : planPicture(plan, null, request.units));
    const result = sheetOf(plan, id);
    if (!result.ok) return result;
    return drawn(
      dxf ? frameDxf(result.sheet) : viewOf(result.sheet, textGiven(request, 'view') ?? 'above', request.units),
    );
  },
};

function viewOf(sheet: BuildSheet, view: string, units: Units): string {
  if (view === 'side') return sideDrawing(sheet, units);
  return view === 'above' ? planDrawing(sheet, units) : settingOutDrawing(sheet, units);
}

function drawn(text: string): { ok: true; json: unknown; text: string; file: string[] } {
  return { ok: true, json: { drawing: text }, text, file: [text] };
}

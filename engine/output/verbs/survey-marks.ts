import { shadowMarks } from '../../advice/marks/shadow-marks.ts';
import type { MarkCheck, ShadowMark, ShadowMarksResult } from '../../advice/marks/types.ts';
import { dateWords } from '../../plan/dates/dates.ts';
import { dateOfMoment, clockOfMoment } from '../../plan/dates/parts.ts';
import { errorAt } from '../../plan/problems.ts';
import type { Plan, Problem } from '../../plan/types.ts';
import { formatClock } from '../../plan/units/clock.ts';
import { formatLength } from '../../plan/units/shown.ts';
import { parseNumber } from '../../plan/units/typed.ts';
import type { Units } from '../../plan/units/units.ts';
import { nameOf } from '../../plan/words/names.ts';
import { table, wrapped } from '../text/plain-text.ts';
import { planOf, textsGiven, type Verb, type VerbRequest, type VerbResult } from './verb.ts';

const FORM = 'ID@X,Y@YYYY-MM-DDTHH:MM';

export const surveyMarks: Verb = {
  name: 'survey marks',
  summary: 'edges of shadows as found on the ground against those of the plan: north or a height, what to correct',
  plan: 'required',
  common: ['option', 'units'],
  options: [
    {
      name: 'mark',
      kind: 'text',
      placeholder: FORM,
      summary: "what threw the shadow, where its edge lay, the minute by the place's clocks; again for each mark",
      required: true,
      repeatable: true,
    },
  ],
  examples: [
    'survey marks demo --mark east-house@3.25,4@2026-05-02T10:40',
    'survey marks demo --mark east-house@3.25,4@2026-05-02T10:40 --mark west-wall@3.64,1.65@2026-05-02T18:30 ' +
      '--mark orange@5.11,4.22@2026-05-02T17:00 --json',
  ],
  run: runMarks,
};

function runMarks(request: VerbRequest): VerbResult {
  const plan = planOf(request);
  const read = textsGiven(request, 'mark').map(markFrom);
  const problems = read.filter((each): each is Problem => 'severity' in each);
  if (problems.length > 0) return { ok: false, problems };
  const outcome = shadowMarks(
    plan,
    read.filter((each): each is ShadowMark => 'feature' in each),
    request.units,
  );
  if (!outcome.ok)
    return { ok: false, problems: outcome.problems.map((problem) => ({ ...problem, pointer: '--mark' })) };
  return {
    ok: true,
    json: outcome.value,
    text: marksText(plan, outcome.value, request.units, request.page.columns),
  };
}

/** A name may hold the sign that parts it from the place. */
function markFrom(typed: string): ShadowMark | Problem {
  const parts = typed.split('@');
  const [place, when] = parts.slice(-2);
  const [x, y, ...more] = (place ?? '').split(',').map(parseNumber);
  if (parts.length < 3 || x === null || y === null || y === undefined || more.length > 0) {
    return errorAt('--mark', `--mark wants ${FORM}, as house@3,5@2026-05-02T11:00; got "${typed}".`);
  }
  return { feature: parts.slice(0, -2).join('@'), at: [x, y], when };
}

function marksText(plan: Plan, { marks, together }: ShadowMarksResult, units: Units, columns: number): string {
  const rows = marks.map((check, k) => markRow(plan, check, k, units));
  const list = table(columns, ['', 'shadow of', 'marked at', 'when', 'off the plan’s edge'], rows, [4]);
  const sentences = marks.map(({ sentence }, k) => wrapped(`${k + 1}. ${sentence}`, columns));
  const all =
    together === null
      ? marks.length < 3
        ? 'Three marks or more, of several things and hours, are fitted together: they tell north from heights.'
        : ''
      : together.sentence;
  return `${[list, sentences.join('\n'), wrapped(all, columns, '')].filter((part) => part !== '').join('\n\n')}\n`;
}

function markRow(plan: Plan, { mark, residual }: MarkCheck, k: number, units: Units): string[] {
  const off =
    residual === null
      ? 'none near'
      : `${formatLength(Math.abs(residual) / 100, units)} ${residual > 0 ? 'outside' : 'inside'}`;
  return [
    String(k + 1),
    nameOf(plan, mark.feature),
    mark.at.map((each) => formatLength(each, units)).join(', '),
    `${dateWords(dateOfMoment(mark.when))}, ${formatClock(clockOfMoment(mark.when), units)}`,
    off,
  ];
}

import { type NextStep, nextStepOf } from '../../advice/why/next-step.ts';
import { RIVAL_IDS, type RivalId } from '../../advice/why/rivals.ts';
import { parseSide, sideWords } from '../../advice/why/side.ts';
import { DAMAGE_PARTS, type DamagePart, type RankedSide, type WhyResult } from '../../advice/why/types.ts';
import { whyBurnt } from '../../advice/why/why.ts';
import { dateWords } from '../../plan/dates/dates.ts';
import { refuseOption } from '../../plan/problems.ts';
import type { Plan } from '../../plan/types.ts';
import { type ClockStretch, formatStretch } from '../../plan/units/clock.ts';
import { formatTemperature, formatShare } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { dateOfDay } from '../../sun/days/season.ts';
import { sunUp } from '../../sun/sun-up.ts';
import { table, wrapped } from '../text/plain-text.ts';
import { featureGiven, planOf, textGiven, textsGiven, type Verb, type VerbResult } from './verb.ts';

export const why: Verb = {
  name: 'why',
  summary: 'why a plant burnt: which sun did it, or that the sun does not explain it',
  plan: 'required',
  common: ['date', 'option', 'weather', 'units', 'sources'],
  options: [
    {
      name: 'plant',
      kind: 'text',
      placeholder: 'ID',
      summary: 'the plant, bed or planted tree, by its id or its name',
      required: true,
      afterPlan: true,
    },
    {
      name: 'side',
      kind: 'text',
      placeholder: 'SIDE',
      summary: "which side: N, SW, 225, top, all, unknown; else as the journal's latest damage says",
    },
    { name: 'part', kind: 'text', placeholder: 'PART', summary: DAMAGE_PARTS.join(', '), choices: DAMAGE_PARTS },
    {
      name: 'rival',
      kind: 'text',
      placeholder: 'CAUSE',
      summary: `another cause that holds: ${RIVAL_IDS.join(', ')}; may be repeated`,
      choices: RIVAL_IDS,
      repeatable: true,
    },
  ],
  examples: [
    'why demo --plant lemon',
    'why demo "Lemon pot"',
    'why demo --plant lemon --side NE',
    'why demo --plant hydrangea --side W --part flower --date 07-20 --rival dry',
  ],
  run(request): VerbResult {
    const plan = planOf(request);
    const typed = textGiven(request, 'side');
    const side = typed === undefined ? undefined : parseSide(typed);
    if (side === null)
      return refuseOption(
        'side',
        `"${typed}" is no side: write N, NE, E, SE, S, SW, W, NW, a bearing from 0 to 360, top, all or unknown.`,
      );
    const day = request.period.kind === 'day' ? dateOfDay(plan, request.period.date) : null;
    if (day !== null && !day.ok) return day;
    const outcome = whyBurnt(plan, {
      plant: featureGiven(request, 'plant') ?? '',
      side,
      part: textGiven(request, 'part') as DamagePart | undefined,
      date: day?.value,
      rivals: textsGiven(request, 'rival') as RivalId[],
      weather: request.weather,
    });
    if (!outcome.ok) return outcome;
    const { weather, units, page } = request;
    const next = nextStepOf(plan, outcome.value, { weather, units });
    if (!next.ok) return next;
    return {
      ok: true,
      json: { ...outcome.value, next: next.value },
      text: whyText(plan, outcome.value, next.value, units, page.columns),
      sources: whySources(outcome.value, page.columns),
      notes: outcome.value.notes,
    };
  },
};

/** The answer, the sides that it rests on, what else it may have been, and at the end what to do. */
function whyText(plan: Plan, result: WhyResult, next: NextStep, units: Units, columns: number): string {
  const up = sunUp(plan, result.heatDay);
  const most = Math.max(0, ...result.sides.map(({ scorchDose }) => scorchDose ?? 0));
  const sides = table(
    columns,
    ['side', 'heat damage', 'up to', 'hot sun, mean day', 'sun on it while hot'],
    result.sides.map((side) => rowOf(side, most, units, up)),
    [1, 2, 3],
  );
  const questions = table(
    columns,
    ['yes', 'cause', 'question'],
    result.rivals.map(({ id, question, yes }) => [yes ? 'yes' : '', id, question]),
  );
  return (
    `${wrapped(result.sentence, columns)}\n\n${sides}\n\nOther causes; each yes lowers the answer by a ` +
    `step:\n${questions}\n\n${wrapped(`Next: ${next.sentence}`, columns)}\n`
  );
}

/** @param most scorch dose of the worst side [K·h] */
function rowOf(
  { side, scorchDose, peak, hotHours, when }: RankedSide,
  most: number,
  units: Units,
  up: ClockStretch | null,
): string[] {
  return [
    side === null ? 'bed' : sideWords(side),
    scorchDose === null ? '' : most > 0 ? formatShare(scorchDose / most) : formatShare(0),
    peak === null ? '' : formatTemperature(peak, units),
    `${hotHours.toFixed(1)} h`,
    when === null ? 'never' : formatStretch(when, units, up),
  ];
}

function whySources({ sides, heatDay, limit }: WhyResult, columns: number): string {
  const rows = sides.map(({ side, rank, scorchDose }) => [
    side === null ? 'bed' : sideWords(side),
    rank === null ? '' : String(rank),
    scorchDose === null ? '' : scorchDose.toFixed(1),
  ]);
  const how =
    `Judged on the hot day of ${dateWords(heatDay)}. Heat damage is how far and how long a thirsty leaf stands over ` +
    `its limit${limit === null ? '' : ' (K·h)'}; above, in per cent of the side that gets most. Sides ` +
    `rank by it, the top apart; within a tenth they are alike.`;
  return [wrapped(how, columns, ''), table(columns, ['side', 'rank', 'K·h'], rows, [1, 2])].join('\n\n');
}

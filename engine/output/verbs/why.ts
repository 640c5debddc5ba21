import { whyBurnt } from '../../advice/why/why.ts';
import { RIVAL_IDS, type RivalId } from '../../advice/why/rivals.ts';
import { parseSide, sideWords } from '../../advice/why/side.ts';
import { DAMAGE_PARTS, type DamagePart, type RankedSide, type WhyResult } from '../../advice/why/types.ts';
import { formatTemperature, type Units } from '../../plan/units.ts';
import { dateOfDay } from '../../sun/season.ts';
import { table, wrapped } from '../text/plain-text.ts';
import { planOf, refuseOption, textGiven, textsGiven, type Verb, type VerbResult } from './verb.ts';

export const why: Verb = {
  name: 'why',
  summary: 'why a plant burnt: which sun did it, or that the sun does not explain it',
  plan: 'required',
  common: ['date', 'option', 'weather', 'units'],
  options: [
    { name: 'plant', kind: 'text', placeholder: 'ID', summary: 'the plant, bed or planted tree', required: true },
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
      plant: textGiven(request, 'plant') ?? '',
      side,
      part: textGiven(request, 'part') as DamagePart | undefined,
      date: day?.value,
      rivals: textsGiven(request, 'rival') as RivalId[],
      weather: request.weather,
    });
    if (!outcome.ok) return outcome;
    return {
      ok: true,
      json: outcome.value,
      text: whyText(outcome.value, request.units, request.page.columns),
      notes: outcome.value.notes,
    };
  },
};

function whyText(result: WhyResult, units: Units, columns: number): string {
  const sides = table(
    columns,
    ['side', 'rank', 'heat damage', 'peak', 'hot sun', 'sun on it while hot'],
    result.sides.map((side) => rowOf(side, units)),
    [1, 2, 3, 4],
  );
  const questions = table(
    columns,
    ['yes', 'cause', 'question'],
    result.rivals.map(({ id, question, yes }) => [yes ? 'yes' : '', id, question]),
  );
  return (
    `${wrapped(result.sentence, columns)}\n\n${sides}\n\nOther causes; each yes lowers the answer by a ` +
    `step:\n${questions}\n`
  );
}

function rowOf({ side, rank, scorchDose, peak, hotHours, when }: RankedSide, units: Units): string[] {
  return [
    side === null ? 'bed' : sideWords(side),
    rank === null ? '' : String(rank),
    scorchDose === null ? '' : `${scorchDose.toFixed(0)} K·h`,
    peak === null ? '' : formatTemperature(peak, units),
    `${hotHours.toFixed(1)} h`,
    when === null ? 'never' : `${when.from} to ${when.to}`,
  ];
}

import { potGround } from '../../advice/place/ground.ts';
import { placeOf } from '../../advice/place/place.ts';
import { potNamed, potThere } from '../../advice/place/pot-there.ts';
import type { PlaceResult } from '../../advice/place/types.ts';
import { wayParts } from '../../advice/place/way.ts';
import { winterWarning } from '../../advice/place/winter.ts';
import { rootsBriefly } from '../../advice/place/words.ts';
import { placeHeadline, triedHeadline } from '../../advice/words/cure-headlines.ts';
import { dateWords } from '../../plan/dates/dates.ts';
import { refuseOption } from '../../plan/problems.ts';
import type { Plan, PlanPoint } from '../../plan/types.ts';
import { formatLength, formatShare } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { heatwaveUp } from '../../sun/sun-up.ts';
import { table, wrapped } from '../text/plain-text.ts';
import {
  featureGiven,
  numberGiven,
  planOf,
  pointGiven,
  textGiven,
  type Verb,
  type VerbRequest,
  type VerbResult,
} from './verb.ts';

export const place: Verb = {
  name: 'place',
  summary: 'ranked spots for a plant in a pot, staying among them; pots that could change places',
  plan: 'required',
  common: ['option', 'weather', 'units'],
  options: [
    {
      name: 'plant',
      kind: 'text',
      placeholder: 'ID',
      summary: 'the plant in the pot, by its id or its name',
      required: true,
      afterPlan: true,
    },
    {
      name: 'count',
      kind: 'number',
      placeholder: 'N',
      summary: 'how many spots beside where it stands, 2 unless said',
      min: 1,
      minIncluded: true,
      max: 50,
      integer: true,
    },
    { name: 'at', kind: 'point', placeholder: 'X,Y', summary: 'instead of a search: how it would fare there' },
    {
      name: 'on',
      kind: 'day',
      placeholder: 'YYYY-MM-DD',
      summary: 'the day of the move: hardening off gets its dates',
    },
  ],
  examples: ['place demo --plant lemon --count 2 --on 2026-04-20', 'place demo --plant lemon --at 5,6'],
  run: runPlace,
};

function runPlace(request: VerbRequest): VerbResult {
  const plan = planOf(request);
  const { weather, units } = request;
  const on = textGiven(request, 'on');
  const at = pointGiven(request, 'at');
  if (at) return placedAt(request, plan, at);
  const outcome = placeOf(plan, {
    plant: featureGiven(request, 'plant') ?? '',
    count: numberGiven(request, 'count'),
    on,
    weather,
    units,
  });
  if (!outcome.ok) return outcome;
  return {
    ok: true,
    json: outcome.value,
    text: placeText(plan, outcome.value, units, request.page.columns),
  };
}

function placedAt(request: VerbRequest, plan: Plan, at: PlanPoint): VerbResult {
  const pot = potNamed(plan, featureGiven(request, 'plant') ?? '');
  if (!pot.ok) return refuseOption('plant', 'Name a plant of the plan with --plant.');
  const there = potThere(plan, pot.value, at, potGround(plan, pot.value), {
    period: { kind: 'season' },
    weather: request.weather,
  });
  if (!there.ok) return there;
  const { load, reason, winterSunHours } = there.value;
  const now = potThere(plan, pot.value, pot.value.at, potGround(plan, pot.value), {
    period: { kind: 'season' },
    weather: request.weather,
  });
  if (!now.ok) return now;
  const beside =
    reason === null
      ? triedHeadline(load, now.value.load.scorchDose ?? 0, request.units, heatwaveUp(plan, request.weather))
      : `Not there: ${reason}.`;
  const text = [beside, winterWarning(winterSunHours), load.sentence]
    .filter((line) => line !== '')
    .map((line) => wrapped(line, request.page.columns))
    .join('\n\n');
  return { ok: true, json: there.value, text: `${text}\n` };
}

const HEAD = ['', 'where (x, y on the plan)', 'less damage', 'verdict', 'sun'] as const;
const TAIL = ['roots', 'carry'] as const;

const LEGEND =
  'Verdict and roots are of the heatwave day, where it is sunniest and before any wrap; sun is a day’s hours ' +
  'at the top';

function placeText(plan: Plan, result: PlaceResult, units: Units, columns: number): string {
  const { spots, swaps, notes, winterBest } = result;
  const today = spots.find(({ stay }) => stay)?.harm ?? 0;
  const rows = spots.map(({ rank, stay, where, at, harm, light, verdict, pot, winterSunHours, ...way }) => [
    String(rank),
    stay ? 'where it stands' : `${where} (${at.map((each) => formatLength(each, units)).join(', ')})`,
    today > 0 && !stay ? formatShare(1 - harm / today) : '–',
    verdict,
    `${light.sunHours.toFixed(0)} h`,
    ...(winterSunHours === null ? [] : [`${winterSunHours.toFixed(0)} h`]),
    rootsBriefly(pot.roots, units),
    stay ? '' : wayParts(plan, way, units).join(', '),
  ]);
  const isWinterTold = spots.some(({ winterSunHours }) => winterSunHours !== null);
  const winter =
    winterBest?.isWanted === true
      ? [['❄', `${winterBest.where}, for the winter`, '', '', '', `${winterBest.sunHours.toFixed(0)} h`, '', '']]
      : [];
  const list = table(
    Math.min(columns, 100),
    [...HEAD, ...(isWinterTold ? ['in winter'] : []), ...TAIL],
    [...rows, ...winter],
    isWinterTold ? [2, 4, 5, 7] : [2, 4, 6],
  );
  const blocks = [
    wrapped(placeHeadline(plan, result, units), columns, ''),
    `${list}\n${wrapped(`${LEGEND}${isWinterTold ? ', in winter on a clear day' : ''}.`, columns, '')}`,
    [...notes, ...swaps.map(({ sentence }) => sentence)].map((note) => wrapped(`- ${note}`, columns)).join('\n'),
  ];
  const hardening = spots.find(({ stay }) => !stay)?.hardening;
  if (hardening) {
    const days = hardening.days.map(({ day, date, sunHours, cloth }) => [
      date === null ? String(day) : dateWords(date),
      `${sunHours.toFixed(1)} h`,
      cloth === 0 ? 'none' : `${cloth} %`,
    ]);
    blocks.push(
      `Hardening off for the best of ` +
        `them\n${table(columns, ['day', 'direct sun', 'or cloth all day'], days, [0, 1, 2])}\n` +
        `${hardening.notes.map((note) => wrapped(`- ${note}`, columns)).join('\n')}`,
    );
  }
  return `${blocks.join('\n\n')}\n`;
}

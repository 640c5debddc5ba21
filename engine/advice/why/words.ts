import { rootWords } from '../../load/pot/pot-words.ts';
import type { Roots } from '../../load/types.ts';
import { type PlantFeature, rowOf } from '../../load/verdict/planted.ts';
import { fruitAside } from '../../load/verdict/sentence.ts';
import { wallWords } from '../../load/verdict/wall-heat.ts';
import { monthWord } from '../../plan/dates/dates.ts';
import { monthOfDate } from '../../plan/dates/parts.ts';
import type { CivilDate, Plan, Side } from '../../plan/types.ts';
import { formatStretch } from '../../plan/units/clock.ts';
import { formatHeatLimit, formatTemperature, formatTemperatureDifference } from '../../plan/units/shown.ts';
import { unitsOf } from '../../plan/units/units.ts';
import { type Agreeing, agreeingWith } from '../../plan/words/agreement.ts';
import { capital } from '../../plan/words/first-letter.ts';
import { listWords } from '../../plan/words/list-words.ts';
import { nameOf } from '../../plan/words/names.ts';
import { bearsWhatBurns } from '../year/growth/fruit.ts';
import type { Rival } from './rivals.ts';
import { sideWords } from './side.ts';
import type { DamagePart, RankedSide, WhyAnswer, WhyResult } from './types.ts';

export interface WhyFindings {
  readonly plan: Plan;
  readonly feature: PlantFeature;
  readonly side: Side;
  readonly part: DamagePart;
  readonly heatDay: CivilDate;
  /** Before and after the rival causes had their say. */
  readonly bySun: WhyAnswer;
  readonly answer: WhyAnswer;
  /** The point that stands for the damaged side. */
  readonly accused: RankedSide;
  readonly sides: readonly RankedSide[];
  readonly limit: number | null;
  readonly rivals: readonly Rival[];
  /** In its pot, on that hot day. */
  readonly roots: Roots | null;
}

/** Of the worst side’s dose. Our choice. */
const NEAR_SHARE = 0.85;

const VERDICTS: Readonly<Record<WhyAnswer, string>> = {
  explains: 'the sun explains it',
  'could be': 'it could be the sun',
  'does not': 'the sun does not explain it',
};

/** The answer as a person would say it: in a few words, and what speaks for it. */
export function whyWords(found: WhyFindings): Pick<WhyResult, 'verdict' | 'evidence' | 'sentence'> {
  const verdict = VERDICTS[found.answer];
  const parts = [evidenceOf(found), partRemark(found), rivalRemark(found), lookAt(found)];
  const evidence = parts.filter((part) => part !== '').join(' ');
  const sentence = `${nameOf(found.plan, found.feature.id)}: ${verdict}. ${evidence}`;
  return { verdict: capital(verdict), evidence, sentence };
}

function evidenceOf(found: WhyFindings): string {
  const { accused, limit } = found;
  const { they, are } = who(found);
  if (limit === null || accused.peak === null) {
    return (
      `${capital(inside(found, accused))} gets ${accused.hotHours.toFixed(1)} h of hot sun a day${rankWords(found)}. ` +
      `Say which plant ${they} ${are}, and the limit is known.`
    );
  }
  if (found.bySun === 'does not') return `${weakness(found)}${better(found)}`;
  const { when, sunCame } = accused;
  const sun =
    when === null
      ? ''
      : `On a hot day in ${monthWord(monthOfDate(found.heatDay))} the sun is on ` +
        `${inside(found, accused)} from ${formatStretch(when, unitsOf(found.plan))}, ` +
        `${sunCame ?? 'with nothing in its way'}; `;
  return `${sun}${surfaceOf(found, accused.peak)}${rankWords(found)}.${wallRemark(found)}`;
}

function wallRemark({ plan, accused }: WhyFindings): string {
  return accused.walls.length === 0 ? '' : ` ${capital(wallWords(plan, accused.walls, unitsOf(plan)))}.`;
}

function weakness(found: WhyFindings): string {
  const { accused, limit, side } = found;
  const { they, their, does } = who(found);
  if (accused.peak !== null && limit !== null && accused.peak < limit - (accused.margin ?? 0))
    return `Even on a hot day ${surfaceOf(found, accused.peak)}.`;
  if (side === 'all') return 'The sun burns from one side, and damage on all sides alike is not its mark.';
  if (accused.when === null) return `The sun does not reach ${inside(found, accused)} while it is hot.`;
  return (
    `${capital(inside(found, accused))}` +
    `${
      accused.rank === null
        ? ` is not where ${they} ${does('burn')} first`
        : ` ranks only ${ordinal(accused.rank)} of ${their} eight sides`
    }.`
  );
}

/** Where the sun would show instead. */
function better(found: WhyFindings): string {
  const { plan, accused, sides } = found;
  const first = sides.find(({ rank }) => rank === 1);
  if (first === undefined || first === accused || first.when === null) return '';
  return ` The sun would burn ${inside(found, first)} first, ${formatStretch(first.when, unitsOf(plan))}.`;
}

function surfaceOf({ plan, feature, limit, accused }: WhyFindings, peak: number): string {
  const units = unitsOf(plan);
  const row = rowOf(plan, feature);
  const isFruit = row?.limitOf === 'fruit';
  const aside = isFruit ? fruitAside(row, accused.amongWalls) : '';
  const bare = isFruit ? 'the bare fruit’s skin' : 'a thirsty leaf';
  return (
    `${bare} there reaches about ` +
    `${formatTemperature(peak, units)} (± ${formatTemperatureDifference(accused.spread ?? 0, units)})${aside}, ` +
    `limit ${formatHeatLimit(limit ?? 0, units)}`
  );
}

function partRemark(found: WhyFindings): string {
  const { plan, feature, part, roots, heatDay } = found;
  const { them, their } = who(found);
  const row = rowOf(plan, feature);
  const month = monthOfDate(heatDay);
  if (row !== undefined && part !== 'pot' && !bearsWhatBurns(row, month, plan.site.latitude)) {
    const hangs = `No fruit hangs on ${them} in ${monthWord(month)} as a rule`;
    return part === 'fruit'
      ? `${hangs}: look whether the date is right.`
      : `${hangs}, and the limit is known for ${their} fruit alone.`;
  }
  const known = rowOf(plan, feature)?.limitOf === 'fruit' ? 'fruit' : 'leaf';
  if (part === 'pot')
    return (
      'A plant that wilts whole in its pot has hot or dry roots: feel the pot’s sunny wall and the soil first.' +
      (roots === null ? '' : rootWords(roots, unitsOf(plan), nameOf(plan, feature.id)))
    );
  if (part === known || rowOf(plan, feature) === undefined) return '';
  return (
    `The limit is known for ${their} ${known === 'leaf' ? 'leaves' : 'fruit'}, not for ${their} ` +
    `${part === 'leaf' ? 'leaves' : part}: the sun's side and hours hold all the same.`
  );
}

function rivalRemark({ bySun, answer, rivals }: WhyFindings): string {
  const noted = rivals.flatMap((rival) => (rival.noted === null ? [] : [rival.noted]));
  const yes = rivals.filter((rival) => rival.yes);
  if (yes.length === 0) return '';
  const lowered = bySun === answer ? '' : ` By the sun alone: ${VERDICTS[bySun]}.`;
  return (
    `Also in question: ${yes.map((rival) => rival.lookAt).join(', ')}.` +
    `${noted.length > 0 ? ` ${noted.join(' ')}` : ''}${lowered}`
  );
}

/** Named where it was not the sun; where it may have been, they are asked about beside the answer. */
function lookAt({ answer, rivals }: WhyFindings): string {
  const open = rivals.filter(({ yes }) => !yes).map((rival) => rival.lookAt);
  if (answer === 'explains' || open.length === 0) return '';
  return answer === 'does not' ? `Look at ${listWords(open)}.` : 'Rule out the other causes.';
}

/**
 * A side that gets nearly as much as the worst is told so: what is between them is less than the estimate is good for.
 */
function rankWords(found: WhyFindings): string {
  const { accused, sides } = found;
  const { their } = who(found);
  const { rank, scorchDose } = accused;
  if (rank === null) return '';
  if (rank === 1) return `; of ${their} eight sides none gets more`;
  const most = sides.find((side) => side.rank === 1)?.scorchDose ?? null;
  return scorchDose !== null && most !== null && scorchDose >= NEAR_SHARE * most
    ? `; of ${their} eight sides none gets much more`
    : `; that side ranks ${ordinal(rank)} of ${their} eight`;
}

function inside(found: WhyFindings, point: RankedSide): string {
  return point.side === null ? 'the bed' : `${who(found).their} ${sideWords(point.side)}`;
}

function who({ plan, feature }: WhyFindings): Agreeing {
  return agreeingWith(nameOf(plan, feature.id));
}

function ordinal(rank: number): string {
  return `${rank}${['st', 'nd', 'rd'][rank - 1] ?? 'th'}`;
}

/** Year against year in sentences: the answer first, then what it rests on. */

import type { Plan } from '../../plan/types.ts';
import { formatTemperatureDifference } from '../../plan/units/shown.ts';
import { unitsOf } from '../../plan/units/units.ts';
import { agreeingWith } from '../../plan/words/agreement.ts';
import { listWords } from '../../plan/words/list-words.ts';
import { namedInside, nameOf } from '../../plan/words/names.ts';
import { clothNoted } from './cloth-noted.ts';
import type { YearComparison } from './types.ts';

type Told = Omit<YearComparison, 'headline' | 'sentence'>;

const CHANGED = { cover: 'the cover', place: 'the new place', yard: 'what was changed' } as const;

const FINDINGS: Readonly<Record<YearComparison['finding'], string>> = {
  'the change made the difference': 'better',
  'better than the heat explains': 'better, and more so than the heat explains',
  'better, but the cooler summer may explain it': 'better, but the cooler summer may explain it',
  'better, but so was what stayed as it was': 'better, but so was what was left as it was: the summer did it',
  'the same': 'the same',
  'worse, but the hotter summer may explain it': 'worse, but the hotter summer may explain it',
  'worse, but so was what stayed as it was': 'worse, but so was what was left as it was: the summer did it',
  'worse than the heat explains': 'worse than the summer explains: look for another cause',
  'too little to tell': 'too little to tell',
};

/** The answer in one sentence. */
export function headline(plan: Plan, { plant, finding, eased, damage }: Told): string {
  const words =
    finding === 'the change made the difference'
      ? `${damage[1] < damage[0] ? 'better' : 'spared'}: ${CHANGED[eased ?? 'yard']} made the difference`
      : FINDINGS[finding];
  return `${nameOf(plan, plant)}: ${words}.`;
}

/** @param isKept whether both years' yards are */
export function reasons(plan: Plan, told: Told, isKept: boolean): string[] {
  const { years, damage, finding, leftAlone } = told;
  return [
    `Damage ${damage[0]} of 5 in ${years[0]}, ${damage[1]} in ${years[1]}.`,
    ...(isKept ? [heatWords(plan, told)] : []),
    ...(told.eased === 'cover' ? clothNoted(plan, years[1]) : []),
    ...partnerWords(plan, told, isKept),
    ...(finding === 'too little to tell'
      ? [missingWords(years, isKept, leftAlone)]
      : ['One plant, one year proves little.']),
  ];
}

/** A difference of the hottest month's high by less than this is none. [K] */
const AS_WARM = 0.3;

function heatWords(plan: Plan, { years, warmer, expected, partners }: Told): string {
  if (warmer === null) return `How warm ${years[0]} and ${years[1]} were is not typed.`;
  const alone =
    expected === null || partners.length > 0 ? '' : `; heat alone would have made it ${scoreWords(expected)}`;
  if (Math.abs(warmer) < AS_WARM) return `The two summers were equally warm${alone}.`;
  const by = formatTemperatureDifference(Math.abs(warmer), unitsOf(plan), 1);
  return `The hottest month of ${years[1]} was ${by} ${warmer < 0 ? 'cooler' : 'hotter'}${alone}.`;
}

/** A score between two whole ones is told by both: "2 to 3 of 5". */
function scoreWords(score: number): string {
  const whole = Math.round(score);
  return Math.abs(score - whole) < 0.25 ? `about ${whole} of 5` : `${Math.floor(score)} to ${Math.ceil(score)} of 5`;
}

function partnerWords(
  plan: Plan,
  { plant: own, partners, leftAlone, eased, damage: scores }: Told,
  isKept: boolean,
): string[] {
  if (!isKept) return [];
  if (partners.length === 0) {
    if (leftAlone) return [`Nothing was changed about ${agreeingWith(nameOf(plan, own)).them}.`];
    return [
      eased === null || scores[1] >= scores[0]
        ? 'No plant left as it was is scored beside it.'
        : `Whether ${CHANGED[eased]} did it, a plant left as it was and scored in both summers would tell.`,
    ];
  }
  const told = partners.map(({ plant, damage: [then, now] }) =>
    then === now
      ? `${namedInside(plan, plant)} ${agreeingWith(nameOf(plan, plant)).were} as bad in both (${then} of 5)`
      : `${namedInside(plan, plant)} went from ${then} to ${now}`,
  );
  return [`Of what was left as before, ${listWords(told)}.`];
}

function missingWords(years: readonly [number, number], isKept: boolean, leftAlone: boolean): string {
  if (isKept && leftAlone) return 'Type how warm both summers were.';
  return isKept
    ? `Type how warm both summers were, or score a plant that nothing was changed about.`
    : `The yard of ${years[0]} was not kept: start each new year from the old one.`;
}

import { namedInside } from '../../plan/names.ts';
import type { Canopy, Screen } from '../../plan/types.ts';
import { formatLength } from '../../plan/units.ts';
import { percent } from '../cheaper-first/step.ts';
import { seenWords } from '../sight/words.ts';
import { MOST_DROPS } from './kinds/roof-with-drops.ts';
import type { LaidOut } from './lay-out.ts';
import type { Contest } from './search/contest.ts';
import type { Lattice } from './search/lattice.ts';
import { NO_HARM } from './search-yard.ts';
import type { RulePrice, SiteOption, SiteRule } from './types.ts';

/** A rule that costs less than this share is not spoken of. */
const PRICED_FROM = 0.01;
/** The sensible option spares at least this share of the best. Our choice. */
const NEARLY = 0.9;

/** What each rule takes away that kept something better out. */
export function rulePrices(laidOut: LaidOut, contest: Contest): RulePrice[] {
  return [...contest.without].flatMap(([rule, { cloth, spared }]) => {
    const cost = 1 - contest.best / spared;
    if (cost < PRICED_FROM) return [];
    // What is seen a little may be the best of all that is seen.
    if (rule === 'glimpsed' && contest.without.get('hidden')?.cloth === cloth) return [];
    const words = `${ruleWords(laidOut, rule)} cost ${percent(cost)} of the effect`;
    return [{ rule, spared, cost, sentence: `${words}${isSight(rule) ? whoWouldSee(laidOut, cloth) : ''}.` }];
  });
}

function isSight(rule: SiteRule): boolean {
  return rule === 'hidden' || rule === 'glimpsed';
}

/** Who would see how much of the cloth that spares more. */
function whoWouldSee({ plan, hiding, units }: LaidOut, cloth: Canopy | Screen): string {
  const seen = hiding.seenFrom(cloth).filter(({ hidden }) => !hidden);
  return `: what spares more is seen from: ${seen.map((one) => seenWords(plan, one, units)).join('; ')}`;
}

function ruleWords({ plan, hiding, units, cap }: LaidOut, rule: SiteRule): string {
  switch (rule) {
    case 'hidden':
      return `Hiding it from ${hiding.from.map((id) => namedInside(plan, id)).join(', ')}`;
    case 'glimpsed':
      return 'Hiding the last of it';
    case 'height':
      return `Staying no higher than ${formatLength(cap, units)}`;
    case 'setback':
      return `Keeping ${formatLength(plan.site.rules?.setback ?? 0, units)} away from the property line`;
    case 'keepout':
      return 'Keeping clear of the ground where no cloth may hang';
    case 'light':
      return 'Leaving every plant enough light';
    case 'budget':
      return 'Staying within the budget';
  }
}

/** What binds nothing here, and what was not tried. */
export function notesOf({ plan, request, lattice, hiding }: LaidOut): string[] {
  return [
    ...hiding.unbound.map(
      ({ id, bare }) =>
        `From ${namedInside(plan, id)} whatever stands on ${percent(bare)} of the ground is seen: nothing was hidden ` +
        `from there.`,
    ),
    ...dropsNote(lattice, request.maxDrops ?? MOST_DROPS),
  ];
}

/** Says so where roofs with drops were tried in fewer forms than plain roofs, and what was not. */
function dropsNote({ kinds, turns, roof, drops }: Lattice, maxDrops: number): string[] {
  if (!kinds.includes('roof with drops')) return [];
  const fewer = [
    ...(drops.turns.length < turns.length ? [`${drops.turns.length} of ${turns.length} turns`] : []),
    ...(drops.sizes.length < roof.sizes.length ? [`${drops.sizes.length} of ${roof.sizes.length} footprints`] : []),
    ...(drops.heights.length < roof.heights.length
      ? [`${drops.heights.length} of ${roof.heights.length} heights`]
      : []),
  ];
  const notes = fewer.length > 0 ? [`Roofs with drops were tried in fewer forms: ${fewer.join(', ')}.`] : [];
  if (drops.maxDrops < maxDrops) notes.push('Roofs with drops were tried with one drop, not with two.');
  return notes.length > 0 ? [`${notes.join(' ')} Ask for one size and height to try them all.`] : [];
}

/** Index of the cheapest of those that spare nearly as much as the best. */
export function sensibleOf(options: readonly SiteOption[]): number | null {
  const near = options
    .map((option, index) => ({ ...option, index }))
    .filter(({ spared, cost }) => cost !== null && spared >= NEARLY * options[0].spared);
  return near.toSorted((a, b) => (a.cost ?? 0) - (b.cost ?? 0))[0]?.index ?? null;
}

/** The answer in a sentence or two. @param finished whether every place was held against what it could spare */
export function sentenceOf(harm: number, options: readonly SiteOption[], finished: boolean): string {
  if (harm <= NO_HARM) return 'Nothing to shade: no plant is harmed.';
  const [best] = options;
  if (!best || best.spared <= 0) return 'No cloth that may stand here spares the plants anything.';
  const sensible = sensibleOf(options);
  const cheaper =
    sensible !== null && sensible > 0
      ? ` Option ${sensible + 1} spares ${percent(options[sensible].spared / best.spared)} of that for ` +
        `${percent((options[sensible].cost ?? 0) / (best.cost ?? 1))} of the money.`
      : '';
  return (
    `${best.why} That is ${percent(best.sparedShare)} of all ` +
    `harm.${cheaper}${finished ? '' : ' The search was stopped before its end: something better may be found.'}`
  );
}

/** What of the advice is another when an input is off: a verdict, the first option, or what the first one spares. */

import { weighedHarm } from '../../load/verdict/harm-of.ts';
import { TODAY } from '../compare/words.ts';
import { effectOn } from '../words/served.ts';
import type { DoubtBar } from './types.ts';
import type { JudgedHarm, ShiftedYard } from './yards.ts';

export type NamedYard = { readonly name: string; readonly yard: ShiftedYard };

/** What an option spares that moves by less than this share of all harm is the same advice. Our choice. */
const TELLS = 0.05;

type Shifted = { readonly key: string; readonly shifts: readonly unknown[] };
export type AdviceChange = Pick<DoubtBar, 'verdicts' | 'order' | 'first' | 'effect'>;

/** Asks the same yards about one input after the other. @param yards as they are today first, then with each option */
export function adviceChanges(yards: readonly NamedYard[]): {
  readonly order: readonly string[];
  readonly under: (input: Shifted) => AdviceChange;
} {
  const [{ yard: today }] = yards;
  const common = new Set(
    today.base
      .map(({ id }) => id)
      .filter((id) => yards.every(({ yard }) => yard.base.some((plant) => plant.id === id))),
  );
  const harmsBy = (key: string | null, shift: number) =>
    new Map(yards.map(({ name, yard }) => [name, weighedHarm(harmsUnder(yard, key, shift), common)]));
  const orderOf = (harms: ReadonlyMap<string, number>): string[] =>
    yards.length > 1 ? [...harms].toSorted((a, b) => a[1] - b[1]).map(([name]) => name) : [];
  const asDrawn = harmsBy(null, 0);
  const order = orderOf(asDrawn);
  const best = firstOption(order);
  const bestYard = yards.find(({ name }) => name === best)?.yard;
  const served = servedBy(today, bestYard, common);
  const spares = (key: string | null, shift: number): number => {
    const [before, after] = [today, bestYard ?? today].map((yard) =>
      weighedHarm(harmsUnder(yard, key, shift), new Set(served)),
    );
    return before > 0 ? 1 - after / before : 0;
  };
  return {
    order,
    under({ key, shifts }) {
      const harms = shifts.map((_, shift) => harmsBy(key, shift));
      const orders = harms.map(orderOf);
      const other = orders.findIndex((each) => each.join('\n') !== order.join('\n'));
      const ahead = orders.findIndex((each) => firstOption(each) !== best);
      return {
        verdicts: verdictsUnder(today, key),
        order: orders[other] ?? null,
        first: ahead < 0 ? null : { option: firstOption(orders[ahead]) ?? TODAY, shift: ahead },
        effect:
          best === null
            ? null
            : effectOf(
                { option: best, served, from: spares(null, 0) },
                shifts.map((_, shift) => spares(key, shift)),
              ),
      };
    },
  };
}

/** The plants that an option serves, of which comparing tells what it does. */
function servedBy(today: ShiftedYard, option: ShiftedYard | undefined, common: ReadonlySet<string>): string[] {
  const after = new Map(option?.base.map(({ id, harm }) => [id, harm]));
  const plants = today.base
    .filter(({ id }) => common.has(id))
    .map(({ id, worth, harm }) => ({ id, worth, before: harm, after: after.get(id) ?? harm }));
  return effectOn(plants).plants.map(({ id }) => id);
}

function harmsUnder(yard: ShiftedYard, key: string | null, shift: number): readonly JudgedHarm[] {
  const under = yard.inputs.find(({ input }) => input.key === key)?.under;
  return under?.[Math.min(shift, under.length - 1)] ?? yard.base;
}

function firstOption(order: readonly string[]): string | null {
  return order.find((name) => name !== TODAY) ?? null;
}

function verdictsUnder({ base, inputs }: ShiftedYard, key: string): DoubtBar['verdicts'] {
  const under = inputs.find(({ input }) => input.key === key)?.under ?? [];
  return base.flatMap(({ id, verdict }, k) => {
    const may = [...new Set(under.map((harms) => harms[k].verdict))].filter((other) => other !== verdict);
    if (may.length === 0) return [];
    return [{ plant: id, verdict, may, shift: under.findIndex((harms) => harms[k].verdict === may[0]) }];
  });
}

/** The shift that moves most what an option takes off the harm of the plants that it serves. */
function effectOf(
  drawn: Omit<NonNullable<DoubtBar['effect']>, 'to' | 'shift'>,
  moved: readonly number[],
): DoubtBar['effect'] {
  const off = (to: number): number => Math.abs(to - drawn.from);
  const shift = moved.reduce((most, to, s) => (off(to) > off(moved[most]) ? s : most), 0);
  return off(moved[shift]) < TELLS ? null : { ...drawn, to: moved[shift], shift };
}

/** Those first that change the advice: more verdicts or another first option, then its effect; then the most harm. */
export function byAdvice(a: DoubtBar, b: DoubtBar): number {
  return turns(b) - turns(a) || swing(b) - swing(a) || b.moves - a.moves;
}

/** Whether any advice is another one with it. */
export function changesAdvice(bar: DoubtBar): boolean {
  return turns(bar) > 0 || bar.effect !== null;
}

function turns({ verdicts, first }: DoubtBar): number {
  return verdicts.length + (first === null ? 0 : 1);
}

function swing({ effect }: DoubtBar): number {
  return effect === null ? 0 : Math.abs(effect.to - effect.from);
}

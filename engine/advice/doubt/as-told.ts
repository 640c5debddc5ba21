import type { Verdict } from '../../load/types.ts';
import type { JudgedHarm, ShiftedYard } from './yards.ts';

/** From the mildest to the worst, as far as heat goes. */
const GRAVITY: Readonly<Record<Verdict, number | null>> = {
  fine: 0,
  'no shade needed': 0,
  'fine once established': 0,
  'at risk': 1,
  'will burn': 2,
  'too dark': null,
};

/**
 * Today's yard with its verdicts as they are told everywhere. Shifts are judged on fewer rays to the walls and a few
 * cells of each bed: of a close call that may be another verdict. Then a shift that leaves this rough verdict as it is
 * changes the one that is told only where it moves the harm toward it.
 * @param told verdicts by plant
 */
export function asTold({ base, inputs }: ShiftedYard, told: ReadonlyMap<string, Verdict>): ShiftedYard {
  const verdicts = base.map(({ id, verdict }) => told.get(id) ?? verdict);
  return {
    base: base.map((plant, k) => ({ ...plant, verdict: verdicts[k] })),
    inputs: inputs.map(({ input, under }) => ({
      input,
      under: under.map((harms) => harms.map((now, k) => ({ ...now, verdict: shifted(base[k], now, verdicts[k]) }))),
    })),
  };
}

function shifted(rough: JudgedHarm, now: JudgedHarm, told: Verdict): Verdict {
  if (rough.verdict === told || now.verdict !== rough.verdict) return now.verdict;
  const [from, to] = [GRAVITY[told], GRAVITY[rough.verdict]];
  if (from === null || to === null) return told;
  const toward = to < from ? now.harm < rough.harm : now.harm > rough.harm;
  return toward ? now.verdict : told;
}

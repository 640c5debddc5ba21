import type { RootHelpId, RootVerdict } from '../../load/types.ts';
import type { Plan, PlanPoint } from '../../plan/types.ts';
import { formatShare } from '../../plan/units/shown.ts';
import { fewNames } from '../../plan/words/names.ts';
import type { Harmed } from '../words/served.ts';

/** The roots in a pot on the heatwave day. */
export interface PotRoots {
  readonly plant: string;
  /** [°C] */
  readonly warmest: number;
  readonly verdict: RootVerdict;
  /** By how much each help cools them, alone. [K] */
  readonly helps: readonly { readonly id: RootHelpId; readonly cooler: number }[];
}

/** A rung of the ladder of cures, the cheapest first. */
export interface LadderStep {
  readonly id: 'move' | 'wrap' | 'water' | 'clay' | 'screen' | 'roof';
  readonly name: string;
  /** Σ worth × harm that it spares; `null` where what it does is not told in harm to leaves. [K·h/day] */
  readonly spared: number | null;
  /** Ids of the plants for whose sake it is done. */
  readonly serves: readonly string[];
  /** Of their harm, 0 to 1. */
  readonly sparedShare: number | null;
  /** In the plan's currency; `null` unknown. */
  readonly cost: number | null;
  /** What it does, shortest: "34 % less". */
  readonly gain: string;
  /** And to whom: "34 % less heat damage to the lemon pot". */
  readonly effect: string;
  readonly sentence: string;
  /** Where each pot would go, if pots are moved. */
  readonly moves?: readonly { readonly plant: string; readonly at: PlanPoint }[];
  /** What that takes off each of them. */
  readonly moved?: readonly Harmed[];
  /** Pots whose roots get too hot, the hottest first, if pots are wrapped. */
  readonly roots?: readonly PotRoots[];
}

/** A rung that is told in harm, of the plants that it serves. */
export function harmStep(
  plan: Plan,
  step: Pick<LadderStep, 'id' | 'name' | 'cost' | 'sentence'>,
  does: { readonly serves: readonly string[]; readonly spared: number; readonly sparedShare: number },
): LadderStep {
  const gain = `${formatShare(does.sparedShare)} less`;
  return { ...step, ...does, gain, effect: `${gain} heat damage to ${fewNames(plan, does.serves)}` };
}

/** A cure that spares less of the damage than this is not named first. Our choice. */
export const WORTH_NAMING = 0.1;

export type WorthMoving = LadderStep & { readonly sparedShare: number };

/** The move of the pots among some rungs, where it is the first thing to do: free, and it does something. */
export function worthMoving(steps: readonly LadderStep[]): WorthMoving | null {
  const move = steps.find(({ id }) => id === 'move');
  return move?.cost === 0 && (move.sparedShare ?? 0) >= WORTH_NAMING
    ? { ...move, sparedShare: move.sparedShare ?? 0 }
    : null;
}

import type { RootHelpId, RootVerdict } from '../../load/types.ts';
import type { PlanPoint } from '../../plan/types.ts';

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
  /** Of the harm of all plants that may gain by shade, 0 to 1. */
  readonly sparedShare: number | null;
  /** In the plan's currency; `null` unknown. */
  readonly cost: number | null;
  /** What it does in a few words: "34 % less heat damage". */
  readonly effect: string;
  readonly sentence: string;
  /** Where each pot would go, if pots are moved. */
  readonly moves?: readonly { readonly plant: string; readonly at: PlanPoint }[];
  /** Pots whose roots get too hot, the hottest first, if pots are wrapped. */
  readonly roots?: readonly PotRoots[];
}

/** A rung that is told in harm. @param harm Σ worth × harm as the yard is [K·h/day] */
export function harmStep(
  step: Pick<LadderStep, 'id' | 'name' | 'cost' | 'sentence'>,
  spared: number,
  harm: number,
): LadderStep {
  const sparedShare = harm > 0 ? spared / harm : 0;
  return { ...step, spared, sparedShare, effect: `${percent(sparedShare)} less heat damage` };
}

export function percent(share: number): string {
  return `${(100 * share).toFixed(0)} %`;
}

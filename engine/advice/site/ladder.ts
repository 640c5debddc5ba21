import { surfaceTemperature } from '../../load/leaf.ts';
import { namedInside } from '../../load/names.ts';
import type { HarmPairs } from './harm-pairs.ts';
import type { LadderStep, SiteOption } from './site-types.ts';
import type { Targets } from './targets.ts';

/** Cheaper cures first. What depends on the person's hands or on trials with wide spread is named and not computed. */
export function ladderOf(targets: Targets, pairs: HarmPairs, options: readonly SiteOption[]): LadderStep[] {
  const { plan, plants } = targets;
  const movable = plants.filter(({ feature }) => feature.kind === 'plant' && feature.container === true && feature.move !== 'never').map(({ feature }) => namedInside(plan, feature.id));
  const steps: LadderStep[] = [];
  if (movable.length > 0) {
    steps.push(step('move', 'Move the pot', null, null, 0, `Look for a better place for ${movable.join(', ')} first: it costs nothing. Not computed here; the places for a pot are ranked on their own.`));
    steps.push(step('wrap', 'Group and wrap the pots', null, null, 0, 'Pots that stand close shade each other’s walls; a wrapped or double pot keeps its roots cooler. Not computed.'));
  }
  const watered = sparedByWater(targets, pairs);
  const share = pairs.harm > 0 ? watered / pairs.harm : 0;
  steps.push(step('water', 'Mulch, and water in the morning', watered, share, null, `Leaves that never thirst are spared at most ${percent(share)} of the harm: between the two ends of the leaf estimate.`));
  steps.push(step('clay', 'Spray reflective clay', null, null, null, 'A film of clay turns part of the light away; not computed here.'));
  for (const [id, name, kinds] of [['screen', 'An upright screen', ['screen']], ['roof', 'A roof', ['roof', 'roof with drops']]] as const) {
    const best = options.find(({ kind }) => kinds.some((one) => one === kind));
    if (best) steps.push(step(id, name, best.spared, best.sparedShare, best.cost, `${best.why} In all it spares ${percent(best.sparedShare)} of the harm.`));
  }
  return steps;
}

function step(id: LadderStep['id'], name: string, spared: number | null, sparedShare: number | null, cost: number | null, sentence: string): LadderStep {
  return { id, name, spared, sparedShare, cost, sentence };
}

/** What is spared where every leaf has the water it wants; a fruit's surface does not ask for water. [K·h/day] */
function sparedByWater({ heats, plants, points }: Targets, pairs: HarmPairs): number {
  let spared = 0;
  for (let p = 0; p < pairs.count; p++) {
    if (pairs.excess[p] <= 0) continue;
    const { point, skyView } = pairs.views[pairs.view[p]];
    const { row, limit } = plants[points[point].plant];
    const [heat, sample] = [pairs.heat[p], pairs.sample[p]];
    const watered = surfaceTemperature(heats[heat].moments[sample], row, 'watered', points[point].shares[heat][sample], skyView) - limit;
    spared += pairs.weight[p] * (pairs.excess[p] - Math.max(0, watered));
  }
  return spared;
}

export function percent(share: number): string {
  return `${(100 * share).toFixed(0)} %`;
}

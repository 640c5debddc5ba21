import type { Scene } from '../../scene/solids.ts';
import { directionsOf } from '../passes.ts';
import type { Passes } from '../passes.ts';

const DEGREES = 180 / Math.PI;

/** Fewer passes that stand for many, and their weights. */
export interface GroupedPasses {
  readonly passes: Passes;
  readonly channels: readonly Float64Array[];
}

/**
 * Gathers passes of one yearly state whose directions lie close together into one at their middle, weights added up:
 * for answers while something is dragged, never for the settled one. A season of 9,000 samples in 10-minute steps
 * becomes about 2,500 at 1°. Passes behind the skyline are left out, as casting would leave them.
 * @param within Side of the patches of sky that make a group. [°]
 */
export function groupedPasses(
  scene: Scene,
  passes: Passes,
  channels: readonly Float64Array[],
  within: number,
): GroupedPasses {
  const { count, x, y, z, state, dark } = directionsOf(scene, passes);
  const groups = new Map<string, number[]>();
  for (let k = 0; k < count; k++) {
    if (dark[k] === 1) continue;
    const band = Math.floor(passes.altitude[k] / within);
    // As many patches in the band as fit round it.
    const patches = Math.max(1, Math.round((360 * Math.cos(((band + 0.5) * within) / DEGREES)) / within));
    const patch = Math.floor((passes.azimuth[k] / 360) * patches);
    const key = `${state[k]} ${band} ${patch}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [k]);
    else group.push(k);
  }
  const members = [...groups.values()];
  const middles = members.map((group) => {
    const sum = (values: Float64Array) => group.reduce((total, k) => total + values[k], 0);
    const [sx, sy, sz] = [sum(x), sum(y), sum(z)];
    return {
      azimuth: Math.atan2(sx, sy) * DEGREES + scene.upBearing,
      altitude: Math.atan2(sz, Math.hypot(sx, sy)) * DEGREES,
    };
  });
  const grouped: Passes = {
    count: members.length,
    azimuth: Float64Array.from(middles, ({ azimuth }) => ((azimuth % 360) + 360) % 360),
    altitude: Float64Array.from(middles, ({ altitude }) => altitude),
    state: Uint16Array.from(members, ([first]) => state[first]),
  };
  const { dark: behind } = directionsOf(scene, grouped);
  members.forEach((group, g) => {
    if (behind[g] === 0) return;
    // A skyline that bulges between its members would swallow the group: its highest member stands for it.
    const highest = group.reduce((best, k) => (passes.altitude[k] > passes.altitude[best] ? k : best));
    grouped.azimuth[g] = passes.azimuth[highest];
    grouped.altitude[g] = passes.altitude[highest];
  });
  return {
    passes: grouped,
    channels: channels.map((weights) =>
      Float64Array.from(members, (group) => group.reduce((sum, k) => sum + weights[k], 0)),
    ),
  };
}

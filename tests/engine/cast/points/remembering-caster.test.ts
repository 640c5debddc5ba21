import { expect, test } from 'vitest';
import { directionsOf, type Passes } from '../../../../engine/cast/passes.ts';
import { createPointCaster } from '../../../../engine/cast/points/point-caster.ts';
import { createRememberingCaster } from '../../../../engine/cast/points/remembering-caster.ts';
import type { SpacePoint } from '../../../../engine/plan/geometry/vectors.ts';
import { buildScene } from '../../../../engine/scene/build.ts';
import type { OwnCrown } from '../../../../engine/scene/solids.ts';
import { randomFrom } from '../../../parts/random.ts';
import { emptyPlan, randomPlan } from '../random-plans.ts';

/** Directions in the one yearly state that yards without seasons have. */
function passesFrom(random: () => number): Passes {
  return {
    count: 150,
    azimuth: Float64Array.from({ length: 150 }, () => 360 * random()),
    altitude: Float64Array.from({ length: 150 }, () => 90 * random() ** 2 + 0.01),
    state: new Uint16Array(150),
  };
}

test('a yard held against another is cast as if it stood alone (100 pairs of random yards)', () => {
  const wrong: string[] = [];
  let exchanged = 0;
  for (let seed = 501; seed <= 600; seed++) {
    const random = randomFrom(seed);
    const features = randomPlan(seed).features.flatMap((feature) =>
      feature.kind === 'canopy' || feature.kind === 'screen' || (feature.kind === 'tree' && feature.leafless)
        ? []
        : [feature],
    );
    const others = randomPlan(seed + 1000).features.filter(({ kind }) => kind === 'canopy' || kind === 'plant');
    const drawn = buildScene(emptyPlan(features));
    const changed = buildScene(
      emptyPlan([
        ...features.filter(() => random() > 0.15),
        ...others.slice(0, 2).map((feature) => ({ ...feature, id: `new-${feature.id}`, up: undefined })),
      ]),
    );
    const passes = passesFrom(random);
    const like = createRememberingCaster(drawn, directionsOf(drawn, passes));
    const caster = createRememberingCaster(changed, directionsOf(changed, passes), like);
    const plain = createPointCaster(changed, passes);
    for (let n = 0; n < 12; n++) {
      const point: SpacePoint = [18 * random() - 9, 14 * random() - 7, 2 * random()];
      const own: OwnCrown | undefined =
        n % 3 === 0
          ? { kind: 'round', x: point[0], y: point[1] + 0.3, radius: 0.3, base: 0, top: 2, openness: 0, of: 'mine' }
          : undefined;
      const was = like.sharesAt(point, own);
      const [told, again, alone] = [
        caster.sharesAt(point, own),
        caster.sharesAt(point, own),
        plain.sharesAt(point, own),
      ];
      told.forEach((share, k) => {
        if (was[k] !== alone[k]) exchanged++;
        if (Math.abs(share - alone[k]) > 1e-12 || again[k] !== share)
          wrong.push(`plan ${seed}, ${point}, pass ${k}: ${share}, again ${again[k]}, alone ${alone[k]}`);
      });
    }
  }
  expect(wrong).toEqual([]);
  expect(exchanged).toBeGreaterThan(2000);
});

/** Heat days whose light on faces is cast together, and when in them the sun stands before a face. */

import { type Directions, directionsOf, passesInRow } from '../../../cast/passes.ts';
import type { SpacePoint } from '../../../plan/geometry/vectors.ts';
import type { Scene } from '../../../scene/solids.ts';
import type { HeatDay } from '../heat-day.ts';
import type { LeafMoment } from '../receives.ts';
import { faceGlow, SKY_ON_FACE } from '../wall-light.ts';

/** Samples in which the sun stands before a face, and how squarely it meets it. */
export interface Facing {
  readonly samples: Int32Array;
  readonly cosine: Float64Array;
  readonly directions: Directions;
}

/** What shines on a face in the shade, and its longwave: one value a sample of all the days. [W/m²] */
interface Shade {
  readonly on: Float64Array;
  readonly glow: Float64Array;
}

/** Some heat days, their samples one after the other. */
export class LitDays {
  readonly heats: readonly HeatDay[];
  readonly moments: readonly LeafMoment[];
  private readonly first = new Map<HeatDay['samples'], number>();
  private readonly directions: Directions;
  private readonly facings = new Map<SpacePoint, Facing>();
  /** Faces that look the same way share theirs. */
  private readonly byWay = new Map<string, Facing>();
  private readonly shades = new Map<number, Shade>();

  constructor(scene: Scene, heats: readonly HeatDay[]) {
    this.heats = heats;
    this.moments = heats.flatMap(({ moments }) => moments);
    this.directions = directionsOf(scene, passesInRow(heats.map(({ passes }) => passes)));
    let at = 0;
    for (const { samples } of heats) {
      this.first.set(samples, at);
      at += samples.count;
    }
  }

  /** Index of a day's first sample; −1: it is none of the days. */
  firstOf({ samples }: HeatDay): number {
    return this.first.get(samples) ?? -1;
  }

  /** Whether the sun stands where it stands on the other's days, in the same order. */
  hasSunsOf(other: LitDays): boolean {
    return (
      this.heats.length === other.heats.length &&
      this.heats.every(({ samples }, d) => samples.azimuth === other.heats[d].samples.azimuth)
    );
  }

  /** Whether the other's samples are these, in the same order. */
  isLike(other: LitDays): boolean {
    return (
      this.heats.length === other.heats.length && this.heats.every((heat, d) => heat.samples === other.heats[d].samples)
    );
  }

  /** @param reflects share of sunlight that the face throws back */
  shade(reflects: number): Shade {
    let shade = this.shades.get(reflects);
    if (!shade) {
      const on = Float64Array.from(this.moments, ({ diffuse }) => SKY_ON_FACE * diffuse);
      shade = { on, glow: on.map((each, k) => faceGlow(this.moments[k].air, reflects, each)) };
      this.shades.set(reflects, shade);
    }
    return shade;
  }

  /** @param outward the way out of a face */
  before(outward: SpacePoint): Facing {
    const known = this.facings.get(outward);
    if (known) return known;
    const way = outward.join();
    const facing = this.byWay.get(way) ?? this.facing(outward);
    this.byWay.set(way, facing);
    this.facings.set(outward, facing);
    return facing;
  }

  private facing([nx, ny, nz]: SpacePoint): Facing {
    const { x, y, z, level, state, dark, count } = this.directions;
    const samples = Int32Array.from({ length: count }, (_, k) => k).filter(
      (k) => dark[k] === 0 && nx * x[k] + ny * y[k] + nz * z[k] > 0,
    );
    const of = (values: Float64Array) => Float64Array.from(samples, (k) => values[k]);
    return {
      samples,
      cosine: Float64Array.from(samples, (k) => nx * x[k] + ny * y[k] + nz * z[k]),
      directions: {
        count: samples.length,
        x: of(x),
        y: of(y),
        z: of(z),
        level: of(level),
        state: Uint16Array.from(samples, (k) => state[k]),
        dark: new Uint8Array(samples.length),
      },
    };
  }
}

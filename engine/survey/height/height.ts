import { clockOfMoment } from '../../plan/dates/parts.ts';
import { DEGREE } from '../../plan/geometry/angles.ts';
import type { ClockTime } from '../../plan/types.ts';
import { type Estimate, estimateOf, type Finding, found, refused } from '../estimate.ts';
import { CLOCK_MINUTES } from '../north/north.ts';
import { LOWEST_SUN } from '../north/times.ts';
import { type Place, sunAt } from '../place/sun-at.ts';
import { type Crown, rimTip, topFromTip } from './crown-shadow.ts';

/** Above this a shadow is so short that its blurred edge hides the answer. [°] */
const HIGHEST_SUN_FOR_HEIGHT = 80;

/** How steep the sun is: tan of its altitude, and how far that may be off. */
export interface Slope {
  readonly tangent: Estimate;
  /** True bearing of the sun, where it is known. [°] */
  readonly azimuth?: number;
}

/** The slope of the sun's rays at a clock time. @param minutes How far the minute may be off. [minutes] */
export function slopeFromTime(place: Place, when: ClockTime, minutes = CLOCK_MINUTES): Finding<Slope> {
  const finding = sunAt(when, place);
  if (!finding.ok) return finding;
  const { altitude, azimuth, climb } = finding.value;
  const clock = clockOfMoment(when);
  if (altitude < LOWEST_SUN) {
    const stands = altitude < 0 ? 'is below the horizon' : `stands only ${altitude.toFixed(1)}° high`;
    return refused(
      `At ${clock} (${place.timeZone}) the sun ${stands}: a shadow tells no height then. Is the clock right?`,
    );
  }
  if (altitude > HIGHEST_SUN_FOR_HEIGHT)
    return refused(
      `At ${clock} the sun stands ${altitude.toFixed(0)}° high: the shadow is too short to tell a height. Try an ` +
        `hour or two earlier or later.`,
    );
  const altitudePm = Math.abs(climb) * minutes;
  const tangent = Math.tan(altitude * DEGREE);
  return found({ tangent: { value: tangent, pm: altitudePm * DEGREE * (1 + tangent * tangent) }, azimuth });
}

/**
 * The slope of the sun's rays without a clock: a plumb pole of known length and its shadow, at the same minute on the
 * same ground.
 */
export function slopeFromPole(pole: Estimate, shadow: Estimate): Finding<Slope> {
  if (!(pole.value > 0))
    return refused(`A pole of ${pole.value.toFixed(2)} m throws no shadow: measure the pole above the ground.`);
  if (!(shadow.value > 0))
    return refused(`The pole's shadow is ${shadow.value.toFixed(2)} m long: it must be longer than 0 m.`);
  return found({ tangent: estimateOf(([p, s]) => p / s, [pole, shadow]) });
}

/**
 * Height of anything with a sharp top right over the foot that the distance is measured from: a post, a ridge end, a
 * corner.
 */
export function heightOfTop(slope: Slope, distance: Estimate): Finding<Estimate> {
  if (!(distance.value > 0)) return refused(tooNear(distance.value));
  return found(estimateOf(([d, t]) => d * t, [distance, slope.tangent]));
}

/**
 * Height of a straight wall or roof edge from how deep its shadow lies in front of it, measured at right angles.
 * @param facing True bearing of the side in shadow's outward normal: from the wall towards its shadow. [°]
 */
export function heightOfEdge(slope: Slope, depth: Estimate, facing: number): Finding<Estimate> {
  if (slope.azimuth === undefined)
    return refused('The shadow of a long edge needs the clock: a pole alone does not tell where the sun stood.');
  if (!(depth.value > 0)) return refused(tooNear(depth.value));
  // The shadow lies opposite the sun, so the angle is between the shadow's bearing and the normal.
  const across = Math.cos((slope.azimuth + 180 - facing) * DEGREE);
  if (across <= 0)
    return refused(
      `The sun stood on the other side of that edge: at ${slope.azimuth.toFixed(0)}° it throws no shadow towards ` +
        `${facing.toFixed(0)}°.`,
    );
  if (across < 0.17)
    return refused('The sun stood almost along that edge: its shadow is too narrow. Try another hour.');
  return found(estimateOf(([d, t]) => (d * t) / across, [depth, slope.tangent]));
}

/**
 * Height of a tree from its shadow. The tip of a round crown's shadow is not thrown by its top, and a cone's may be
 * thrown by its rim; the plan's own crown is solved for the height instead.
 * @param tip From the trunk to the far tip of the shadow, along the shadow. [m]
 * @param width Crown's width. @param base Height of the crown's foot.
 */
export function heightOfTree(
  slope: Slope,
  tip: Estimate,
  shape: Crown['shape'],
  width: Estimate,
  base: Estimate,
): Finding<Estimate> {
  if (!(width.value > 0)) return refused(`A crown ${width.value.toFixed(2)} m wide throws no shadow: how wide is it?`);
  if (base.value < 0) return refused(`The crown cannot begin ${Math.abs(base.value).toFixed(2)} m under the ground.`);
  const crown = { shape, width: width.value, base: base.value };
  const t = slope.tangent.value;
  const height = estimateOf(
    ([d, w, c, tangent]) => topFromTip({ shape, width: w, base: c }, d, tangent),
    [tip, width, base, slope.tangent],
  );
  if (Number.isFinite(height.value)) {
    const naive = tip.value * t;
    const less = naive - height.value;
    const notes =
      less > 0.05
        ? [
            `Distance times slope alone would say ${naive.toFixed(1)} m: the tip of this shadow is not thrown ` +
              `by the top.`,
          ]
        : [];
    return found(height, notes);
  }
  const rim = rimTip(crown, t);
  if (shape === 'cone' && tip.value > rim - Math.max(tip.pm, 0.01)) {
    return refused(
      `The shadow's tip was thrown by the lower rim of the cone, not by its apex: all it says is that the tree is ` +
        `at most ${(rim * t).toFixed(1)} m high. Try while the sun is lower.`,
    );
  }
  return refused(
    `The shadow is too short for that crown: its lowest ring alone, ${width.value.toFixed(1)} m wide and ` +
      `${base.value.toFixed(1)} m up, reaches ${rim.toFixed(2)} m, and ${tip.value.toFixed(2)} m was measured. ` +
      `Check the crown's width and foot, and the minute.`,
  );
}

/**
 * Height from a picture with a helper of known height beside the thing, both about equally far from the camera.
 * @param helper [m] @param helperPx Height of the helper in the picture. [pixels] @param thingPx Height of the thing.
 *   [pixels]
 */
export function heightFromPicture(helper: Estimate, helperPx: number, thingPx: number): Finding<Estimate> {
  if (!(helperPx >= 20))
    return refused(
      `The helper is ${helperPx} pixels high in the picture: too small, 1 pixel off is ` +
        `${(100 / Math.max(helperPx, 1)).toFixed(0)} %.`,
    );
  if (!(thingPx > 0)) return refused('Mark the foot and the top of the thing in the picture.');
  // Two ends each, a pixel each; and 3 % for not standing at quite the same distance.
  const value = (helper.value * thingPx) / helperPx;
  const fraction = Math.hypot(helper.pm / helper.value, Math.SQRT2 / helperPx, Math.SQRT2 / thingPx, 0.03);
  return found({ value, pm: value * fraction }, [
    'The helper and the thing must stand equally far from the camera, the camera held level.',
  ]);
}

function tooNear(metres: number): string {
  return `The shadow is ${metres.toFixed(2)} m long: it must be longer than 0 m.`;
}

import { LIMITS } from '../../file/limits.ts';
import { sharesMoreThan } from '../../geometry/overlap.ts';
import { boundsOf, pointInRing } from '../../geometry/shapes.ts';
import type { Bounds } from '../../geometry/shapes.ts';
import { warningAt } from '../../problems.ts';
import { quote } from '../../schema/say.ts';
import type { Bed, Building, Feature, Problem } from '../../types.ts';

/** Ground that two outlines may share through careless drawing. [m²] */
const SLACK_AREA = 0.01;
/** Corners that are compared before the rest is left alone: no yard comes near it, and no file shall stall. */
const CORNERS_COMPARED = 10_000;

/** Warnings about buildings that overlap, and beds and plants that stand where a building is. */
export function sharedGround(features: readonly Feature[]): Problem[] {
  const buildings = features.flatMap((feature, index) =>
    feature.kind === 'building' ? [{ feature, index, bounds: boundsOf(feature.outline) }] : [],
  );
  const warnings: Problem[] = [];
  let compared = 0;
  const share = (a: Building | Bed, bounds: Bounds, other: (typeof buildings)[number]): boolean => {
    if (compared > CORNERS_COMPARED || !overlap(bounds, other.bounds)) return false;
    compared += a.outline.length + other.feature.outline.length;
    return sharesMoreThan(SLACK_AREA, a.outline, other.feature.outline);
  };
  features.forEach((feature, index) => {
    if (feature.kind !== 'building' && feature.kind !== 'bed' && feature.kind !== 'plant') return;
    const bounds = boundsOf(feature.kind === 'plant' ? [feature.at] : feature.outline);
    for (const building of buildings) {
      if (warnings.length >= LIMITS.warnings) return;
      const name = `building ${quote(building.feature.id)}`;
      if (feature.kind === 'plant') {
        if (overlap(bounds, building.bounds) && pointInRing(feature.at, building.feature.outline))
          warnings.push(warningAt(`/features/${index}/at`, `Plant ${quote(feature.id)} stands inside ${name}.`));
      } else if (feature.kind === 'bed') {
        if (share(feature, bounds, building))
          warnings.push(warningAt(`/features/${index}/outline`, `Bed ${quote(feature.id)} lies partly under ${name}.`));
      } else if (building.index < index && share(feature, bounds, building)) {
        warnings.push(warningAt(`/features/${index}/outline`, `Building ${quote(feature.id)} and ${name} overlap.`));
      }
    }
  });
  if (compared > CORNERS_COMPARED)
    warnings.push(
      warningAt(
        '/features',
        'There are too many outlines to compare each with each; some that overlap may not be listed.',
      ),
    );
  return warnings;
}

function overlap(a: Bounds, b: Bounds): boolean {
  return a.maxX > b.minX && b.maxX > a.minX && a.maxY > b.minY && b.maxY > a.minY;
}

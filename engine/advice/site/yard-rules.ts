import { canopyGrid } from '../../frame/canopy-frame.ts';
import { briefOf } from '../../frame/model.ts';
import { screenPosts } from '../../frame/screen-frame.ts';
import { HAND_BREADTH } from '../../frame/surroundings.ts';
import { DEFAULTS, potOf } from '../../plan/defaults.ts';
import { canopyCorners, canopyEdge, cleanPath, openRing, pointInRing } from '../../plan/geometry.ts';
import type { Canopy, Feature, Plan, PlanPoint, Screen } from '../../plan/types.ts';
import { distanceToRing, distanceToShape, meets, pathsMeet } from './shapes.ts';
import type { SiteRule } from './site-types.ts';
import { waysOf } from './ways.ts';

/** Air between a plant's top and a roof. Our choice. [m] */
export const CLEARANCE = 0.3;
/** Under a roof over ground that people walk through. [m] */
export const HEADROOM = 2.1;
/** A drop ends this far above the ground at least: air must come in. Our choice. [m] */
export const AIR_GAP = 0.2;
/** From a trunk to a post: roots. Our choice. [m] */
const ROOT_GAP = 0.3;
/** From a plant's crown to cloth that hangs beside it. Our choice. [m] */
const LEAF_GAP = 0.05;
/** Trunk radius over tree height, as everywhere. */
const TRUNK_SHARE = 0.03;
const ROUNDING = 1e-9;

/** What stands in the way of cloth. `null`: nothing; `ground`: a thing of the yard, whoever makes the rules; else the rules broken. */
export type Objection = 'ground' | readonly SiteRule[];

export interface YardRules {
  /** Height cap of the neighbourhood and of the person asking; Infinity: none. [m] */
  readonly cap: number;
  /** Objections to cloth, the rules that are matters of place and height only. An empty list: none. */
  objections(cloth: Canopy | Screen): Objection;
}

/** @param maxHeight what the person asking allows besides the plan's rule [m] */
export function yardRules(plan: Plan, maxHeight = Infinity): YardRules {
  const cap = Math.min(plan.site.rules?.maxHeight ?? Infinity, maxHeight);
  const setback = plan.site.rules?.setback ?? 0;
  const boundary = openRing(plan.site.boundary);
  const fence = [...boundary, boundary[0]];
  const ways = waysOf(plan);
  const kept = plan.features.flatMap((feature) => (feature.kind === 'keepout' && feature.blocks.includes('canopy') ? [openRing(feature.outline)] : []));
  const bays = new Map<Canopy['kind'] | Screen['kind'], number>();
  const maxBayOf = (cloth: Canopy | Screen): number => {
    let bay = bays.get(cloth.kind);
    if (bay === undefined) {
      const read = briefOf(cloth, plan);
      bays.set(cloth.kind, (bay = read.ok ? read.brief.maxBay : Infinity));
    }
    return bay;
  };
  const onProperty = (shape: readonly PlanPoint[]): boolean => shape.every((point) => pointInRing(point, boundary, ROUNDING)) && !pathsMeet(shape.length > 2 ? [...shape, shape[0]] : shape, fence);
  return {
    cap,
    objections(cloth) {
      const shape = shapeOf(cloth);
      if (!onProperty(shape)) return 'ground';
      const stands = cloth.kind === 'canopy' ? roofFits(plan, cloth, shape, ways) && dropsFit(plan, cloth, ways) : screenFits(plan, cloth, shape, ways);
      if (!stands || !postsOf(cloth, maxBayOf(cloth)).every((post) => postFits(plan, post, ways))) return 'ground';
      const broken: SiteRule[] = [];
      if (cloth.height > cap + ROUNDING) broken.push('height');
      if (setback > 0 && distanceToShape(shape, fence) < setback - ROUNDING) broken.push('setback');
      if (kept.some((ring) => meets(shape, ring))) broken.push('keepout');
      return broken;
    },
  };
}

/** The ground under a roof, or the line of a screen. */
export function shapeOf(cloth: Canopy | Screen): PlanPoint[] {
  return cloth.kind === 'canopy' ? canopyCorners(cloth).map(([x, y]): PlanPoint => [x, y]) : cleanPath(cloth.path);
}

function roofFits(plan: Plan, { height }: Canopy, ring: readonly PlanPoint[], ways: readonly (readonly PlanPoint[])[]): boolean {
  if (height < HEADROOM - ROUNDING && ways.some((way) => meets(ring, way))) return false;
  return plan.features.every((feature) => {
    switch (feature.kind) {
      case 'building': {
        const eaves = height > feature.height - HAND_BREADTH ? (feature.eaves ?? DEFAULTS.eaves) : 0;
        return !meets(ring, openRing(feature.outline)) && distanceToShape(ring, closed(openRing(feature.outline))) >= eaves + HAND_BREADTH - ROUNDING;
      }
      case 'wall':
      case 'hedge':
        return height >= feature.height + HAND_BREADTH - ROUNDING || distanceToShape(ring, feature.path) >= feature.thickness / 2 + HAND_BREADTH - ROUNDING;
      case 'tree': {
        const apart = distanceToRing(feature.at, ring);
        if (apart < TRUNK_SHARE * feature.height + HAND_BREADTH && height < feature.height + CLEARANCE) return false;
        return height <= feature.crownBase - HAND_BREADTH || height >= feature.height + CLEARANCE - ROUNDING || apart >= feature.crownWidth / 2 + HAND_BREADTH;
      }
      case 'plant':
        return height >= feature.height + CLEARANCE - ROUNDING || distanceToRing(feature.at, ring) >= feature.spread / 2;
      case 'bed':
        return height >= feature.plantHeight + CLEARANCE - ROUNDING || !meets(ring, openRing(feature.outline));
      case 'canopy':
        return !meets(ring, shapeOf(feature));
      case 'screen':
        return height >= feature.height + HAND_BREADTH || !pathsMeet(closed(ring), feature.path);
      default:
        return true;
    }
  });
}

function dropsFit(plan: Plan, canopy: Canopy, ways: readonly (readonly PlanPoint[])[]): boolean {
  return (canopy.drops ?? []).every(({ side, depth }) => {
    const [a, b] = canopyEdge(canopy, side);
    const foot = Math.min(a[2], b[2]) - depth;
    return foot >= AIR_GAP - ROUNDING && curtainFits(plan, [[a[0], a[1]], [b[0], b[1]]], foot, ways);
  });
}

function screenFits(plan: Plan, screen: Screen, path: readonly PlanPoint[], ways: readonly (readonly PlanPoint[])[]): boolean {
  const clear = plan.features.every((feature) => {
    if (feature.kind === 'bed') return !meets(path, openRing(feature.outline));
    if (feature.kind === 'canopy') return screen.height < feature.height - HAND_BREADTH || !meets(path, shapeOf(feature));
    return feature.kind !== 'screen' || !pathsMeet(path, feature.path);
  });
  return clear && curtainFits(plan, path, screen.bottom ?? DEFAULTS.bottom, ways);
}

/** Whether cloth that hangs over a line down to `foot` clears what stands there. [m] */
function curtainFits(plan: Plan, line: readonly PlanPoint[], foot: number, ways: readonly (readonly PlanPoint[])[]): boolean {
  if (foot < HEADROOM && ways.some((way) => meets(line, way))) return false;
  return plan.features.every((feature) => {
    switch (feature.kind) {
      case 'building':
        return !meets(line, openRing(feature.outline)) && distanceToShape(line, closed(openRing(feature.outline))) >= HAND_BREADTH - ROUNDING;
      case 'wall':
      case 'hedge':
        return foot >= feature.height || distanceToShape(line, feature.path) >= feature.thickness / 2 + HAND_BREADTH - ROUNDING;
      case 'tree':
        return distanceToShape(line, [feature.at]) >= (foot < feature.height ? feature.crownWidth / 2 : 0) + LEAF_GAP;
      case 'plant':
        return foot >= feature.height || distanceToShape(line, [feature.at]) >= feature.spread / 2 + LEAF_GAP;
      case 'bed':
        return foot >= feature.plantHeight || !meets(line, openRing(feature.outline));
      default:
        return true;
    }
  });
}

function postsOf(cloth: Canopy | Screen, maxBay: number): PlanPoint[] {
  if (cloth.kind === 'screen') return screenPosts(cloth, maxBay).map(({ at }) => at);
  const { across, along } = canopyGrid(cloth, maxBay);
  const [frontLeft, backLeft, backRight] = canopyCorners(cloth);
  const posts: PlanPoint[] = [];
  for (let j = 0; j <= along; j++) {
    for (let i = 0; i <= across; i++) {
      const at = (axis: 0 | 1) => backLeft[axis] + ((backRight[axis] - backLeft[axis]) * i) / across + ((frontLeft[axis] - backLeft[axis]) * j) / along;
      posts.push([at(0), at(1)]);
    }
  }
  return posts;
}

function postFits(plan: Plan, post: PlanPoint, ways: readonly (readonly PlanPoint[])[]): boolean {
  return !ways.some((way) => pointInRing(post, way)) && plan.features.every((feature) => isClearOfPost(feature, post));
}

function isClearOfPost(feature: Feature, post: PlanPoint): boolean {
  switch (feature.kind) {
    case 'building':
      return distanceToRing(post, openRing(feature.outline)) >= HAND_BREADTH - ROUNDING;
    case 'wall':
    case 'hedge':
      return distanceToShape([post, post], feature.path) >= feature.thickness / 2 + HAND_BREADTH - ROUNDING;
    case 'tree':
      return distanceToShape([post, post], [feature.at]) >= TRUNK_SHARE * feature.height + ROOT_GAP;
    case 'plant':
      return distanceToShape([post, post], [feature.at]) >= Math.max(feature.spread / 2, feature.container ? potOf(feature).width / 2 : 0);
    case 'bed':
      return !pointInRing(post, feature.outline);
    default:
      return true;
  }
}

function closed(ring: readonly PlanPoint[]): readonly PlanPoint[] {
  return [...ring, ring[0]];
}

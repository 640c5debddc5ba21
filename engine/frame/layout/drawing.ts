import type { SpacePoint } from '../../plan/geometry/shapes.ts';
import type { Canopy, Plan, Screen } from '../../plan/types.ts';
import { canopyFrame } from './canopy-frame.ts';
import { briefOf } from './brief.ts';
import type { FrameModel } from './model.ts';
import { screenFrame } from './screen-frame.ts';
import type { FrameDrawing } from '../types.ts';

/**
 * The frame as lines with dimensions, for a page to draw from any side; `null` when it cannot be built as it stands.
 */
export function frameDrawing(thing: Canopy | Screen, plan: Plan): FrameDrawing | null {
  const result = briefOf(thing, plan);
  if (!result.ok) return null;
  return drawingOf(
    thing.kind === 'canopy' ? canopyFrame(thing, result.brief, 0, plan) : screenFrame(thing, result.brief, 0),
  );
}

export function drawingOf(model: FrameModel): FrameDrawing {
  const posts = model.posts.map(({ id, at: [x, y], height }) => ({
    id,
    foot: [x, y, 0] as const,
    top: [x, y, height] as const,
  }));
  return {
    posts,
    tubes: model.tubes.map(({ part, from, to }) => ({ part, from, to })),
    cloths: model.cloths.map(({ where, corners }) => ({ where, corners })),
    dimensions: dimensionsOf(model, posts),
  };
}

function dimensionsOf(model: FrameModel, posts: FrameDrawing['posts']): FrameDrawing['dimensions'] {
  const dimension = (label: string, from: SpacePoint, to: SpacePoint): FrameDrawing['dimensions'][number] => ({
    label,
    from,
    to,
    length: Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]),
  });
  if (model.kind === 'screen') {
    const bays = posts.slice(1).map((post, i) => dimension(`${posts[i].id} to ${post.id}`, posts[i].foot, post.foot));
    const last = posts[posts.length - 1];
    const closing = model.posts.some(({ role }) => role === 'end')
      ? []
      : [dimension(`${last.id} to ${posts[0].id}`, last.foot, posts[0].foot)];
    return [...bays, ...closing, dimension('height', posts[0].foot, posts[0].top)];
  }
  const corners = posts.filter((_, i) => model.posts[i].role === 'corner');
  const [backLeft, backRight, frontLeft, frontRight] = corners;
  // Posts go row by row: the second of the back row, and the first of the second row.
  const [across, along] = [posts[1], posts[posts.indexOf(backRight) + 1]];
  const bays = [
    ...(across === backRight ? [] : [dimension('bay crosswise', backLeft.foot, across.foot)]),
    ...(along === frontLeft ? [] : [dimension('bay lengthwise', backLeft.foot, along.foot)]),
  ];
  const front =
    frontLeft.top[2] === backLeft.top[2] ? [] : [dimension('height in front', frontLeft.foot, frontLeft.top)];
  return [
    dimension('width, post middle to post middle', backLeft.foot, backRight.foot),
    dimension('length, post middle to post middle', backLeft.foot, frontLeft.foot),
    dimension('diagonal', backLeft.foot, frontRight.foot),
    dimension('other diagonal', backRight.foot, frontLeft.foot),
    dimension(front.length > 0 ? 'height at the back' : 'height', backLeft.foot, backLeft.top),
    ...front,
    ...bays,
  ];
}

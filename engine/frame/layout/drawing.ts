import { spaceDistance, type SpacePoint } from '../../plan/geometry/vectors.ts';
import type { FrameModel } from './model.ts';
import type { DimensionKind, FrameDrawing } from './types.ts';

/** A frame as lines with dimensions, for a page to draw from any side. */
export function drawingOf(model: FrameModel): FrameDrawing {
  const posts = model.posts.map(({ id, at: [x, y], height }) => ({
    id,
    foot: [x, y, 0] as const,
    top: [x, y, height] as const,
  }));
  return {
    posts,
    tubes: model.tubes.map(({ part, kind, from, to }) => ({ part, kind, from, to })),
    cloths: model.cloths.map(({ where, corners }) => ({ where, corners })),
    dimensions: dimensionsOf(model, posts),
  };
}

function dimensionsOf(model: FrameModel, posts: FrameDrawing['posts']): FrameDrawing['dimensions'] {
  const dimension = (
    kind: DimensionKind,
    from: SpacePoint,
    to: SpacePoint,
    label: string = kind,
  ): FrameDrawing['dimensions'][number] => ({
    kind,
    label,
    from,
    to,
    length: spaceDistance(from, to),
  });
  if (model.kind === 'screen') {
    const bays = posts
      .slice(1)
      .map((post, i) => dimension('bay', posts[i].foot, post.foot, `${posts[i].id} to ${post.id}`));
    const last = posts[posts.length - 1];
    const closing = model.posts.some(({ role }) => role === 'end')
      ? []
      : [dimension('bay', last.foot, posts[0].foot, `${last.id} to ${posts[0].id}`)];
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
    dimension('width', backLeft.foot, backRight.foot, 'width, post middle to post middle'),
    dimension('length', backLeft.foot, frontLeft.foot, 'length, post middle to post middle'),
    dimension('diagonal', backLeft.foot, frontRight.foot),
    dimension('diagonal', backRight.foot, frontLeft.foot, 'other diagonal'),
    dimension('height', backLeft.foot, backLeft.top, front.length > 0 ? 'height at the back' : 'height'),
    ...front,
    ...bays,
  ];
}

import type { Section } from '../../engine/index.ts';

/** A point of the picture: metres along, and metres down from the ground line (up is negative). */
export type Drawn = readonly [x: number, y: number];

/** A section laid out for a picture with the same scale across and up. [m] */
export interface SectionDrawing {
  readonly viewBox: string;
  readonly ground: readonly [Drawn, Drawn];
  readonly cloth: readonly (readonly [Drawn, Drawn])[];
  /** The lowest sun that still gets past the cloth. */
  readonly ray: readonly [Drawn, Drawn] | null;
  /** The drop that stops it, hung from the edge that the ray passes. */
  readonly cure: readonly [Drawn, Drawn] | null;
}

const MARGIN = 0.4;
/** Room over the uppermost thing for the ray's clock time. [m] */
const HEAD = 0.9;

export function sectionDrawing({ cloth, plant, slip }: Section): SectionDrawing {
  const sheets = cloth.map(([a, b]): [Drawn, Drawn] => [
    [a.along, -a.height],
    [b.along, -b.height],
  ]);
  const points = sheets.flat();
  const left = Math.min(-plant.halfWidth, ...points.map(([x]) => x)) - MARGIN;
  const right = Math.max(plant.halfWidth, ...points.map(([x]) => x)) + 3 * MARGIN;
  const top = Math.max(plant.top, ...points.map(([, y]) => -y)) + HEAD;
  const edge = points.reduce<Drawn | null>((far, point) => (far === null || point[0] > far[0] ? point : far), null);
  const drops = Object.values(slip?.cure.drops ?? {});
  const depth = drops.length === 0 ? 0 : Math.max(...drops);
  return {
    viewBox: `${left} ${-top} ${right - left} ${top + MARGIN}`,
    ground: [
      [left, 0],
      [right, 0],
    ],
    cloth: sheets,
    ray: slip && clipped(slip.ray, right - MARGIN, top - MARGIN),
    cure: edge && depth > 0 ? [edge, [edge[0], Math.min(0, edge[1] + depth)]] : null,
  };
}

/** The ray cut off where it leaves the picture. */
function clipped([from, to]: NonNullable<Section['slip']>['ray'], right: number, top: number): readonly [Drawn, Drawn] {
  const along = to.along - from.along;
  const up = to.height - from.height;
  const share = Math.max(0, Math.min(1, (right - from.along) / along, up > 0 ? (top - from.height) / up : 1));
  return [
    [from.along, -from.height],
    [from.along + share * along, -(from.height + share * up)],
  ];
}

import { pointToMillimetre, toMillimetre } from '../../../engine/index.ts';
import type { FeatureKind, PlanPoint } from '../../../engine/index.ts';
import { FIELDS } from '../../common/fields/feature-fields.ts';
import type { NumberField } from '../../common/fields/number-field.ts';

/**
 * How a thing is put on paper: one point, a line of points, or an outline (by its corners, or as a rectangle by two).
 */
type ToolShape = 'point' | 'line' | 'outline' | 'rectangle';

export type ToolId = FeatureKind | 'pot';

export interface Tool {
  readonly id: ToolId;
  /** The key that takes it up, shown on its button. */
  readonly letter: string;
  /** "wall", in a sentence. */
  readonly noun: string;
  readonly button: string;
  readonly shape: ToolShape;
  /** Fewest points that make one. */
  readonly fewest: number;
  readonly kind: FeatureKind;
  /** Numbers asked before it enters the plan. */
  readonly asked: readonly NumberField[];
}

function toolOf(id: ToolId, letter: string, button: string, noun: string, shape: ToolShape, fewest: number): Tool {
  const kind = id === 'pot' ? 'plant' : id;
  return { id, letter, noun, button, shape, fewest, kind, asked: FIELDS[kind].filter((each) => each.asked) };
}

/** In the order a yard is drawn. */
export const TOOLS: readonly Tool[] = [
  toolOf('wall', 'W', 'Wall', 'wall', 'line', 2),
  toolOf('building', 'B', 'Building', 'building', 'outline', 3),
  toolOf('tree', 'T', 'Tree', 'tree', 'point', 1),
  toolOf('hedge', 'H', 'Hedge', 'hedge', 'line', 2),
  toolOf('bed', 'D', 'Bed', 'bed', 'outline', 3),
  toolOf('plant', 'P', 'Plant', 'plant', 'point', 1),
  toolOf('pot', 'O', 'Pot', 'potted plant', 'point', 1),
  toolOf('canopy', 'C', 'Roof', 'roof', 'rectangle', 2),
  toolOf('screen', 'S', 'Screen', 'cloth screen', 'line', 2),
  toolOf('keepout', 'K', 'Keep clear', 'area to keep clear', 'outline', 3),
  toolOf('ground', 'G', 'Ground', 'piece of ground', 'outline', 3),
  toolOf('eye', 'E', 'Onlooker', 'onlooker', 'line', 1),
  toolOf('reading', 'R', 'Reading', 'reading', 'point', 1),
];

export function toolById(id: string | null): Tool | undefined {
  return TOOLS.find((tool) => tool.id === id);
}

export function toolByLetter(letter: string): Tool | undefined {
  return TOOLS.find((tool) => tool.letter === letter.toUpperCase());
}

/**
 * The drawn shape as a feature without its numbers: the one place where points become a wall, a bed or a roof.
 * @param now Clock time of the site for a reading, "YYYY-MM-DDTHH:MM".
 */
export function shapeOf(tool: Tool, points: readonly PlanPoint[], now: string): Record<string, unknown> {
  switch (tool.id) {
    case 'wall':
    case 'hedge':
    case 'screen':
    case 'eye':
      return { kind: tool.kind, path: points };
    case 'building':
    case 'bed':
      return { kind: tool.kind, outline: points };
    case 'keepout':
      return { kind: tool.kind, outline: points, blocks: ['posts', 'pots'] };
    case 'ground':
      return { kind: tool.kind, outline: points, surface: 'paving' };
    case 'tree':
      return { kind: 'tree', at: points[0] };
    case 'plant':
      return { kind: 'plant', at: points[0] };
    case 'pot':
      return { kind: 'plant', at: points[0], container: true };
    case 'reading':
      return { kind: 'reading', at: points[0], when: now };
    case 'canopy': {
      const [[ax, ay], [bx, by]] = points;
      return {
        kind: 'canopy',
        center: pointToMillimetre([(ax + bx) / 2, (ay + by) / 2]),
        length: toMillimetre(Math.abs(by - ay)),
        width: toMillimetre(Math.abs(bx - ax)),
      };
    }
  }
}

/** Four corners from two opposite ones, counter-clockwise from the lower left. */
export function rectangle([ax, ay]: PlanPoint, [bx, by]: PlanPoint): readonly PlanPoint[] {
  const left = Math.min(ax, bx);
  const right = Math.max(ax, bx);
  const low = Math.min(ay, by);
  const high = Math.max(ay, by);
  return [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ];
}

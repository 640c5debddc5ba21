import type { CutPlan } from '../cuts/types.ts';
import type { FrameBrief, FrameModel } from '../layout/model.ts';
import type { SettingOut } from '../layout/types.ts';
import type { GoodsId } from '../shop/goods.ts';
import type { ClothPlan, Cost, CostItem } from '../shop/types.ts';
import type { AnchorPlan, StormPlan } from '../strength/types.ts';
import type { ToolId } from './tools.ts';
import type { Step } from './types.ts';

/** A step, whatever it is a step of. */
export type Task = Omit<Step, 'work'>;

/** What the steps are worked out from. */
export interface StepInput {
  readonly model: FrameModel;
  readonly brief: FrameBrief;
  readonly cutting: CutPlan;
  readonly cloth: ClothPlan;
  readonly anchors: AnchorPlan;
  readonly settingOut: SettingOut;
  readonly storm: StormPlan;
  readonly cost: Cost;
  readonly sunk: number;
  readonly people: number;
}

/** A tool, goods that are the same for every frame, or a line of this frame's own. */
type Need = ToolId | GoodsId | CostItem;

/** @param cautions Ids of the cautions that go with it. */
export function step(id: string, text: string, needs: readonly Need[], cautions: readonly string[]): Task {
  return { id, text, needs: needs.map((need) => (typeof need === 'string' ? need : need.id)), cautions };
}

export type Bought<Of extends CostItem['of']> = Extract<CostItem, { readonly of: Of }>;

/** Lines of the shopping list of one sort. */
export function linesOf<Of extends CostItem['of']>({ items }: Cost, of: Of): Bought<Of>[] {
  return items.filter((item): item is Bought<Of> => item.of === of);
}

/** A joint up to here is reached from the ground. [m] */
const REACH = 1.9;

export function needsLadder({ posts }: FrameModel): boolean {
  return posts.some(({ height }) => height > REACH);
}

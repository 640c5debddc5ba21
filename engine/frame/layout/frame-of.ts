import type { Cloth, Plan } from '../../plan/types.ts';
import type { SunkDepth } from '../strength/footings.ts';
import { canopyFrame } from './canopy-frame.ts';
import type { FrameBrief, FrameModel } from './model.ts';
import { screenFrame } from './screen-frame.ts';

/**
 * The frame of a canopy or a screen.
 * @param sunk How deep posts stand in the ground.
 * @param plan What may stand where a middle post of a canopy would.
 */
export function frameOf(thing: Cloth, brief: FrameBrief, sunk: SunkDepth, plan: Plan): FrameModel {
  return thing.kind === 'canopy' ? canopyFrame(thing, brief, sunk, plan) : screenFrame(thing, brief, sunk('end'));
}

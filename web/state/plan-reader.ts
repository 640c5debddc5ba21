/**
 * Reading plans and checking them, with all there is. Loaded after the first picture, or when a stored yard or a file
 * is read.
 */
export { checkPlan, parsePlan, salvagePlan } from '../../engine/index.ts';

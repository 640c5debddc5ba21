/** Reading plans with every check there is. Loaded when the first file or stored yard is read: a first visit needs none of it. */
export { parsePlan, salvagePlan } from '../../engine/index.ts';

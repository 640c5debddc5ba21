/**
 * What the first picture shows inside the shell, as one file of the built page for the same reason as
 * `first-stages.ts`.
 */
export { YardMap } from '../map/YardMap/index.tsx';
export { HeatCard } from '../panels/heat/index.tsx';
export { MapCaption } from './MapCaption/index.tsx';

/** The cards of the later stages, as one file of the built page for the same reason as `first-stages.ts`. */
export { BuildCard } from '../panels/build/index.tsx';
export { PlaceCard } from '../panels/place/index.tsx';
export { TryCard } from '../panels/try/index.tsx';
export { YearCard } from '../panels/year/index.tsx';

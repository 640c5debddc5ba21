/**
 * The cards of the later stages, how sure all is, and what goes out to others; one file of the built page for the same
 * reason as `first-stages.ts`.
 */
export { BuildCard } from '../panels/build/index.tsx';
export { Handing } from '../panels/papers/Handing.tsx';
export { readPack } from '../panels/papers/pack.ts';
export { PlaceCard } from '../panels/place/index.tsx';
export { FieldSheetCard } from '../panels/sheets/index.tsx';
export { SureCard } from '../panels/sure/index.tsx';
export { TryCard } from '../panels/try/index.tsx';
export { YearCard } from '../panels/year/index.tsx';
export { FilesCard } from './FilesCard/index.tsx';

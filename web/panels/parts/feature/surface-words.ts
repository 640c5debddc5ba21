import type { Surface } from '../../../../engine/index.ts';

export const SURFACES: Readonly<Record<Surface, string>> = {
  lawn: 'lawn',
  soil: 'bare soil',
  paving: 'paving',
  mulch: 'mulch',
  gravel: 'gravel',
};

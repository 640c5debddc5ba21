import type { Shape } from './answers.ts';

const HOUSES: Readonly<Record<Shape, string>> = {
  walled: '',
  front: 'M8 4h48v12h-48z',
  corner: 'M4 4h52v12h-40v28h-12z',
  passage: 'M4 6h12v36h-12zM48 6h12v36h-12z',
};
const WALLS: Readonly<Record<Shape, string>> = {
  walled: 'M8 8h48v32h-48z',
  front: 'M8 16v26h48v-26',
  corner: 'M16 43h40v-27',
  passage: 'M16 8h32M16 40h32',
};

/** A start shape as the plan draws it: houses hatched, walls heavy. */
export function ShapePicture({ shape }: { readonly shape: Shape }) {
  return (
    <svg viewBox="0 0 64 48" width="64" height="48" aria-hidden="true" class="shape-picture">
      <path d={HOUSES[shape]} class="shape-house" />
      <path d={WALLS[shape]} class="shape-wall" />
    </svg>
  );
}

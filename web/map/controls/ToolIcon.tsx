import type { ToolId } from '../drawing/tools.ts';

/** Small drawings of what each tool puts on the paper, as it looks there. */
const SHAPES: Readonly<Record<ToolId | 'choose' | 'add', string>> = {
  choose: 'M5 3l13 9-6 1.2L9.6 19z',
  add: 'M12 4v16M4 12h16',
  wall: 'M2 16L22 16M2 11L22 11M4 16l5-5M9 16l5-5M14 16l5-5',
  building: 'M4 4h16v16H4zM4 12l8-8M4 20l16-16M12 20l8-8',
  tree:
    'M12 3c3 0 4.4 1.6 5 3.4 2 .6 3.4 2.3 3.4 4.6 0 3.6-3 5.6-8.4 5.6S3.6 14.6 3.6 11c0-2.3 1.4-4 ' +
    '3.4-4.600C7.6 4.6 9 3 12 3zM12 21v-7M9 9h.01M13 7h.01M15.5 11h.01M11 12h.01',
  hedge: 'M2 17h20M2 10q2.5-4 5 0 2.5-4 5 0 2.5-4 5 0 2.5-4 5 0M5 13.500h.01M10 14h.01M15 13.500h.01M19 14h.01',
  bed: 'M3 6h18v12H3zM7 15v-5M7 12l-2-2M7 12l2-2M12 15v-5M12 12l-2-2M12 12l2-2M17 15v-5M17 12l-2-2M17 12l2-2',
  plant: 'M12 21V9M12 13c-4 0-6-2-6-6 4 0 6 2 6 6zM12 10c0-4 2-6 6-6 0 4-2 6-6 6z',
  pot:
    'M6 13h12l-1.6 8H7.600zM12 13V6M12 9C9 9 7.5 7.5 7.5 4.5 10.5 4.5 12 6 12 9zM12 7c0-2 1.2-3.5 4-3.5 0 ' +
    '2.5-1.5 3.5-4 3.500z',
  canopy: 'M3 9l5-4h13l-5 4zM3 9v11M16 9v11M21 5v11M6.5 6.500h12M9 9l5-4M12.5 9l5-4',
  screen: 'M4 4v17M20 4v17M4 6h16M4 16h16M8 6v10M12 6v10M16 6v10M4 11h16',
  keepout: 'M4 4h4M10 4h4M16 4h4v4M20 10v4M20 16v4h-4M14 20h-4M8 20H4v-4M4 14v-4M4 8V4M9 9l6 6M15 9l-6 6',
  ground: 'M3 7h18M3 17h18M6 7l-3 10M12 7v10M18 7l3 10',
  eye: 'M2 12c4-6 16-6 20 0-4 6-16 6-20 0zM12 9.500a2.5 2.5 0 1 0 .01 0z',
  reading: 'M10 4a2 2 0 0 1 4 0v9.500a4 4 0 1 1-4 0zM12 9v8M16 5h3M16 8h2M16 11h3',
};

export function ToolIcon({ id }: { readonly id: ToolId | 'choose' | 'add' }) {
  return (
    <svg class="tool-icon" viewBox="0 0 24 24" aria-hidden="true">
      <path d={SHAPES[id]} />
    </svg>
  );
}

/** Where the figures of wind come from: for those who check them, not for the page. */

import type { BuildSheet } from '../types.ts';

const ROOF_SOURCES = [
  'Coefficients: BS 6399-2:1997 table 13, free monopitch roofs; flat and blocked below EN 1991-1-4 table 7.6 ' +
    '(from memory).',
];
const SIDE_SOURCES = ['Side push 1.2: EN 1991-1-4 table 7.9, free-standing walls (from memory).'];
const SOURCES = [
  'Pressure 0.613·V² Pa: ASCE/SEI 7, all site factors 1 (from memory); V is the 3-second gust.',
  'Holes: 1 − (1 − d)², AS/NZS 1170.2 appendix D (from memory), the most cautious of the published forms.',
  'Rails: simply supported beams, Roark’s Formulas for Stress and Strain, 8th ed., table 8.1 (from memory); 165 ' +
    'MPa (23,900 psi) is this project’s own allowable.',
];

export function windSources({ kind, uplift: { sideFormula } }: BuildSheet): readonly string[] {
  return [...SOURCES, ...(kind === 'canopy' ? ROOF_SOURCES : []), ...(sideFormula === null ? [] : SIDE_SOURCES)];
}

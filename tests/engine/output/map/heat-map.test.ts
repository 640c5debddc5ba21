import { describe, expect, it } from 'vitest';
import { heatMap, heatMapKey } from '../../../../engine/output/map/heat-map.ts';
import { smallLoad } from '../small-load.ts';

const PLAIN = { colour: false, columns: 80 };

describe('a heat map in characters', () => {
  it('has y up, two marks a cell, denser where it is hotter, blanks where there is no value', () => {
    expect(heatMap(smallLoad([1, 3, null, 8, 14, 25]), PLAIN)).toBe('  ▒▒▓▓██\n  ··░░');
  });

  it('marks plants with letters, those off the map not at all', () => {
    const load = smallLoad([1, 3, 8, 8, 14, 25], [{ at: [3.2, 1.9] }, { at: [2.1, 1.1] }, { at: [-9, 1] }]);
    expect(heatMap(load, PLAIN)).toBe('  ▒▒▓▓A█\n  B·░░▒▒');
  });

  it('draws cells together until they fit the page, by the grade of their mean load', () => {
    expect(heatMap(smallLoad([0, 0, 4, 0, 40, 4]), { colour: false, columns: 6 })).toBe('  ▒▒░░');
  });

  it('carries colour codes only where colour is wanted', () => {
    const load = smallLoad([1, 3, 8, 8, 14, 25]);
    expect(heatMap(load, PLAIN)).not.toContain('\u001b');
    expect(heatMapKey(false)).toBe('·· mild   ░░ warm   ▒▒ strong   ▓▓ harsh   ██ scorching');
    const coloured = heatMap(load, { colour: true, columns: 80 });
    // oxlint-disable-next-line no-control-regex -- colour codes are what is looked for
    expect(coloured.replaceAll(/\u001b\[[\d;]*m/g, '')).toBe(heatMap(load, PLAIN));
    expect(coloured).not.toBe(heatMap(load, PLAIN));
  });
});

import { describe, expect, it } from 'vitest';
import { rootZone } from '../../engine/load/pot/root-zone.ts';
import { pot } from '../engine/load/pot/pot-days.ts';
import { measuredPots, TENNESSEE, white } from './measured-pots.ts';

describe('measured pots', () => {
  it('13 of 14 lie within the spread; that small pots get hotter at the wall than large ones is not reproduced', () => {
    const rows = measuredPots();
    expect(rows.filter(({ off, spread }) => off > spread).map(({ name }) => name)).toEqual(['10.3 against 2.7 L']);
    expect(Math.hypot(...rows.map(({ off }) => off)) / Math.sqrt(rows.length)).toBeLessThan(3);
  });

  it('a white pot stays below 38 °C, a black one does not (Witcher et al. 2020: 3 and 21 % of the time above)', () => {
    const bed = pot({ width: 0.28, height: 0.24 });
    expect(rootZone(TENNESSEE, white(bed)).verdict).toBe('fine');
    expect(rootZone(TENNESSEE, bed).warmest).toBeGreaterThan(38);
  });
});

import { describe, expect, it } from 'vitest';
import { bridgeGaps } from '../../../../engine/sun/weather/gaps.ts';

const _ = NaN;

describe('gaps in a ring of values', () => {
  it('are filled in a straight line, also across its end', () => {
    const values = Float64Array.of(_, 6, 10, _, _, 16, 2, _);
    expect(bridgeGaps(values, 2)).toEqual({ filled: 4, firstGap: null });
    expect([...values]).toEqual([expect.closeTo(14 / 3, 12), 6, 10, 12, 14, 16, 2, expect.closeTo(10 / 3, 12)]);
  });

  it('stay when they are too long, and the first is named', () => {
    const values = Float64Array.of(1, _, 3, _, _, 6, _, _, _);
    expect(bridgeGaps(values, 1)).toEqual({ filled: 1, firstGap: 3 });
    expect([...values]).toEqual([1, 2, 3, _, _, 6, _, _, _]);
  });

  it('are all there is in an array of nothing', () => {
    expect(bridgeGaps(Float64Array.of(_, _), 5)).toEqual({ filled: 0, firstGap: 0 });
  });

  it('may surround a single value, which then holds everywhere', () => {
    const values = Float64Array.of(_, 7, _, _);
    expect(bridgeGaps(values, 3)).toEqual({ filled: 3, firstGap: null });
    expect([...values]).toEqual([7, 7, 7, 7]);
  });

  it('that begin at the end of the ring count from there', () => {
    expect(bridgeGaps(Float64Array.of(_, 5, 6, _, _), 2)).toEqual({ filled: 0, firstGap: 3 });
  });
});

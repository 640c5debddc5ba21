import { describe, expect, test } from 'vitest';
import { packWords } from '../../../../engine/frame/shop/line.ts';
import { built, roof } from '../yard.ts';

describe('the sheet', () => {
  test('people’s own prices win, a tube’s by its id, and what has none is named', () => {
    const { tube } = built(roof, { stock: {} });
    const own = built(roof, { stock: { prices: { corner3: 3.25, [tube.id]: 11 } } });
    expect(own.cost.items.find((item) => item.id === 'joint-3-way corner')).toMatchObject({
      price: 3.25,
      amount: 13,
      priceFrom: 'yours',
    });
    expect(own.cost.items.find((item) => item.id === `tube-${tube.id}`)).toMatchObject({
      price: 11,
      priceFrom: 'yours',
      priceKey: tube.id,
    });
    const krona = built(roof, { stock: { currency: 'SEK' } });
    expect(krona.cost.total).toBeNull();
    expect(krona.cost.missing).toContain('foot');
  });

  test('buys small things in whole packs, and none over that nobody is told of', () => {
    const { cost, clips } = built({ ...roof, length: 3, width: 2.6 });
    const ties = cost.items.find((item) => item.id === 'ties');
    expect(clips).toBe(2 * 5 + 2 * 5);
    expect(ties).toMatchObject({ need: 20, count: 20, pack: 10 });
    const screws = cost.items.find((item) => item.id === 'screws');
    expect(screws).toMatchObject({ need: 16, count: 20, pack: 10 });
    expect(screws && packWords(screws)).toBe('16 needed, 2 packs of 10, 4 to spare');
  });
});

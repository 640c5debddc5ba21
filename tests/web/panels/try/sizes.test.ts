import { expect, test, vi } from 'vitest';
import { demoPlan } from '../../../../engine/index.ts';
import type { SiteRequest } from '../../../../engine/index.ts';
import { findTheBest, largestSizes, wish } from '../../../../web/panels/try/search.ts';
import { history } from '../../../../web/state/yard.ts';
import { asked } from '../../asked.ts';

vi.mock('../../../../web/state/ask.ts', () => import('../../asked.ts'));

/** What is searched for in a yard of those units, up to the middling size. */
function sidesSearched(units: 'metric' | 'imperial'): number[] {
  history.value = { steps: [{ label: 'Opened', plan: { ...demoPlan('courtyard'), units } }], cursor: 0 };
  wish.value = { ...wish.value, upTo: 'middling' };
  void findTheBest();
  const { args } = asked.filter(({ method }) => method === 'site').at(-1)!;
  const { request } = args as { readonly request: SiteRequest };
  const sides = (request.sizes as readonly { readonly length: number }[]).map(({ length }) => length);
  return [...new Set(sides)];
}

test('cloth is sought in the sizes that it is bought in: half metres, or feet', () => {
  expect(largestSizes('metric')).toEqual({ small: '2 × 2 m', middling: '3 × 3 m', large: '4 × 4 m' });
  expect(largestSizes('imperial')).toEqual({ small: '6 × 6 ft', middling: '10 × 10 ft', large: '12 × 12 ft' });
  expect(sidesSearched('metric')).toEqual([1, 1.5, 2, 2.5, 3]);
  // 1 ft = 0.3048 m, exactly (international foot, 1959).
  expect(sidesSearched('imperial').map((side) => side / 0.3048)).toEqual(
    [3, 4, 6, 8, 10].map((feet) => expect.closeTo(feet, 9)),
  );
});

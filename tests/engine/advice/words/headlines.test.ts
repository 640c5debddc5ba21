import { describe, expect, test } from 'vitest';
import {
  cheaperHeadline,
  drawHeadline,
  heatHeadline,
  placeHeadline,
  triedHeadline,
  demoPlan,
  loadOf,
  placeOf,
} from '../../../../engine/index.ts';
import type { LadderStep, PlantLoad } from '../../../../engine/index.ts';
import { mustBeOk } from '../../../parts/outcome.ts';

const plan = demoPlan('courtyard');
const words = (text: string): number => text.split(' ').length;

function plants(): readonly PlantLoad[] {
  const load = loadOf(plan, { period: { kind: 'heatwave' }, cell: 1, height: 0.5 });
  mustBeOk(load);
  return load.value.plants.toSorted((a, b) => (b.scorchDose ?? 0) - (a.scorchDose ?? 0));
}

describe('the one sentence a stage opens with', () => {
  const all = plants();
  const lemon = all.find(({ id }) => id === 'lemon')!;

  test('says who burns and when, with sunrise and sunset by their names', () => {
    const when = { from: '07:00', to: '21:30' };
    expect(heatHeadline(plan, [{ ...lemon, when }], { from: '06:58', to: '21:44' })).toBe(
      'The lemon pot will burn from sunrise to sunset.',
    );
    expect(heatHeadline(plan, [{ ...lemon, when }], null)).toBe(
      'The lemon pot will burn from seven to half past nine in the evening.',
    );
  });

  test('never holds more than twenty words, however many plants burn and however long their names are', () => {
    const burning = all.map((plant): PlantLoad => ({ ...plant, verdict: 'will burn' }));
    const said = heatHeadline(plan, burning, null);
    expect(said).toContain('; so will four more.');
    expect(words(said)).toBeLessThanOrEqual(20);
    const step: LadderStep = {
      id: 'move',
      name: 'Move the pots',
      spared: 4.9,
      serves: ['lemon', 'hydrangea'],
      sparedShare: 0.49,
      cost: 0,
      gain: '49 % less',
      effect: '49 % less heat damage',
      sentence: '',
    };
    expect(cheaperHeadline(plan, [step])).toBe(
      'Move the pots first: free, and half the heat damage to them. Then try cloth.',
    );
    expect(cheaperHeadline(plan, [{ ...step, cost: null }])).toBe(
      'Mulch and water first; then cloth over the plants that burn.',
    );
  });

  test('says where the pot should go and that it is free, within twenty words', () => {
    const place = placeOf(plan, { plant: 'lemon', count: 1 });
    mustBeOk(place);
    const [best] = place.value.spots;
    const said = placeHeadline(plan, place.value, 'metric');
    expect(said).toContain(best.where);
    expect(said).toContain(': free, and ');
    expect(words(said)).toBeLessThanOrEqual(20);
    const stay = { ...best, stay: true };
    const left = (verdict: 'fine' | 'cooking') => {
      const pot = { ...stay.pot, roots: { ...stay.pot.roots, verdict } };
      return placeHeadline(plan, { ...place.value, spots: [{ ...stay, pot }] }, 'metric');
    };
    expect(left('fine')).toMatch(/^Leave the lemon pot where it stands: no place/);
    expect(left('cooking')).toMatch(/^Leave the lemon pot where it stands, and keep its pot cool/);
  });

  test('says when nothing burns, when a plant is too dark, and when none is drawn', () => {
    const calm = all.map((plant): PlantLoad => ({ ...plant, verdict: 'fine' }));
    const inTheGround = calm.map((each): PlantLoad => ({ ...each, pot: null }));
    expect(heatHeadline(plan, inTheGround, null)).toBe('The sun harms no plant here, not even on a heatwave day.');
    // Roots that die are harm too.
    expect(lemon.pot?.roots.verdict).toBe('cooking');
    expect(heatHeadline(plan, calm, null)).toBe(
      'No leaf burns here, but roots in pots get so hot that they die: the lemon pot.',
    );
    expect(heatHeadline(plan, [{ ...lemon, verdict: 'too dark' }], null)).toBe(
      'Nothing burns; too little light for the lemon pot.',
    );
    expect(heatHeadline(plan, [], null)).toMatch(/^No plant is drawn yet/);
    expect(cheaperHeadline(plan, [])).toBe('Nothing to shade: no plant is harmed. You may stop here.');
  });

  test('says of a pot in the hand whether it is better or worse there, and its hours', () => {
    const now = lemon.scorchDose ?? 0;
    const there = { ...lemon, scorchDose: now / 3, when: { from: '15:00', to: '17:20' } };
    expect(triedHeadline(there, now)).toBe(
      'Better there: two thirds less heat damage on the heatwave day, over the limit 15:00 to 17:20.',
    );
    expect(triedHeadline({ ...lemon, scorchDose: 2 * now, when: null }, now)).toBe(
      'Worse there: more heat damage, never over the limit.',
    );
    expect(triedHeadline(lemon, now)).toMatch(
      /^No better and no worse there, over the limit \d\d:\d\d to \d\d:\d\d\.$/,
    );
  });

  test('says how many numbers of the drawing are guessed', () => {
    expect(drawHeadline(plan, 4)).toBe('Your yard is drawn; four numbers are still guessed.');
    expect(drawHeadline(plan, 1)).toBe('Your yard is drawn; one number is still guessed.');
    expect(drawHeadline({ ...plan, features: [] }, 0)).toMatch(/^Draw the walls/);
  });
});

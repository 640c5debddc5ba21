/** Ten yards of other places, the advice that each calls for written down before the program was asked. */

import { describe, expect, test } from 'vitest';
import { cheaperFirst } from '../../../../engine/advice/cheaper-first/cheaper-first.ts';
import { potGround } from '../../../../engine/advice/place/ground.ts';
import { adviceSentence } from '../../../../engine/advice/site/advice-words.ts';
import { titleOf } from '../../../../engine/advice/site/words.ts';
import { nextStepOf } from '../../../../engine/advice/why/next-step.ts';
import { whyBurnt } from '../../../../engine/advice/why/why.ts';
import { cheaperHeadline } from '../../../../engine/advice/words/cure-headlines.ts';
import { plantLoadsOf } from '../../../../engine/load/load-of.ts';
import { siteText } from '../../../../engine/output/text/site-text.ts';
import type { Feature, Plan } from '../../../../engine/plan/types.ts';
import { wall } from '../../../parts/drawn.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { sited } from './small-search.ts';
import { bed, plant, WHITE, yard } from './table.ts';

const told = (plan: Plan): string => adviceSentence(plan, sited(plan), valueOf(cheaperFirst(plan)).steps);
const on = (plan: Plan, site: Partial<Plan['site']>): Plan => ({ ...plan, site: { ...plan.site, ...site } });
const lane = (id: string, y: number): Feature =>
  wall(
    id,
    [
      [2.5, y],
      [6, y],
    ],
    { height: 2.5, thickness: 0.1 },
  );
const ALICE = { latitude: -23.7, longitude: 133.9, timeZone: 'Australia/Darwin' } as const;

/** A summer of the south. */
const southern = (plan: Plan): Plan => ({
  ...on(plan, ALICE),
  season: { ...plan.season, from: '12-20', to: '12-21' },
  climate: { ...plan.climate, months: plan.climate.months.map((month) => ({ ...month, month: 12 })) },
});

describe('ten yards afar', () => {
  // Vegetable calendars of desert extension services, from memory: lettuce is a crop of the cool months there.
  test('lettuce through an inland summer: sow it for the cool months, before anybody buys a roof it burns under', () => {
    const lettuce = southern(yard([bed('lettuce')]));
    expect(told(lettuce)).toMatch(
      /^Sow the bed lettuce-bed for the cool months instead: free\. To have it in summer: (Roof|Screen)/,
    );
    expect(cheaperHeadline(lettuce, valueOf(cheaperFirst(lettuce)).steps)).toMatch(/^Sow the .* for the cool months/);
    // Tomatoes are a crop of the summer.
    expect(told(southern(yard([bed('tomato', 3, 1)])))).not.toMatch(/^Sow/);
  });

  // Common sense: near the tropic the sun stands overhead, and every side burns; the fifth of them burns too.
  test('a young mandarin near the tropic burnt on the west: five sides burn nearly alike, so it may be the sun', () => {
    const mandarin = southern(yard([plant('mandarin', { height: 1.5, spread: 1.2, planted: '2025' })]));
    const asked = (side: number) => valueOf(whyBurnt(mandarin, { plant: 'mandarin', side, date: '2026-12-20' }));
    const { sides } = asked(270);
    const worst = Math.max(...sides.slice(1).map(({ scorchDose }) => scorchDose ?? 0));
    const west = sides.find(({ side }) => side === 270);
    expect(west?.rank).toBeGreaterThan(4);
    expect(west?.scorchDose).toBeGreaterThan(0.7 * worst);
    expect(asked(270).answer).toBe('could be');
  });

  // Roofers and house managers, common practice, no source; whoever builds there hears of it before they buy.
  test('pots on a flat roof: nothing through its skin, and somebody says what it bears, on every page of a frame', () => {
    const plan = on(yard([plant('rose', { container: true, move: 'never' })]), { soil: 'paving', surface: 'paving' });
    const page = (of: Plan): string =>
      siteText(sited(of), [], { together: null, living: null }, { plan: of, units: 'metric', columns: 90 });
    expect(page(plan)).toMatch(/flat roof or a\s+balcony nothing/);
    expect(page(on(plan, { soil: 'garden' }))).not.toMatch(/waterproof/);
  });

  // UC IPM on sunburn of apples, from memory: leaves shade fruit; whoever builds: nobody sets up posts over 3 m.
  test('an old apple tree 4.2 m tall: its leaves, then a net by those who net orchards, never a frame', () => {
    const old: Feature = {
      id: 'apple',
      kind: 'tree',
      at: [3, 3],
      height: 4.2,
      crownWidth: 3,
      crownBase: 1,
      openness: 0.2,
      plant: 'apple',
      planted: '2010',
    };
    const [load] = valueOf(plantLoadsOf(yard([old]), { period: { kind: 'heatwave' } }));
    expect(load.verdict).toBe('will burn');
    expect(load.sentence).toMatch(
      /Leave every leaf over the fruit\. Use a net, put up by those who net orchards, that/,
    );
    const step = valueOf(nextStepOf(yard([old]), { plant: 'apple', answer: 'explains' }));
    expect(step.sentence).toMatch(/Then a net, put up by those who net orchards/);
    const young = yard([plant('apple', { height: 1.6 })]);
    expect(valueOf(plantLoadsOf(young, { period: { kind: 'heatwave' } }))[0].sentence).toMatch(/Use cloth that stops/);
  });

  // What is reckoned without something says so where it is told; on bare ground nothing is said of walls.
  test('peppers in a white court: their fruit is told without what the walls throw on it, and it says so', () => {
    const saidOf = (kind: string, ...features: Feature[]): string =>
      valueOf(plantLoadsOf(yard([...features, plant(kind, { height: 0.8 })]), { period: { kind: 'heatwave' } }))[0]
        .sentence;
    const said = (...features: Feature[]): string => saidOf('pepper', ...features);
    expect(saidOf('chile', WHITE)).toMatch(/, small as it is rather less, what walls throw on it not counted, on the/);
    expect(said(WHITE)).toMatch(/bare fruit’s skin about .*, what walls throw on it not counted, on the heatwave day/);
    expect(said()).not.toMatch(/walls/);
  });

  // Common sense: nobody carries a pot to where no one can stand to water it.
  test('a slot between two walls: too narrow for the pot, or too deep to reach', () => {
    const lemon = plant('lemon', { container: true, at: [1, 1], pot: { width: 0.4, height: 0.35 } });
    const slot = (width: number) => {
      const [south, north] = [3 - width / 2, 3 + width / 2];
      return potGround(yard([lane('south', south - 0.05), lane('north', north + 0.05), lemon]), lemon).reasonAt([
        4.5, 3,
      ]);
    };
    expect(slot(0.35)).toMatch(/would stand in/);
    expect(slot(0.6)).toBe('nobody could reach it');
    expect(slot(2)).toBeNull();
  });

  // One unit for one reader.
  test('a roof over 108 ft² is told so where feet are shown', () => {
    const large = { kind: 'roof', length: 4, width: 4, height: 1.8, drops: [], features: [] } as const;
    expect(titleOf({ ...large, cautions: ['large', 'low'] }, 'imperial')).toMatch(
      /over 108 ft²: ask an engineer first/,
    );
    expect(titleOf({ ...large, cautions: ['large', 'low'] }, 'metric')).toMatch(/over 10 m²: ask an engineer first/);
  });
});

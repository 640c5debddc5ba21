import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type HeatDay, heatDayOf } from '../../../../engine/load/leaf/heat-day.ts';
import { surfaceTemperature } from '../../../../engine/load/leaf/leaf.ts';
import {
  differenceSpread,
  type LeafCase,
  SPREAD_CAUSES,
  spreadOf,
  spreadOn,
  spreadParts,
} from '../../../../engine/load/leaf/spread.ts';
import type { Surroundings } from '../../../../engine/load/leaf/surroundings.ts';
import { limitOf, limitSpread } from '../../../../engine/load/verdict/limit.ts';
import { CATALOGUE, plantRowOf } from '../../../../engine/plan/catalogue/plants.ts';
import type { Plant, PlantRow, Shelter } from '../../../../engine/plan/types.ts';
import { buildScene } from '../../../../engine/scene/build.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../yard-plan.ts';

const AROUND: Surroundings = { sky: 1, groundRise: 18, walls: null };

function dayIn(shelter: Shelter): HeatDay {
  const plan = yardPlan();
  const sheltered = { ...plan, site: { ...plan.site, shelter } };
  return valueOf(heatDayOf(sheltered, buildScene(sheltered), { kind: 'heatwave' }));
}
const DAY = dayIn('sheltered');
const NOON = Math.floor(DAY.samples.count / 2);

const rowOf = (id: string): PlantRow => {
  const row = plantRowOf(yardPlan(), id);
  if (!row) throw new Error(id);
  return row;
};
const caseOf = (changes: Partial<LeafCase> = {}): LeafCase => ({
  moment: DAY.moments[NOON],
  sample: NOON,
  shelter: 'sheltered',
  row: rowOf('lemon'),
  watering: 'thirsty',
  share: 1,
  around: AROUND,
  ...changes,
});
const partsOf = (leaf: LeafCase) => {
  const { moment, row, watering, share, around, sample } = leaf;
  return spreadParts(leaf, surfaceTemperature(moment, row, watering, share, around, undefined, sample));
};

describe('how far a leaf may be off', () => {
  it('the root of its parts’ squares is no less than its largest part and no more than their sum', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...CATALOGUE),
        fc.constantFrom('watered' as const, 'thirsty' as const),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.nat({ max: DAY.samples.count - 1 }),
        (row, watering, share, sample) => {
          const parts = partsOf(caseOf({ row, watering, share, sample, moment: DAY.moments[sample] }));
          const each = SPREAD_CAUSES.map((cause) => parts[cause]);
          for (const part of each) expect(part).toBeGreaterThanOrEqual(0);
          expect(spreadOf(parts)).toBeGreaterThanOrEqual(Math.max(...each));
          expect(spreadOf(parts)).toBeLessThanOrEqual(each.reduce((sum, part) => sum + part, 0) + 1e-9);
          // A small fruit's rise may be half an apple's.
          expect(spreadOf({ ...parts, width: row.limitOf === 'fruit' ? 0 : parts.width })).toBeLessThan(8);
        },
      ),
      { numRuns: 200, seed: 5 },
    );
  });

  it('with water the pores are most of it, without water the wind', () => {
    const watered = partsOf(caseOf({ watering: 'watered' }));
    const thirsty = partsOf(caseOf());
    expect(watered.stomata).toBe(Math.max(...SPREAD_CAUSES.map((cause) => watered[cause])));
    expect(thirsty.wind).toBeGreaterThan(thirsty.stomata);
  });

  it('narrow leaves are known better than wide ones', () => {
    const widths = [0.01, 0.05, 0.1, 0.25].map((leafWidth) => {
      const parts = partsOf(caseOf({ row: { ...rowOf('lemon'), leafWidth } }));
      return spreadOf(parts);
    });
    expect(widths).toEqual(widths.toSorted((a, b) => a - b));
  });

  it('one class of shelter more or less is a step of its own; the ground a third of its rise', () => {
    for (const shelter of ['open', 'sheltered', 'court'] as const) {
      const day = dayIn(shelter);
      const { wind } = partsOf(caseOf({ shelter, moment: day.moments[NOON] }));
      expect(wind).toBeGreaterThan(0.3);
      expect(wind).toBeLessThan(3);
    }
    expect(partsOf(caseOf({ around: { ...AROUND, groundRise: 0 } })).ground).toBe(0);
    expect(partsOf(caseOf({ around: { ...AROUND, groundRise: 36 } })).ground).toBeGreaterThan(partsOf(caseOf()).ground);
  });

  it('walls add their own where they are in view', () => {
    const flat = (value: number) => new Float64Array(DAY.samples.count).fill(value);
    const walls = { sky: 0.3, ground: 0.3, light: flat(150), above: flat(180), below: flat(180) };
    expect(partsOf(caseOf()).walls).toBe(0);
    expect(partsOf(caseOf({ around: { ...AROUND, walls } })).walls).toBeGreaterThan(0.2);
  });

  it('a fruit’s grows with its rise, 3 K of 12, and the wind', () => {
    const parts = partsOf(caseOf({ row: rowOf('apple') }));
    const { moment, around } = caseOf();
    const rise = surfaceTemperature(moment, rowOf('apple'), 'thirsty', 1, around) - moment.air;
    expect(parts.itself).toBeCloseTo(Math.max(1.5, rise / 4), 9);
    expect(parts.stomata + parts.ground + parts.width + parts.light).toBe(0);
    expect(parts.wind).toBeGreaterThan(0);
  });

  it('a fruit unlike an apple is known the less, the smaller it is; never by more than its rise', () => {
    const widths = [0.075, 0.05, 0.025, 0.015, 0.01].map((fruitWidth) => ({ ...rowOf('apple'), fruitWidth }));
    const parts = widths.map((row) => partsOf(caseOf({ row })));
    const byWidth = parts.map(({ width }) => width);
    expect(byWidth[0]).toBe(0);
    expect(byWidth).toEqual(byWidth.toSorted((a, b) => a - b));
    const { moment, around } = caseOf();
    const rise = surfaceTemperature(moment, rowOf('apple'), 'thirsty', 1, around) - moment.air;
    for (const width of byWidth) expect(width).toBeLessThan(rise);
    const shade = { share: 0.5, around: { ...AROUND, sky: 0.5 } };
    const [apple, , , grape] = widths.map((row) => differenceSpread(caseOf({ row }), caseOf({ row, ...shade })));
    expect(grape).toBeGreaterThan(apple);
  });

  it('on a day without sun a leaf is still no better known than itself', () => {
    expect(spreadOn(DAY, -1, rowOf('lemon'), 'thirsty', new Float64Array(0), AROUND)).toBe(1.5);
  });
});

describe('how far a difference may be off', () => {
  const shaded = caseOf({ share: 0.5, around: { ...AROUND, sky: 0.5 } });

  it('nothing against nothing is off by nothing, and a cloth by less than the leaf under it', () => {
    expect(differenceSpread(caseOf(), caseOf())).toBe(0);
    const parts = partsOf(caseOf());
    expect(differenceSpread(caseOf(), shaded)).toBeLessThan(spreadOf(parts));
    expect(differenceSpread(caseOf(), shaded)).toBeGreaterThan(0.2);
  });

  it('what the cloth itself may be off comes on top', () => {
    const alone = differenceSpread(caseOf(), shaded);
    expect(differenceSpread(caseOf(), shaded, [0.9])).toBeCloseTo(Math.hypot(alone, 0.9), 9);
  });
});

describe('how far a limit may be off', () => {
  const plant = { id: 'p', kind: 'plant', at: [1, 1], height: 1, spread: 1, plant: 'lemon' } as const;

  it('1 K where it was measured on that plant, 2 K where it is its kind’s, between them where it was told', () => {
    expect(limitSpread({ ...rowOf('apple'), limitBasis: 'measured' })).toBe(1);
    expect(limitSpread({ ...rowOf('apple'), limitBasis: 'class default' })).toBe(2);
    expect(limitSpread({ ...rowOf('apple'), limitBasis: undefined })).toBe(1.5);
  });

  it('1 K more of a plant that is not hardened', () => {
    const moved: Plant = { ...plant, planted: '2026-06-15' };
    const known = limitOf(yardPlan(), plant, rowOf('lemon'), '2026-06-21').spread;
    expect(limitOf(yardPlan(), moved, rowOf('lemon'), '2026-06-21').spread).toBeCloseTo(Math.hypot(known, 1), 9);
  });
});

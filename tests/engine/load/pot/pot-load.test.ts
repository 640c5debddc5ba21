import { describe, expect, it } from 'vitest';
import { cheaperFirst } from '../../../../engine/advice/cheaper-first/cheaper-first.ts';
import { placeOf } from '../../../../engine/advice/place/place.ts';
import { whyBurnt } from '../../../../engine/advice/why/why.ts';
import { plantLoadsOf } from '../../../../engine/load/load-of.ts';
import type { PlantLoad, PotLoad } from '../../../../engine/load/types.ts';
import type { Feature, Plan, Plant } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../yard-plan.ts';

/** A lone plant with its leaves well above a black pot. */
const POT: Plant = {
  id: 'pot',
  kind: 'plant',
  name: 'Lemon',
  at: [6, 4],
  height: 1.6,
  spread: 0.5,
  foliageFrom: 1,
  plant: 'lemon',
  container: true,
  pot: { width: 0.4, height: 0.35, colour: 'dark' },
};
/** Cloth above and all round that lets nothing through. */
const TENT: Feature = {
  id: 'tent',
  kind: 'canopy',
  center: [6, 4],
  length: 8,
  width: 8,
  height: 2.2,
  density: 1,
  drops: (['front', 'back', 'left', 'right'] as const).map((side) => ({ side, depth: 2.2, density: 1 })),
};

function loadOf(changes: Partial<Plant> = {}, others: readonly Feature[] = [], plan: Partial<Plan> = {}): PlantLoad {
  return valueOf(plantLoadsOf(yardPlan([{ ...POT, ...changes }, ...others], plan)))[0];
}

function potOf(...args: Parameters<typeof loadOf>): PotLoad {
  const { pot } = loadOf(...args);
  if (pot === null) throw new Error('It stands in a pot.');
  return pot;
}

describe('roots in a pot', () => {
  const lone = potOf();
  const painted = (colour: string) => potOf({ pot: { ...POT.pot, colour } }).roots.warmest;

  it('of a black one alone in a 46 °C sun cook on its west side, late in the afternoon', () => {
    expect(lone.roots.verdict).toBe('cooking');
    expect([225, 270]).toContain(lone.roots.side);
    expect(lone.roots.when >= '16:00' && lone.roots.when <= '19:00').toBe(true);
    expect(lone.roots.spread).toBeGreaterThan(3.5);
  });

  it('are the cooler the brighter the pot; one of a colour that nobody said is taken for terracotta', () => {
    const warmest = ['dark', 'terracotta', 'light', 'white'].map(painted);
    expect(warmest).toEqual(warmest.toSorted((a, b) => b - a));
    expect(new Set(warmest).size).toBe(4);
    expect(painted('wrapped')).toBe(painted('white'));
    expect(potOf({ pot: {} }).roots.warmest).toBe(painted('terracotta'));
  });

  it('are helped by as much as the pot so changed is cooler', () => {
    expect(lone.roots.help?.id).toBe('white');
    expect(lone.roots.help?.cooler).toBeCloseTo(lone.roots.warmest - painted('white'), 9);
  });

  it('in a tent that stops the sun stay below the day’s highest air', () => {
    const { roots } = potOf({}, [TENT]);
    expect(roots.warmest).toBeLessThan(46);
    expect(lone.roots.warmest).toBeGreaterThan(roots.warmest + 10);
  });

  it('are shaded by a crown that hangs round the pot', () => {
    expect(potOf({ spread: 1.6, foliageFrom: 0.36 }).roots.warmest).toBeLessThan(lone.roots.warmest - 3);
  });

  it('are no cooler before a white wall that the sun is on', () => {
    const wall: Feature = {
      id: 'wall',
      kind: 'wall',
      path: [
        [4, 4.5],
        [8, 4.5],
      ],
      height: 2,
      thickness: 0.2,
      colour: 'white',
    };
    const black: Feature = { ...wall, colour: 'dark' };
    expect(potOf({}, [wall]).roots.warmest).toBeGreaterThan(potOf({}, [black]).roots.warmest + 0.2);
  });

  it('do not care which way the plan lies', () => {
    const { site } = yardPlan();
    const turned = potOf({}, [], { site: { ...site, upBearing: 90 } }).roots;
    expect(turned.warmest).toBeCloseTo(lone.roots.warmest, 6);
    expect(turned.side).toBe(lone.roots.side);
  });

  it('of a pot narrower or wider than a pot can be reckoned are told all the same', () => {
    for (const width of [0.02, 5])
      expect(potOf({ pot: { ...POT.pot, width } }).roots.warmest).toBeGreaterThan(lone.roots.warmest - 5);
  });
});

describe('the one number for them', () => {
  const open = yardPlan([POT]);
  const load = valueOf(plantLoadsOf(open))[0];
  const about = `about ${load.pot?.roots.warmest.toFixed(0)} °C`;

  it('stands in the plant’s sentence where the roots get hot, with what to do', () => {
    expect(load.sentence).toContain(`In the pot its roots reach ${about}`);
    expect(load.sentence).toContain('wrap the pot in white');
  });

  it('is not told where they are fine, nor of a plant in the ground', () => {
    const cool = yardPlan([POT], { climate: { ...open.climate, heatwaveHigh: 24 } });
    const white = { ...cool, features: [{ ...POT, pot: { colour: 'white' } }] };
    expect(valueOf(plantLoadsOf(white))[0].sentence).not.toContain('roots');
    expect(valueOf(plantLoadsOf(white))[0].pot?.roots).toMatchObject({ verdict: 'fine', help: null });
    expect(loadOf({ container: false }).sentence).not.toContain('roots');
  });

  it('is a place’s, the question after a burn and the cure’s', () => {
    const { spots } = valueOf(placeOf(open, { plant: 'pot' }));
    expect(spots.find(({ stay }) => stay)?.sentence).toContain(
      `roots in the pot ${about.replace('about ', '')}: they die`,
    );
    const why = valueOf(whyBurnt(open, { plant: 'pot', side: 270, part: 'pot', date: '2026-06-21' }));
    expect(why.rivals.find(({ id }) => id === 'roots')?.question).toContain(about);
    expect(why.sentence).toContain(about);
    const wrap = valueOf(cheaperFirst(open)).steps.find(({ id }) => id === 'wrap');
    expect(wrap?.sentence).toContain(`roots ${about}`);
  });

  it('every help in the list of cures cools; what cannot be done with one pot is not told', () => {
    const wrap = valueOf(cheaperFirst(open)).steps.find(({ id }) => id === 'wrap');
    for (const { cooler } of wrap?.roots?.[0].helps ?? []) expect(cooler).toBeGreaterThan(1);
    expect(wrap?.roots?.[0].helps.map(({ id }) => id)).toEqual(['white', 'double', 'group', 'shade']);
    expect(wrap?.sentence).not.toContain('other pots');
  });

  it('a plant in the ground is not asked about its pot', () => {
    const inGround = { ...open, features: [{ ...POT, container: false }] };
    const { rivals, roots } = valueOf(whyBurnt(inGround, { plant: 'pot', side: 270 }));
    expect(rivals.map(({ id }) => id)).not.toContain('roots');
    expect(roots).toBeNull();
  });
});

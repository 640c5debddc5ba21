import { describe, expect, test } from 'vitest';
import { built, roof, screen, yardWith } from '../yard.ts';

describe('the sheet', () => {
  test('plans each weight from the posts’ own share: a middle post holds four times a corner’s', () => {
    const { anchors } = built({
      ...roof,
      length: 4,
      width: 4,
      frame: { tube: 'scaffold-48', maxBay: 2, soil: 'garden', gust: 25 },
    });
    const weight = (role: string): number =>
      anchors.posts.find((post) => post.post === `${role} post`)?.ballast.blocked ?? 0;
    expect(weight('inner') / weight('corner')).toBeCloseTo(4, 9);
    expect(weight('edge') / weight('corner')).toBeCloseTo(2, 9);
  });

  test('says that the anchors are not worked out until the ground is known, and leaves them out of the cost', () => {
    const { anchors, cost, steps } = built({ ...roof, frame: {} });
    expect(anchors.count).toBe(0);
    expect(anchors.sentences.join(' ')).toContain('not worked out');
    expect(cost.missing).toContain('anchors (the ground is not known)');
    expect(steps.some((step) => step.id === 'ground')).toBe(true);
  });

  test('on paving it counts cans of water and digs nothing', () => {
    const { anchors, steps, cost } = built({ ...roof, frame: { soil: 'paving', anchor: 'footing' } });
    // Whoever says what a floor bears asks for the whole of it.
    const all = anchors.posts.reduce((sum, { hold, count }) => sum + hold * count, 0);
    expect(anchors.sentences.join(' ')).toContain(
      `In all ${all} kg stand on the floor: a roof or balcony may not bear`,
    );
    expect(anchors.concrete).toBeNull();
    expect(anchors.sentences.join(' ')).toContain(`${anchors.perPost} litres of water are needed`);
    expect(cost.items.find((item) => item.id === 'water-cans')?.count).toBe(
      anchors.posts.reduce((sum, { hold, count }) => sum + count * Math.ceil(hold / 25), 0),
    );
    expect(steps.some((step) => step.id === 'dig')).toBe(false);
  });

  test('a footing weighs at least what its post must be held down with', () => {
    for (const soil of ['garden', 'hard', 'loose', 'wet']) {
      for (const gust of [12, 24, 40]) {
        const { anchors } = built({ ...roof, frame: { soil, gust, tube: 'scaffold-48', maxBay: 1.5 } });
        expect(anchors.posts.map(({ post }) => post)).toEqual(['corner post', 'edge post', 'inner post']);
        for (const { hole, hold } of anchors.posts)
          expect((hole?.volume ?? 0) * 2350).toBeGreaterThanOrEqual(hold - 1e-6);
        const volume = anchors.posts.reduce((sum, { hole, count }) => sum + (hole?.volume ?? 0) * count, 0);
        expect(anchors.concrete?.volume).toBeCloseTo(volume, 12);
      }
    }
  });

  test('a hole is as large as its own post needs, in steps that a spade digs: the corners’ are not the middle’s', () => {
    const { anchors, steps, sockets, pieces } = built({
      ...roof,
      length: 4,
      width: 4,
      frame: { tube: 'scaffold-48', maxBay: 2, soil: 'garden', gust: 60, anchor: 'sunk' },
    });
    const [corner, edge, inner] = anchors.posts.map(({ hole }) => hole?.volume ?? 0);
    expect(corner).toBeLessThan(edge);
    expect(edge).toBeLessThan(inner);
    for (const { hole } of anchors.posts)
      for (const metres of [hole?.diameter ?? 0, hole?.depth ?? 0])
        expect(metres / 0.05).toBeCloseTo(Math.round(metres / 0.05), 9);
    expect(steps.find(({ id }) => id === 'dig')?.text).toMatch(/P1, P3, P7 and P9 \d+ cm across and \d+ cm deep; P2,/);
    // Each post is as long as its own hole asks for.
    const depths = anchors.posts.map(({ hole }) => (hole?.depth ?? 0) - 0.05);
    expect(pieces.filter(({ kind }) => kind === 'post').map(({ length }) => length)).toEqual(
      [...new Set(depths)].map((depth) => expect.closeTo(roof.height + depth, 9)),
    );
    expect(sockets.holds).toBe(true);
  });

  test('concrete is counted in the bags that shops of the place have, and fills the holes', () => {
    for (const [timeZone, bag, name] of [
      ['Europe/Madrid', 25, 'bags of 25 kg (55 lb)'],
      ['America/Phoenix', 60 * 0.45359237, 'bags of 60 lb (27 kg)'],
    ] as const) {
      const { anchors, cost } = built(
        { ...roof, frame: { soil: 'garden', gust: 30 } },
        { site: { ...yardWith([]).site, timeZone } },
      );
      expect(cost.items.find(({ id }) => id === 'concrete')).toMatchObject({ count: anchors.concrete?.bags });
      expect(cost.items.find(({ id }) => id === 'concrete')?.name).toContain(name);
      const { volume = 0, bags = 0 } = anchors.concrete ?? {};
      // A bag of 60 lb yields 0.45 ft³ set (makers' tables, from memory), a bag of 25 kg as much for its weight.
      const yields = (0.45 * 0.3048 ** 3 * bag) / (60 * 0.45359237);
      // A hole is dug a little larger than drawn, in feet to whole inches.
      expect(bags).toBeGreaterThanOrEqual((1.02 * volume) / yields);
      expect(bags - 1).toBeLessThan((1.1 * volume) / yields);
    }
  });

  test('a screen whose cloth reaches the ground stands on feet all the same: every hole has its two bolts', () => {
    const { cost, steps, fittings, anchors } = built({
      ...screen,
      bottom: 0,
      frame: { soil: 'garden', anchor: 'footing' },
    });
    const posts = anchors.posts.reduce((sum, { count }) => sum + count, 0);
    expect(steps.some(({ id }) => id === 'bolt')).toBe(true);
    // A hole under every post and every stay.
    expect(cost.items.find(({ id }) => id === 'hold-downs')?.need).toBe(2 * 2 * posts);
    expect(fittings.filter(({ joint }) => joint === 'foot').reduce((sum, { count }) => sum + count, 0)).toBe(2 * posts);
  });

  test('says by what its posts are held: weight, depth, or the least that anything on feet wants', () => {
    const said = (thing: typeof roof | typeof screen): string => built(thing).anchors.sentences.join(' ');
    expect(said({ ...roof, frame: { soil: 'garden', gust: 30 } })).toMatch(/That is 1\.5 times the pull/);
    const calm = said({ ...roof, frame: { soil: 'garden', gust: 8 } });
    expect(calm).toMatch(/held down with 20 kg, .* That is the least for anything on feet; the pull asks for less\./);
    expect(calm).not.toContain('times the pull');
    expect(said({ ...roof, frame: { soil: 'garden' } })).toContain('Only its weight is counted');
    expect(said(screen)).toContain('held by their depth, not by weight');
    expect(said(screen)).not.toContain('Only its weight is counted');
  });

  test('where more stakes are wanted than anyone drives, it counts footings and lists no stake', () => {
    const held = (gust: number) => built({ ...roof, frame: { soil: 'loose', anchor: 'stakes', gust } });
    const few = held(10);
    expect(few.anchors.kind).toBe('stakes');
    expect(few.cost.items.map(({ id }) => id)).toEqual(expect.arrayContaining(['stakes', 'strap-clamps', 'straps']));
    const many = held(40);
    expect(many.anchors.kind).toBe('footing');
    expect(many.anchors.sentences.join(' ')).toMatch(/It would take \d+ stakes at one post, more than anyone drives/);
    expect(many.cost.items.map(({ id }) => id)).not.toContain('stakes');
    expect(many.cost.items.map(({ id }) => id)).toContain('concrete');
    expect(many.cautions.map(({ id }) => id)).toContain('cement');
    expect(few.cautions.map(({ id }) => id)).not.toContain('cement');
  });

  test('more weights than stand round a post are called so before anything is bought; fewer are not', () => {
    const light = built({ ...roof, frame: { soil: 'paving', gust: 12 } });
    const heavy = built({ ...roof, length: 4, width: 4, frame: { soil: 'paving', gust: 35 } });
    for (const { anchors, notes } of [light, heavy]) {
      const most = Math.max(...anchors.posts.map(({ each }) => each));
      expect(notes.some((note) => note.includes(`${most} at `) && note.includes('more than stand round a post'))).toBe(
        most > 6,
      );
    }
    expect(Math.max(...light.anchors.posts.map(({ each }) => each))).toBeLessThanOrEqual(6);
    expect(heavy.notes.join(' ')).toContain('bolted to the ground by somebody licensed');
  });
});

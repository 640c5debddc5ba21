import { expect, test } from 'vitest';
import { leafTables } from '../../../../engine/advice/site/scoring/leaf-tables.ts';
import { bareHarm } from '../../../../engine/advice/site/search/bare-harm.ts';
import { harmOfPair, harmPairsOf } from '../../../../engine/advice/site/search/harm-pairs.ts';
import { mostHidden, responseOf, shadeAnswers } from '../../../../engine/advice/site/search/responses.ts';
import { targetsOf } from '../../../../engine/advice/site/search/targets.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import { valueOf } from '../../../parts/outcome.ts';

test.each(['courtyard', 'lane'] as const)(
  'what no cloth meets counts as much by the sums of a view as pair by pair, whatever of the sky is hidden: %s',
  (name) => {
    const targets = valueOf(targetsOf(demoPlan(name)));
    const leaves = leafTables(targets);
    const most = mostHidden(0.7);
    const pairs = harmPairsOf(targets, leaves, most);
    const { bare, terms } = responseOf(pairs, shadeAnswers(targets, pairs, leaves), 0.7);
    let apart = 0;
    let fruit = 0;
    for (let view = 0; view < pairs.views.length; view++) {
      if (bare.isFruit[view] === 1) fruit++;
      apart += bare.firstOf[view + 1] - bare.firstOf[view];
      for (const hidden of [0, 0.03, 0.4, most]) {
        let plain = 0;
        for (let p = pairs.firstOf[view]; p < pairs.firstOf[view + 1]; p++)
          plain += harmOfPair(pairs, terms, p, 0, hidden);
        expect(bareHarm(bare, view, hidden), `view ${view}, ${hidden}`).toBeCloseTo(plain, 9);
      }
    }
    // Some stop being harmful on the way, most do not.
    expect(apart).toBeGreaterThan(0);
    expect(apart).toBeLessThan(pairs.count / 2);
    // Tomatoes are held to what their fruit bears; of the courtyard's plants none is.
    expect(fruit > 0).toBe(name === 'lane');
    expect(fruit).toBeLessThan(pairs.views.length);
  },
);

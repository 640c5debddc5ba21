import { describe, expect, it } from 'vitest';
import { postsInTheWay } from '../../../engine/frame/sheet.ts';
import { DEMO_NAMES, demoPlan, isDemoName } from '../../../engine/plan/demos/index.ts';
import { parsePlan } from '../../../engine/plan/file/parse.ts';
import { planText } from '../../../engine/plan/file/serialize.ts';
import { withOptions } from '../../../engine/plan/yards/options.ts';

describe('the demo yards', () => {
  it('are two, the courtyard first', () => {
    expect(DEMO_NAMES).toEqual(['courtyard', 'lane']);
    expect(isDemoName('lane')).toBe(true);
    expect(isDemoName('toString')).toBe(false);
  });

  it.each(DEMO_NAMES)('%s: saved and opened again it is the same, without a problem or a warning', (name) => {
    expect(parsePlan(planText(demoPlan(name)))).toEqual({ ok: true, plan: demoPlan(name), warnings: [] });
  });

  it.each(DEMO_NAMES)('%s: every option can be tried alone, and all of them together', (name) => {
    const ids = (demoPlan(name).options ?? []).map(({ id }) => id);
    expect(ids).toEqual(['A', 'B', 'C']);
    for (const id of ids) expect(withOptions(demoPlan(name), [id]).ok).toBe(true);
    expect(withOptions(demoPlan(name), ids).ok).toBe(true);
  });

  it.each(DEMO_NAMES)('%s: no post of an option stands in a door, a bed or a pot', (name) => {
    for (const { id, adds = [] } of demoPlan(name).options ?? []) {
      const changed = withOptions(demoPlan(name), [id]);
      if (!changed.ok) throw new Error(id);
      for (const thing of adds)
        if (thing.kind === 'canopy' || thing.kind === 'screen')
          expect(postsInTheWay(thing, changed.plan), `${id} ${thing.id}`).toEqual([]);
    }
  });

  it.each(DEMO_NAMES)('%s: something burnt, and it is still drawn', (name) => {
    const plan = demoPlan(name);
    const burnt = (plan.journal ?? []).filter(({ what }) => what === 'damage');
    expect(burnt.length).toBeGreaterThan(0);
    for (const { feature } of burnt) expect(plan.features.some(({ id }) => id === feature)).toBe(true);
  });
});

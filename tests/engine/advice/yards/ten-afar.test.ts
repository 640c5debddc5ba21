/** Ten yards of other places, the advice that each calls for written down before the program was asked. */

import { describe, expect, test } from 'vitest';
import { cheaperFirst } from '../../../../engine/advice/cheaper-first/cheaper-first.ts';
import { adviceSentence } from '../../../../engine/advice/site/advice-words.ts';
import { siteOf } from '../../../../engine/advice/site/site.ts';
import type { SiteRequest, SiteResult } from '../../../../engine/advice/site/types.ts';
import { whyBurnt } from '../../../../engine/advice/why/why.ts';
import { cheaperHeadline } from '../../../../engine/advice/words/cure-headlines.ts';
import { siteText } from '../../../../engine/output/text/site-text.ts';
import type { Plan } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../load/yard-plan.ts';
import { bed, plant, yard } from './table.ts';

const SMALL: SiteRequest = { kinds: ['roof', 'screen'], sizes: [{ length: 2, width: 2 }], step: 0.5, turnStep: 45 };
const sited = (plan: Plan, request: SiteRequest = {}): SiteResult => valueOf(siteOf(plan, { ...SMALL, ...request }));
const told = (plan: Plan): string => adviceSentence(plan, sited(plan), valueOf(cheaperFirst(plan)).steps);
const on = (plan: Plan, site: Partial<Plan['site']>): Plan => ({ ...plan, site: { ...plan.site, ...site } });
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
});

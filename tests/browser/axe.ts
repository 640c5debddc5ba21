import axe from 'axe-core';
import type { Page } from 'playwright-core';

/** What of the page breaks WCAG 2.2 A or AA, one line a rule. */
export async function faultsOf(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { violations } = await (window as unknown as { axe: typeof axe }).axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] });
    return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  });
}

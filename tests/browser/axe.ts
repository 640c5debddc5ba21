import axe from 'axe-core';
import type { Page } from 'playwright-core';

const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/**
 * What of the page breaks WCAG 2.2 A or AA, one line a rule.
 * @param within Only this part of the page, where the rest was looked at before.
 */
export async function faultsOf(page: Page, within?: string): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source);
  return page.evaluate(
    async ({ part, rules }) => {
      const { violations } = await (window as unknown as { axe: typeof axe }).axe.run(part ?? document, {
        runOnly: rules,
      });
      return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
    },
    { part: within, rules: within === undefined ? WCAG : [...WCAG, 'best-practice'] },
  );
}

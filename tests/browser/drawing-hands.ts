import { text } from 'node:stream/consumers';
import type { Locator, Page } from 'playwright-core';
import { parsePlan } from '../../engine/index.ts';
import type { Plan, PlanPoint } from '../../engine/index.ts';

/** Moves that the tests of the drawing share. Places are plan metres on the ground of a new yard, 10 by 8 m. */

/** Ground of a new yard. [m] */
const GROUND = { across: 10, up: 8 };

/**
 * Where on the screen a point of a new yard lies, reckoned from the inked edge of its ground once the page has settled.
 */
export async function onScreen(page: Page, [x, y]: PlanPoint): Promise<{ x: number; y: number }> {
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  const edge = await page.locator('path.boundary').boundingBox();
  if (!edge) throw new Error('The yard is not drawn.');
  return { x: edge.x + (edge.width * x) / GROUND.across, y: edge.y + edge.height * (1 - y / GROUND.up) };
}

/** The text of the file that "Save a file copy" hands over. */
export async function savedFile(page: Page): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
  return text(await download.createReadStream());
}

export async function planOf(page: Page): Promise<Plan> {
  const read = parsePlan(await savedFile(page));
  if (!read.ok) throw new Error(read.problems[0]?.message);
  return read.plan;
}

export function listOf(page: Page): Locator {
  return page.getByRole('region', { name: 'Everything on the plan' });
}

export function drawing(page: Page): Locator {
  return page.getByRole('region', { name: 'Drawing', exact: true });
}

/** Opens an empty yard in the place of the open one, at the drawing stage. */
export async function emptyYard(
  page: Page,
  press: (button: Locator) => Promise<void> = (button) => button.click(),
): Promise<void> {
  await press(page.getByRole('button', { name: /Yard and files/ }));
  await press(page.getByRole('button', { name: 'An empty yard at this place' }));
  await page
    .getByRole('button', { name: /New yard/ })
    .first()
    .waitFor();
  await press(page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: /Draw/ }));
  await listOf(page).waitFor({ state: 'attached' });
}

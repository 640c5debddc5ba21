import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';

/** So many presses of Tab find whatever a page has. */
const MOST_TABS = 160;

/** Tab is held down for at most so many steps before it is looked where it led. */
const AT_A_TIME = 16;

/**
 * Goes to a thing by Tab alone, as somebody without a pointer does; what cannot be reached so is not found. What is
 * looked for takes no more of them, so that Tab may be held down: asking after each step takes ten times as long.
 */
export async function tabTo(page: Page, target: Locator): Promise<void> {
  await target.waitFor({ state: 'attached' });
  await target.evaluate((element) => {
    const stay = (event: KeyboardEvent): void => {
      if (event.key === 'Tab' && document.activeElement === element) event.preventDefault();
    };
    addEventListener('keydown', stay, true);
    element.addEventListener('tabbed', () => removeEventListener('keydown', stay, true), { once: true });
  });
  const isReached = (): Promise<boolean> => target.evaluate((element) => element === document.activeElement);
  // Mostly it is near.
  for (let presses = 0, steps = 2; !(await isReached()); presses += steps, steps = Math.min(AT_A_TIME, 2 * steps)) {
    if (presses >= MOST_TABS) throw new Error(`Tab does not lead to ${target}.`);
    await Promise.all(Array.from({ length: steps }, () => page.keyboard.down('Tab')));
    await page.keyboard.up('Tab');
  }
  await target.evaluate((element) => element.dispatchEvent(new Event('tabbed')));
}

/** Goes to a button, a tab or a summary and presses it. */
export async function pressByKey(page: Page, target: Locator): Promise<void> {
  await tabTo(page, target);
  await page.keyboard.press('Enter');
}

/** Goes to a field and types over what is in it. */
export async function typeInto(page: Page, field: Locator, text: string): Promise<void> {
  await tabTo(page, field);
  await page.keyboard.press('Control+a');
  await page.keyboard.type(text);
}

/** Goes to a row of choices and on along it by arrows; a box of its own is ticked. */
export async function chooseByKey(page: Page, choice: Locator): Promise<void> {
  const name = await choice.getAttribute('name');
  const row = page.locator(`input[type=radio][name="${name}"]`);
  const taken = row.and(page.locator(':checked'));
  const isOneOfMany = (await choice.getAttribute('type')) === 'radio';
  // Tab leads to the one of the row that is taken, or to its first.
  await tabTo(page, !isOneOfMany ? choice : (await taken.count()) > 0 ? taken : row.first());
  if (!(await choice.isChecked())) await page.keyboard.press('Space');
  for (let presses = 0; presses < 12 && !(await choice.isChecked()); presses++) await page.keyboard.press('ArrowDown');
  expect(await choice.isChecked()).toBe(true);
}

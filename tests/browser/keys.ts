import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';

/** So many presses of Tab find whatever a page has. */
const MOST_TABS = 160;

/** Goes to a thing by Tab alone, as somebody without a pointer does; what cannot be reached so is not found. */
export async function tabTo(page: Page, target: Locator): Promise<void> {
  await target.waitFor({ state: 'attached' });
  for (let presses = 0; presses < MOST_TABS; presses++) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab does not lead to ${target}.`);
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

/** Goes to a row of choices and on along it by arrows. */
export async function chooseByKey(page: Page, choice: Locator): Promise<void> {
  const name = await choice.getAttribute('name');
  const inRow = (): Promise<boolean> =>
    page.evaluate((row) => (document.activeElement as HTMLInputElement | null)?.name === row, name);
  for (let presses = 0; presses < MOST_TABS && !(await inRow()); presses++) await page.keyboard.press('Tab');
  if (!(await choice.isChecked())) await page.keyboard.press('Space');
  for (let presses = 0; presses < 12 && !(await choice.isChecked()); presses++) await page.keyboard.press('ArrowDown');
  expect(await choice.isChecked()).toBe(true);
}

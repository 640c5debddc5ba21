import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { SIZES } from './harness.ts';
import { chooseByKey, pressByKey, tabTo, typeInto } from './keys.ts';

/** The ways somebody does something on the page: what is pressed, chosen and typed. */
export interface Hand {
  readonly size: keyof typeof SIZES;
  press(page: Page, button: Locator): Promise<void>;
  choose(page: Page, choice: Locator): Promise<void>;
  type(page: Page, field: Locator, text: string): Promise<void>;
  select(page: Page, field: Locator, option: RegExp): Promise<void>;
  /** @param date as "2026-07-20" */
  date(page: Page, field: Locator, date: string): Promise<void>;
  /** @param time as "09:05" */
  time(page: Page, field: Locator, time: string): Promise<void>;
  /** To one of the six stages, counted from 1. */
  go(page: Page, stage: number): Promise<void>;
}

const STAGES = [/Draw/, /Heat|heat/, /Place|Pots/, /Try/, /Build/, /Year|year/] as const;

const stageButton = (page: Page, stage: number): Locator =>
  page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: STAGES[stage - 1] });

export const POINTER: Hand = {
  size: 'laptop',
  press: (_, button) => button.click(),
  choose: (_, choice) => choice.check(),
  type: (_, field, text) => field.fill(text),
  select: async (_, field, option) => {
    const words = await field.locator('option').filter({ hasText: option }).first().textContent();
    await field.selectOption({ label: words ?? '' });
  },
  date: (_, field, date) => field.fill(date),
  time: (_, field, time) => field.fill(time),
  go: (page, stage) => stageButton(page, stage).click(),
};

export const TAPS: Hand = {
  ...POINTER,
  size: 'phone',
  press: (_, button) => button.tap(),
  go: (page, stage) => stageButton(page, stage).tap(),
};

export const KEYS: Hand = {
  size: 'laptop',
  press: pressByKey,
  choose: chooseByKey,
  type: typeInto,
  select: async (page, field, option) => {
    await tabTo(page, field);
    const chosen = (): Promise<string> =>
      field.evaluate((select: HTMLSelectElement) => select.selectedOptions[0].textContent);
    for (let presses = 0; presses < 12 && !option.test(await chosen()); presses++)
      await page.keyboard.press('ArrowDown');
    expect(await chosen()).toMatch(option);
  },
  date: async (page, field, date) => {
    await tabTo(page, field);
    // In the order of the browser's own language, which is American whatever the page's.
    const [year, month, day] = date.split('-');
    await page.keyboard.type(month + day + year);
    expect(await field.inputValue()).toBe(date);
  },
  time: async (page, field, time) => {
    await tabTo(page, field);
    const [hour, minute] = time.split(':');
    await page.keyboard.type(`${String(((Number(hour) + 11) % 12) + 1).padStart(2, '0')}${minute}`);
    await page.keyboard.type(Number(hour) < 12 ? 'AM' : 'PM');
    expect(await field.inputValue()).toBe(time);
  },
  go: (page, stage) => page.keyboard.press(`Alt+${stage}`),
};

/** What a browser's window for a hand is opened with. */
export function windowFor({ size }: Hand): {
  readonly viewport: { readonly width: number; readonly height: number };
  readonly hasTouch: boolean;
  readonly isMobile: boolean;
} {
  const isPhone = size === 'phone';
  return { viewport: SIZES[size], hasTouch: isPhone, isMobile: isPhone };
}

import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Hand } from './hands.ts';
import { actionsOf } from './harness.ts';

/** A picture of 2400 × 1500 pixels, as a camera would write it. */
export async function drawnJpeg(page: Page): Promise<Buffer> {
  const drawn = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    canvas.width = 2400;
    canvas.height = 1500;
    canvas.getContext('2d')?.fillRect(100, 100, 900, 700);
    return canvas.toDataURL('image/jpeg').split(',')[1];
  });
  return Buffer.from(drawn, 'base64');
}

/**
 * Scales the picture to trace by a known length, held against a second one that disagrees by 8 %; in so many actions at
 * most, from any stage.
 */
export async function scaleIt(page: Page, hand: Hand, most: number): Promise<void> {
  const before = await actionsOf(page);
  await hand.go(page, 1);
  await hand.press(page, page.getByRole('button', { name: 'How do I find this?' }));
  const topics = page.getByRole('navigation', { name: 'What to find out' });
  await hand.press(page, topics.getByRole('button', { name: 'A picture to trace' }));
  const found = page.getByRole('region', { name: 'Scale found' });
  await hand.type(page, page.getByLabel('First point', { exact: true }), '100 300');
  await hand.type(page, page.getByLabel('Second point', { exact: true }), '792 300');
  await hand.type(page, page.getByLabel('Length on the ground', { exact: true }), '12.4');
  // 12.4 m over 692 pixels: 17.92 mm each, 1600 of them 28.67 m.
  await found.getByText('17.9 mm a pixel, the picture 28.67 m wide').waitFor();
  await hand.type(page, page.getByLabel('First point of the check'), '100 100');
  await hand.type(page, page.getByLabel('Second point of the check'), '100 542');
  // 442 pixels are 7.920 m, 8 % more than 7.333 m.
  await hand.type(page, page.getByLabel('Its length on the ground'), '7.333');
  await found
    .getByText(/The second length is 8 % longer in the picture than you said: the picture leans or is stretched/)
    .waitFor();
  await hand.press(page, found.getByRole('button', { name: 'Scale the picture' }));
  expect((await actionsOf(page)) - before).toBeLessThanOrEqual(most);
}

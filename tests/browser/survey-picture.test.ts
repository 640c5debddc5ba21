import { expect, test } from 'vitest';
import { faultsOf } from './axe.ts';
import { onScreen, planOf } from './drawing-hands.ts';
import { KEYS, POINTER } from './hands.ts';
import { browserSession, openApp, saved } from './harness.ts';
import { drawnJpeg, scaleIt } from './picture-scale.ts';

const session = browserSession();

/**
 * Stands for what a camera writes beside a picture: a comment with a place in it, in a segment of its own (ITU-T T.81,
 * marker FFFE).
 */
const PLACE = 'GPS 37.8812 -4.7790';

test(
  'a picture loses what the camera wrote, is scaled by a known length, and a second one that disagrees by ' +
    '8 % is named',
  async () => {
    const context = await session.context();
    const { page, complaints } = await openApp(context, session.site.address);
    await page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: /Draw/ }).click();
    await page.getByRole('button', { name: 'How do I find this?' }).click();
    const topics = page.getByRole('navigation', { name: 'What to find out' });
    await topics.getByRole('button', { name: 'A picture to trace' }).click();
    const jpeg = await drawnJpeg(page);
    const comment = Buffer.concat([Buffer.from([0xff, 0xfe, 0, PLACE.length + 2]), Buffer.from(PLACE)]);
    const buffer = Buffer.concat([jpeg.subarray(0, 2), comment, jpeg.subarray(2)]);
    expect(buffer.includes(PLACE)).toBe(true);
    await page
      .getByLabel(/^(Choose a|Take another) picture/)
      .setInputFiles({ name: 'yard.jpg', mimeType: 'image/jpeg', buffer });
    await page.getByRole('img', { name: 'The picture under the drawing' }).waitFor();

    const found = page.getByRole('region', { name: 'Scale found' });
    const clear = page.getByRole('button', { name: 'Clear the points' });
    await scaleIt(page, KEYS, 16);
    await clear.click();
    await scaleIt(page, POINTER, 10);
    expect(await faultsOf(page)).toEqual([]);

    const { underlay } = (await planOf(page)).site;
    expect(underlay?.width).toBeCloseTo(28.67, 2);
    const kept = Buffer.from(underlay?.image.split(',')[1] ?? '', 'base64');
    expect(underlay?.image).toMatch(/^data:image\/jpeg;base64,/);
    expect(kept.includes('GPS')).toBe(false);
    expect(
      await page
        .getByRole('img', { name: 'The picture under the drawing' })
        .evaluate((image: HTMLImageElement) => image.naturalWidth),
    ).toBe(1600);
    await page.getByLabel('Second point', { exact: true }).fill('110 300');
    await found.getByText(/10 pixels apart: too short/).waitFor();
    // The same end where the picture is seen large: it is 28.67 m wide over its 1600 pixels, its foot on the yard's.
    await page.getByLabel('Second point', { exact: true }).fill('');
    await page.getByRole('button', { name: 'Tap it on the drawing' }).click();
    const { underlay: laid } = (await planOf(page)).site;
    expect(laid?.at).toEqual([0, 0]);
    // The courtyard is 11 by 8.5 m.
    const spot = await onScreen(page, [(7.17 * 10) / 11, (3.58 * 8) / 8.5]);
    await page.mouse.click(spot.x, spot.y);
    const [across, down] = (await page.getByLabel('Second point', { exact: true }).inputValue()).split(' ').map(Number);
    // Within what a pixel of the screen covers of the picture.
    expect(Math.abs(across - 400)).toBeLessThanOrEqual(2);
    expect(Math.abs(down - 800)).toBeLessThanOrEqual(2);
    // Turned a quarter clockwise it hangs from its lower left corner, which stays where it was.
    const onPaper = page.locator('.underlay image');
    const upright = (await onPaper.boundingBox())!;
    await page.getByLabel('Turned clockwise by, in degrees').fill('90');
    const { x, y, width, height } = upright;
    const hanging = [x, y + height, height, width];
    await expect
      .poll(async () => {
        const box = (await onPaper.boundingBox())!;
        return Math.max(...[box.x, box.y, box.width, box.height].map((side, k) => Math.abs(side - hanging[k])));
      })
      .toBeLessThan(1);
    await page.getByLabel('Turned clockwise by, in degrees').fill('0');
    // Outside undo: taking a step back leaves the picture, a reload too, and the points on it; taken away, it can be
    // put back.
    await page.getByRole('banner').getByRole('button', { name: 'Settings' }).click();
    await page.getByRole('radio', { name: 'Feet and inches, °F' }).check();
    await page.getByRole('button', { name: 'Undo: Show feet and inches' }).click();
    await page.getByRole('button', { name: /^Back to/ }).click();
    await page.getByRole('button', { name: 'How do I find this?' }).click();
    await saved(page);
    await page.reload();
    await page.getByRole('img', { name: 'The picture under the drawing' }).waitFor();
    expect(await page.getByLabel('First point of the check').inputValue()).toBe('100 100');
    await page.getByRole('button', { name: 'Take the picture away' }).click();
    await page.getByRole('img', { name: 'The picture under the drawing' }).waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Put it back' }).click();
    await page.getByRole('img', { name: 'The picture under the drawing' }).waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  },
);

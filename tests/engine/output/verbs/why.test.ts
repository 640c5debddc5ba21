import { describe, expect, test } from 'vitest';
import { why } from '../../../../engine/output/verbs/why.ts';
import { jsonOf, runLine } from './command-for-tests.ts';

describe('why a plant burnt, on the command line', () => {
  test.each(why.examples)('%s', async (line) => {
    const { code, out } = await runLine(line);
    expect(code).toBe(0);
    expect(out).not.toMatch(/undefined|NaN|null/);
  });

  test('the lemon of the demo: south-west explained, north-east not', async () => {
    expect(await jsonOf('why demo --plant lemon')).toMatchObject({
      answer: 'explains',
      side: 225,
      when: { from: expect.any(String), to: expect.any(String) },
    });
    expect(await jsonOf('why demo --plant lemon --side NE')).toMatchObject({ answer: 'does not', when: null });
  });

  test('under the screen and roof of an option the sun no longer explains the same burn', async () => {
    const today = (await jsonOf('why demo --plant lemon')) as { sides: { side: unknown; scorchDose: number }[] };
    const screened = (await jsonOf('why demo --plant lemon --option B')) as typeof today;
    const doseOf = (result: typeof today) => result.sides.find(({ side }) => side === 225)?.scorchDose ?? 0;
    expect(doseOf(screened)).toBeLessThan(0.7 * doseOf(today));
  });

  test.each([
    ['why demo --plant rose', 'There is no plant, bed or planted tree "rose"'],
    ['why demo --plant lemon --side left', '"left" is no side'],
    ['why demo --plant hydrangea', 'No damage to "hydrangea"'],
  ])('%s is refused', async (line, message) => {
    const { code, err, out } = await runLine(line);
    expect(code).toBe(1);
    expect(out).toBe('');
    expect(err).toContain(message);
  });
});

import { describe, expect, test } from 'vitest';
import { why } from '../../../../engine/output/verbs/why.ts';
import { jsonOf, runLine } from '../../../command-line.ts';

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

  test('it ends with what to do first, which place and site tell first too', async () => {
    const { out } = await runLine('why demo "Lemon pot"');
    expect(out).toBe((await runLine('why demo --plant lemon')).out);
    const last = out.slice(out.indexOf('Next: ')).replaceAll(/\s+/g, ' ');
    // Nearer by two metres, and its roots live there, for a hair more damage to its leaves.
    expect(last).toMatch(/^Next: Move the lemon pot beside the south wall, 7\.8 m away: free, and three quarters less/);
    expect(last).not.toContain('must be kept cool');
    const { spots } = (await jsonOf('place demo --plant lemon --count 2')) as { spots: { where: string }[] };
    expect(last).toContain(spots[0].where);
    const { next } = (await jsonOf('why demo --plant lemon --side NE')) as { next: { do: string; cost: number } };
    expect(next).toMatchObject({ do: 'look', cost: 0 });
    // What stands in the ground is mulched and watered first, what is too dark gets light.
    expect(await jsonOf('why demo --plant geraniums --side S')).toMatchObject({
      next: { do: 'water', sentence: expect.stringMatching(/free\. Then cloth that stops 30 to 50 %\./) },
    });
    expect(await jsonOf('why demo --plant orange --side S')).toMatchObject({ next: { do: 'nothing' } });
  });

  test('K·h are for the curious', async () => {
    expect((await runLine('why demo --plant lemon')).out).not.toContain('K·h');
    expect((await runLine('why demo --plant lemon --sources')).out).toContain('K·h');
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

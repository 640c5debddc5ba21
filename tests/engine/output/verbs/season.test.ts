import { expect, test } from 'vitest';
import { season } from '../../../../engine/output/verbs/season.ts';
import { jsonOf, runLine } from './command-for-tests.ts';

test.each(season.examples)('%s', async (line) => {
  const { code, out, err } = await runLine(line);
  expect(err).toBe('');
  expect(code).toBe(0);
  expect(out).not.toMatch(/undefined|NaN|\[object/);
  if (!line.includes('--json') && !line.includes('--ics')) {
    expect(out.split('\n').every((text) => text.length <= 80)).toBe(true);
    for (const caution of ['respirator', 'Ladders:', 'Heat: work before 11', 'Take the cloth off before a storm']) expect(out.replaceAll(/\s+/g, ' ')).toContain(caution);
  }
});

test('imperial reads in gallons, ounces and degrees Fahrenheit, metric in litres, grams and degrees Celsius', async () => {
  const [metric, imperial] = await Promise.all([runLine('season demo:lane --units metric'), runLine('season demo:lane --units imperial')]);
  expect(metric.out).toMatch(/\d L\b[\s\S]*\d g\b|\d g\b[\s\S]*\d L\b/);
  expect(imperial.out).toMatch(/gal\b/);
  expect(imperial.out).toMatch(/°F/);
  const [advice] = imperial.out.split('Take care');
  expect(advice).not.toMatch(/\d L\b|\d °C/);
});

test('the calendar goes to standard output as it stands, and the numbers as JSON', async () => {
  expect((await runLine('season demo:lane --ics')).out.startsWith('BEGIN:VCALENDAR\r\n')).toBe(true);
  expect(await jsonOf('season demo --option B')).toMatchObject({ from: '2026-06-01', to: '2026-09-15', cloth: [{ canopy: 'lemon-low-roof' }, { canopy: 'lemon-screen' }] });
});

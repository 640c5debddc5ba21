import { expect, test } from 'vitest';
import { season } from '../../../../engine/output/verbs/season.ts';
import { jsonOf, runLine } from '../../../command-line.ts';

test.each(season.examples)('%s', async (line) => {
  const { code, out, err } = await runLine(line);
  expect(err).toBe('');
  expect(code).toBe(0);
  expect(out).not.toMatch(/undefined|NaN|\[object/);
  if (!line.includes('--json') && !line.includes('--ics')) {
    for (const text of out.split('\n')) expect(text.length).toBeLessThanOrEqual(80);
  }
  if (!/--(json|ics|high)/.test(line)) {
    // A yard without cloth has none to take off, and nothing to climb to.
    const hung = line.includes('--option') ? ['Ladders:', 'Take the cloth off before a storm'] : [];
    const sprayed = line.includes('--clay') ? ['respirator'] : [];
    for (const caution of [...sprayed, 'Heat: work before 11', ...hung])
      expect(out.replaceAll(/\s+/g, ' ')).toContain(caution);
  }
});

test('the answer comes first, the sources last or, asked for, beside each sentence', async () => {
  const [plain, sourced] = await Promise.all([runLine('season demo'), runLine('season demo --clay --sources')]);
  expect(plain.out).toMatch(/^Heat from \d+ \w+ to \d+ \w+, frost from 10 December\.\n/);
  expect(plain.out.split('\n')[0].split(' ').length).toBeLessThanOrEqual(20);
  expect(plain.out.indexOf('Sources')).toBeGreaterThan(plain.out.indexOf('Take care'));
  expect(plain.out).not.toContain('[our estimate]');
  expect(sourced.out).toContain('[our estimate]');
});

test('imperial reads in gallons, ounces and degrees Fahrenheit, metric in litres, grams and degrees Celsius', async () => {
  const [metric, imperial] = await Promise.all([
    runLine('season demo:lane --clay --units metric'),
    runLine('season demo:lane --clay --units imperial'),
  ]);
  expect(metric.out).toMatch(/\d L\b[\s\S]*\d g\b|\d g\b[\s\S]*\d L\b/);
  expect(imperial.out).toMatch(/gal\b/);
  expect(imperial.out).toMatch(/°F/);
  const [advice] = imperial.out.split('Take care');
  expect(advice).not.toMatch(/\d L\b|\d °C/);
});

test('a typed high gives the day’s list by hour, the evening before first; what cannot be read is refused', async () => {
  const { code, out } = await runLine('season demo:lane --high 110 --day 2027-01-20 --units imperial');
  expect(code).toBe(0);
  expect(out).toMatch(
    /110 °F by day[\s\S]*No low was given[\s\S]*The evening before {2}Soak[\s\S]*\nAt sunrise, \d:\d\d am {2}/,
  );
  const clocks = [...out.matchAll(/^(?:At sunrise, )?(\d+)(?::(\d\d))? ([ap]m) {2}/gm)].map(
    ([, hour, minute = '0', half]) => ((Number(hour) % 12) + (half === 'pm' ? 12 : 0)) * 60 + Number(minute),
  );
  expect(clocks.length).toBeGreaterThan(3);
  expect(clocks).toEqual(clocks.toSorted((a, b) => a - b));
  // Blueberries are judged by their fruit, which water does not cool.
  expect(out.replaceAll(/\s+/g, ' ')).toContain('the skin of any fruit on it reaches');
  for (const [line, told] of [
    ['--high hot --day 2026-07-20', '"hot" is no temperature'],
    ['--high 42', 'Say which day'],
    ['--low 20', 'give --high too'],
    ['--high 42 --day 20.7.', 'wants a day with its year'],
    ['--high 42 --day 2026-07-20 --ics', 'leave out --ics'],
  ]) {
    expect(await runLine(`season demo ${line}`)).toMatchObject({
      code: 1,
      err: expect.stringContaining(told) as string,
    });
  }
});

test('the calendar goes to standard output as it stands, and the numbers as JSON', async () => {
  expect((await runLine('season demo:lane --ics')).out.startsWith('BEGIN:VCALENDAR\r\n')).toBe(true);
  expect(await jsonOf('season demo --option B')).toMatchObject({
    from: '2026-06-01',
    to: '2026-09-15',
    cloth: [{ canopy: 'lemon-low-roof' }, { canopy: 'lemon-screen' }],
  });
});

import { describe, expect, test } from 'vitest';
import { runLine } from '../../../command-line.ts';
import { oneIn } from '../../../long.ts';

/** One line of each verb whose text tells of lengths, heat, water or hours. */
const LINES = [
  'load demo',
  'why demo --plant lemon',
  'place demo --plant lemon --count 2 --on 2026-04-20',
  'place demo --plant lemon --at 5,6',
  'spot demo --at 9.6,6.4 --height 1.7 --date 07-21',
  'spot demo --at 9.6,6.4 --sky',
  'spot demo --at 9.6,6.4 --height 1.7 --weeks season --plant lemon',
  'site demo --hidden-heights',
  'site demo --size 2x2 --height 2.2 --density 0.5 --kind roof',
  'compare demo',
  'season demo --option A --clay',
  'season demo --high 42 --day 2026-07-20',
  'review demo',
  'sheet demo --option A --canopy lemon-roof',
  'survey shadows demo --date 05-02',
  'survey marks demo --mark east-house@3.25,4@2026-05-02T10:40',
  'survey walk --legs "12.4 right 6.1 right 12.6 right 6.1"',
] as const;

/** Beside what the trade sells by it: a tube's outside, a cloth's weight; and where both units stand. */
const BOTH =
  /(?<![.\d])[\d.]+( to [\d.]+)? (m|cm|mm|m²|°C|kg|g\/m²)( \(|,? [\d½¼ ]+(in|ft)\b)|tube, \d+ mm|A 3 m tube held upright reaches over 4 m|spirit level, 60 cm \(/g;

describe('with --units imperial no sentence falls back', () => {
  test.each(oneIn(3, LINES))('%s', async (line) => {
    const { code, out } = await runLine(`${line} --units imperial`);
    expect(code).toBe(0);
    const text = out.replaceAll(/\s+/g, ' ').replaceAll(BOTH, ' ');
    expect(text.match(/.{0,60}(°C|\d ?(m|cm|mm|km|kg|m²|L|m\/s|km\/h)\b).{0,30}/g)).toBeNull();
    // Clock times of twelve hours: each ends in am or pm, or in the stretch whose end does.
    const bare = text.replaceAll(/\d+(:\d\d)?( am| pm)?( to | and |, |–)\d+(:\d\d)? [ap]m|\d+(:\d\d)? [ap]m/g, ' ');
    expect(bare.match(/.{0,60}\b\d{1,2}:\d\d\b.{0,30}/g)).toBeNull();
  });
});

import { describe, expect, test } from 'vitest';
import { jsonOf, runLine } from '../../../command-line.ts';

describe('what the survey says', () => {
  test('north from a shadow, with the sun, the ± and a line to check it by', async () => {
    const { out } = await runLine('survey north demo --line 3,2 --line 1.33,1.5 --when 2026-05-02T10:00');
    expect(out).toContain("The plan's top bears 19.9° (± 0.7°) clockwise from true north.");
    expect(out).toContain('The sun stood at 93.3°, 29.8° high');
    expect(out).toContain('does that fit?');
  });

  test('the same near noon is refused with better times and exit 1', async () => {
    const { code, out, err } = await runLine('survey north demo --line 3,2 --line 1.33,1.5 --when 2026-05-02T14:20');
    expect(code).toBe(1);
    expect(out).toBe('');
    expect(err).toMatch(/--when.*no guide to north\. Try 08:\d\d to 11:\d\d/);
  });

  test('heights: the lamp post, and the gum by its crown', async () => {
    expect(await jsonOf('survey height demo --distance 5.2 --when 2026-05-02T10:00')).toMatchObject({
      height: expect.closeTo(2.98, 2),
    });
    expect(await jsonOf('survey height demo:lane --tree gum --distance 17.95 --when 2027-01-10T09:00')).toMatchObject({
      height: expect.closeTo(11, 1),
    });
    expect(await jsonOf('survey height --pole 1.5 --pole-shadow 2.4 --distance 9.6')).toMatchObject({
      height: expect.closeTo(6, 9),
    });
  });

  test('a place needs no plan', async () => {
    expect(await jsonOf('survey place --at "34°27′S 140°34′E"')).toMatchObject({
      timeZone: 'Australia/Adelaide',
      check: expect.stringContaining('in the north'),
    });
  });

  test('scale, with the second length that disagrees on standard error', async () => {
    const { out, err } = await runLine(
      'survey scale --pixels 692 --length 12.4 --check-pixels 301.35 --check-length 5',
    );
    expect(out).toBe('17.9 mm a pixel\n');
    expect(err).toContain('8 % longer');
  });

  test('a marked edge of a shadow: how far off it is, and what would cure it; three tell north from heights', async () => {
    const { out } = await runLine('survey marks demo --mark east-house@3.25,4@2026-05-02T10:40');
    expect(out.replaceAll(/\s+/g, ' ')).toContain(
      '0.34 m farther out than the plan says: the neighbour to the east, white wall 0.27 m higher would cure it',
    );
    const marks = [
      'east-house@3.25,4@2026-05-02T10:40',
      'west-wall@3.64,1.65@2026-05-02T18:30',
      'orange@5.11,4.22@2026-05-02T17:00',
    ]
      .map((mark) => `--mark ${mark}`)
      .join(' ');
    const { together } = (await jsonOf(`survey marks demo ${marks}`)) as {
      together: { worth: { what: string; to: number }[] };
    };
    // Marked in a yard whose top bears 1.8° more and whose eastern neighbour is 0.3 m higher.
    expect(together.worth.map(({ what }) => what)).toEqual(['north', 'height']);
    expect(together.worth[0].to).toBeCloseTo(21.8, 0);
    expect(together.worth[1].to).toBeCloseTo(6.1, 1);
  });

  test('lengths in feet are answered in feet', async () => {
    expect((await runLine('survey height --pole 5ft --pole-shadow 8ft --distance 32ft --units imperial')).out).toMatch(
      /^20 ft high \(± /,
    );
  });
});

describe('what is missing or cannot be is said in one line', () => {
  test.each([
    ['survey north', 'Give a PLAN, or the place'],
    ['survey north demo', 'keeps no sighting of north'],
    ['survey north demo --line 0,0', 'A line has two points, and 1 was given'],
    ['survey north demo --line 0,0 --line 1,1', 'Give the minute'],
    ['survey north demo --by compass --line 0,0 --line 1,1', 'bearing of the line with --reading'],
    ['survey north --town nowhere-at-all --date 07-15', 'No town "nowhere-at-all"'],
    ['survey place --at "95 200"', 'beyond 90°'],
    ['survey place --town alicante --zone Mars/Gale', 'not a known time zone'],
    ['survey height demo --distance 4', 'Give the minute with --when'],
    ['survey height demo --pole 2 --distance 4', 'Give both --pole and --pole-shadow'],
    ['survey height demo --distance 4 --when 2026-05-02T10:00 --shape round', 'A crown needs'],
    ['survey height demo --distance 4 --when 2026-05-02T10:00 --tree lemon', 'no tree "lemon"'],
    ['survey height demo --distance 4 --when 2026-05-02T10:00 --shape edge', '--facing'],
    ['survey height --courses 9', '--course'],
    ['survey tape --from 0,0 --from 5.6,0 --length 2.1 --length 3', "2.1 m + 3.0 m can't reach across 5.6 m"],
    ['survey tape --from 0,0 --length 2.1', 'Two points are needed'],
    ['survey walk --legs "3 right 4"', 'at least three'],
    ['survey pace --count 30', 'how long your steps are'],
    ['survey marks demo --mark house@3@2026', 'wants ID@X,Y@YYYY-MM-DDTHH:MM'],
    ['survey marks demo --mark lemon@3,4@2026-05-02T11:00', 'Mark 1: no wall, hedge'],
    ['survey scale --pixels 12 --length 12', 'too short'],
    ['survey shadows demo', 'Give the day'],
    ['survey climate demo --high 36', 'Give all three: --high and --low of July'],
  ])('%s', async (line, message) => {
    const { code, out, err } = await runLine(line);
    expect(code).toBe(1);
    expect(out).toBe('');
    expect(err).toContain(message);
    expect(
      err
        .trim()
        .split('\n')
        .filter((row) => !row.startsWith('warning')),
    ).toHaveLength(1);
  });
});

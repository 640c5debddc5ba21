import { expect, test } from 'vitest';
import { dayTable, demoPlan, shadowTable } from '../../../engine/index.ts';
import { stickMarks } from '../../../web/charts/shadow-clock.ts';
import { mustBeOk } from '../../parts/outcome.ts';

for (const [name, date] of [
  ['courtyard', '2026-05-02'],
  ['lane', '2027-01-21'],
] as const) {
  test(`in the ${name} the stick's shadows are those of the field sheet, half hour by half hour`, () => {
    const plan = demoPlan(name);
    const table = dayTable(plan, date.slice(5));
    mustBeOk(table);
    const { latitude, longitude, timeZone } = plan.site;
    const sheet = shadowTable({ latitude, longitude, timeZone }, date, 0);
    const marks = stickMarks(table.value);
    expect(table.value.date).toBe(date);
    expect(marks.map(({ clock }) => clock)).toEqual(
      sheet.map(({ clock }) => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3))),
    );
    for (const [k, { bearing, length }] of marks.entries()) {
      expect(bearing).toBeCloseTo(sheet[k].bearing, 6);
      expect(length).toBeCloseTo(sheet[k].length, 6);
    }
  });
}

import { describe, expect, it } from 'vitest';
import { csvRecord, loadCsv } from '../../../../engine/output/map/csv.ts';
import { smallLoad } from '../small-load.ts';

describe('CSV (RFC 4180)', () => {
  it('quotes what holds a comma, a quote or a line break', () => {
    expect(csvRecord(['plain', 'a,b', 'say "no"', 'two\nlines', 3.5, null])).toBe(
      'plain,"a,b","say ""no""","two\nlines",3.5,',
    );
  });

  it('has a line for each cell with a value: its centre in plan metres and the nine', () => {
    const lines = [...loadCsv(smallLoad([10, null, 4]))].join('').split('\r\n');
    expect(lines).toEqual([
      'x,y,sunHours,morningHours,afternoonHours,hotHours,beamDose,hotLoad,dailyLight,skyView,grade',
      '2.25,1.25,5,2,3,1,17,10,29,0.1,3',
      '3.25,1.25,2,0.8,1.2,0.4,6.8,4,11.6,0.04,2',
      '',
    ]);
  });

  it('comes row by row of the grid, each worked out when it is asked for: a map of any size is never one text', () => {
    const load = smallLoad([10, null, 4, 1, 2, 3, 7, 8, 9]);
    const read: number[] = [];
    const grade = new Proxy(load.cells.grade, {
      get: (values, key) => {
        if (typeof key === 'string' && /^\d+$/.test(key)) read.push(Number(key));
        return Reflect.get(values, key) as unknown;
      },
    });
    const readBy = [];
    for (const piece of loadCsv({ ...load, cells: { ...load.cells, grade } })) {
      readBy.push({ lines: piece.split('\r\n').length - 1, cells: [...new Set(read.splice(0))] });
    }
    expect(readBy).toEqual([
      { lines: 1, cells: [] },
      { lines: 2, cells: [0, 1, 2] },
      { lines: 3, cells: [3, 4, 5] },
      { lines: 3, cells: [6, 7, 8] },
    ]);
  });
});

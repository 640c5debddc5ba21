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

  it('comes row by row of the grid, so that a map of any size is never one text', () => {
    const pieces = [...loadCsv(smallLoad([10, null, 4, 1, 2, 3, 7, 8, 9]))];
    expect(pieces.map((piece) => piece.split('\r\n').length - 1)).toEqual([1, 2, 3, 3]);
  });
});

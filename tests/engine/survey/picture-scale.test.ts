import { describe, expect, test } from 'vitest';
import { pictureScale } from '../../../engine/survey/picture-scale.ts';
import { valueOf } from '../../parts/outcome.ts';
import { reasonOf } from './places-for-tests.ts';

const across = { fromPx: [100, 40], toPx: [792, 40], length: 12.4 } as const;

describe('the scale of a picture', () => {
  test('12.4 m between points 692 px apart are 17.9 mm a pixel', () => {
    const scale = valueOf(pictureScale(across, 1600));
    expect(scale.metresPerPixel * 1000).toBeCloseTo(17.92, 2);
    expect(scale.width).toBeCloseTo(28.67, 2);
    expect(scale.disagreement).toBeNull();
  });

  test('a second length that disagrees by 8 % is named', () => {
    const scale = 12.4 / 692;
    const finding = pictureScale(across, 1600, {
      fromPx: [300, 900],
      toPx: [300, 900 - (5 * 1.08) / scale],
      length: 5,
    });
    expect(valueOf(finding).disagreement).toBeCloseTo(0.08, 9);
    expect(finding.ok && finding.notes[0]).toBe(
      'The second length is 8 % longer in the picture than you said: the picture leans or is stretched.',
    );
  });

  test('one that agrees within 3 % is not', () => {
    const finding = pictureScale(across, 1600, { fromPx: [0, 0], toPx: [285, 0], length: 5 });
    expect(finding.ok && finding.notes).toHaveLength(1);
  });

  test('points too near, in the picture or on the ground, are refused', () => {
    expect(reasonOf(pictureScale({ ...across, toPx: [110, 50] }, 1600))).toBe(
      'The two points are 14 pixels apart: too short, 1 pixel off is 7 %.',
    );
    expect(reasonOf(pictureScale({ ...across, length: 1.9 }, 1600))).toContain('2 m or more');
  });
});

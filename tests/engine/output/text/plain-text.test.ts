import { describe, expect, it } from 'vitest';
import { oneLine, table, wrapped } from '../../../../engine/output/text/plain-text.ts';

describe('plain text', () => {
  it('a person’s text cannot break a line or steer a terminal', () => {
    expect(oneLine('a\nb\u001b[31mred\u0007\u2028c ')).toBe('a b [31mred c');
  });

  it('a table sets columns under each other, numbers flush right', () => {
    expect(
      table(
        ['what', 'm'],
        [
          ['wall', '1.8'],
          ['shed roof', '12.25'],
        ],
        [1],
      ),
    ).toBe('what           m\nwall         1.8\nshed roof  12.25');
  });

  it('wraps between words and keeps long ones whole', () => {
    expect(wrapped('the sun comes over the low wall', 12)).toBe('the sun\n  comes over\n  the low\n  wall');
    expect(wrapped('abcdefghijklmnop qr', 5)).toBe('abcdefghijklmnop\n  qr');
  });
});

import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import {
  HEAT_RAMP,
  LIGHT_RAMP,
  RAMP_SHARE,
  SCALES,
  colourOf,
  paintCells,
  stretchesOf,
} from '../../../web/charts/ramp.ts';

/**
 * Relative luminance and contrast ratio: W3C, Web Content Accessibility Guidelines 2.2, definitions
 * (w3.org/TR/WCAG22/#dfn-relative-luminance, #dfn-contrast-ratio).
 */
const channels = (hex: string): number[] =>
  (hex.length === 4
    ? Array.from(hex.slice(1), (one) => one + one)
    : [hex.slice(1, 3), hex.slice(3, 5), hex.slice(5, 7)]
  ).map((pair) => Number.parseInt(pair, 16) / 255);
const linear = (value: number): number => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
const luminance = (rgb: readonly number[]): number =>
  rgb.map(linear).reduce((sum, value, k) => sum + value * [0.2126, 0.7152, 0.0722][k], 0);
const contrast = (a: string, b: string): number => {
  const [dark, light] = [luminance(channels(a)), luminance(channels(b))].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
};

const css = await readFile(new URL('../../../web/styles/tokens.css', import.meta.url), 'utf8');

/** Tokens of a theme: the light ones, overlaid with its own. */
function tokensOf(theme: 'light' | 'dark' | 'bright'): Map<string, string> {
  const block = (selector: string): string =>
    css.slice(css.indexOf(`${selector} {`), css.indexOf('}', css.indexOf(`${selector} {`)));
  const texts = theme === 'light' ? [block(':root')] : [block(':root'), block(`:root[data-theme='${theme}']`)];
  return new Map(
    texts.flatMap((text) =>
      [...text.matchAll(/--([\w-]+): (#[0-9a-f]{3,6});/g)].map((found): [string, string] => [found[1], found[2]]),
    ),
  );
}

describe.each(['light', 'dark', 'bright'] as const)('in the %s theme', (theme) => {
  const tokens = tokensOf(theme);
  const of = (name: string): string => tokens.get(name) ?? '';

  test.each(['paper', 'paper-raised', 'paper-sunk'])('every ink reads on %s', (paper) => {
    expect(contrast(of('ink'), of(paper))).toBeGreaterThanOrEqual(7);
    for (const ink of ['ink-soft', 'accent', 'good', 'warn', 'bad'])
      expect(contrast(of(ink), of(paper)), `${ink} on ${paper}`).toBeGreaterThanOrEqual(4.5);
    for (const line of ['rule', 'focus', 'harm'])
      expect(contrast(of(line), of(paper)), `${line} on ${paper}`).toBeGreaterThanOrEqual(3);
  });

  test('words on the accent and on its wash read', () => {
    expect(contrast(of('accent-ink'), of('accent'))).toBeGreaterThanOrEqual(4.5);
    expect(contrast(of('ink'), of('accent-wash'))).toBeGreaterThanOrEqual(7);
    expect(contrast(of('paper'), of('ink'))).toBeGreaterThanOrEqual(7);
  });
});

/**
 * Dichromats' sight: Viénot, Brettel & Mollon 1999, Color Research & Application 24(4): 243–252, as matrices on linear
 * sRGB (coefficients from memory).
 */
const SIGHTS: Readonly<Record<string, readonly (readonly number[])[]>> = {
  'without red cones': [
    [0.11238, 0.88762, 0],
    [0.11238, 0.88762, 0],
    [0.00401, -0.00401, 1],
  ],
  'without green cones': [
    [0.29275, 0.70725, 0],
    [0.29275, 0.70725, 0],
    [-0.02234, 0.02234, 1],
  ],
};

describe.each([
  ['heat', HEAT_RAMP],
  ['light', LIGHT_RAMP],
] as const)('the ramp of %s', (_name, ramp) => {
  test('gets lighter from stop to stop, so that its order holds in black and white', () => {
    expect(ramp).toHaveLength(16);
    for (let k = 1; k < 16; k++) expect(luminance(channels(ramp[k]))).toBeGreaterThan(luminance(channels(ramp[k - 1])));
  });

  test.each(Object.keys(SIGHTS))('gets lighter from stop to stop to eyes %s', (sight) => {
    const seen = ramp.map((hex) => {
      const rgb = channels(hex).map(linear);
      const turned = SIGHTS[sight].map((row) =>
        Math.max(
          0,
          row.reduce((sum, share, k) => sum + share * rgb[k], 0),
        ),
      );
      return 0.2126 * turned[0] + 0.7152 * turned[1] + 0.0722 * turned[2];
    });
    for (let k = 1; k < 16; k++) expect(seen[k]).toBeGreaterThan(seen[k - 1]);
  });

  test('shows the plan’s ink at 3:1 or better on every stop', () => {
    for (const stop of ramp) expect(contrast(stop, '#1d2330')).toBeGreaterThanOrEqual(3);
  });
});

test('the heat painted on the dark paper leaves its light ink at 3:1 or better on every stop', () => {
  const [paper, ink] = ['paper', 'ink'].map((name) => channels(tokensOf('dark').get(name) ?? ''));
  const hexOf = (rgb: readonly number[]): string =>
    `#${rgb
      .map((value) =>
        Math.round(value * 255)
          .toString(16)
          .padStart(2, '0'),
      )
      .join('')}`;
  for (const stop of [...HEAT_RAMP, ...LIGHT_RAMP]) {
    const painted = channels(stop).map((value, k) => RAMP_SHARE.dark * value + (1 - RAMP_SHARE.dark) * paper[k]);
    expect(contrast(hexOf(painted), hexOf(ink)), stop).toBeGreaterThanOrEqual(3);
  }
});

test('the legend’s colours are ones the map paints, from dark to light, and each grade’s is its own', () => {
  for (const on of ['grade', 'hotLoad'] as const) {
    const stretches = stretchesOf(on);
    for (const [k, { colour }] of stretches.entries()) {
      expect(HEAT_RAMP).toContain(colour);
      if (k > 0) expect(luminance(channels(colour))).toBeGreaterThan(luminance(channels(stretches[k - 1].colour)));
    }
    // Five words, the worst at the end of the ramp; where they begin is where the engine's grades do.
    expect(stretches.flatMap(({ word }) => word ?? [])).toEqual(['mild', 'warm', 'strong', 'harsh', 'scorching']);
    expect(stretches.at(-1)?.word).toBe('scorching');
    expect(stretches.slice(0, 5).map(({ from }) => from)).toEqual([0, 2, 6, 12, 18]);
  }
  expect(stretchesOf('grade').map(({ colour }) => colour)).toEqual(
    [1, 2, 3, 4, 5].map((grade) => colourOf(grade, SCALES.grade)),
  );
});

test('the worst ground of a hot yard is told apart from what is only scorching: a clear day’s heat does not reach the end', () => {
  // Open ground at Perth on its heatwave day has 33.7 MJ/m² by an independent sum; half shaded, 24.
  const [half, open] = [24, 33.7].map((value) => luminance(channels(colourOf(value, SCALES.hotLoad))));
  expect((open + 0.05) / (half + 0.05)).toBeGreaterThan(1.3);
  expect(SCALES.hotLoad.to).toBeGreaterThan(33.7);
});

test('a value takes the colour of its place on the scale, the end’s beyond it, and none where there is none', () => {
  const scale = SCALES.hotLoad;
  // Places by hand: 16·(v/36)^0.65 is 0, 0, 7.8, 12.3, 15.9.
  expect([-1, 0, 11.9, 24, 35.8, 99].map((value) => colourOf(value, scale))).toEqual([
    HEAT_RAMP[0],
    HEAT_RAMP[0],
    HEAT_RAMP[7],
    HEAT_RAMP[12],
    HEAT_RAMP[15],
    HEAT_RAMP[15],
  ]);
  expect([...paintCells(Float64Array.of(NaN, 35.8), scale, 200)]).toEqual([0, 0, 0, 0, 0xff, 0xf0, 0xa8, 200]);
});

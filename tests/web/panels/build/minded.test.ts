import { expect, test } from 'vitest';
import { cautionsFor } from '../../../../engine/index.ts';
import { mindedAt, mindedFirst, STOP_TITLES } from '../../../../web/panels/build/minded.ts';
import { built, roof } from '../../../engine/frame/yard.ts';

const WORK = [
  'Shopping list',
  'Tools and time',
  'Cut list',
  'Set out the posts',
  'Ready the ground',
  'Put up the frame',
  'Anchors',
  'Hang the cloth',
  'Storm plan',
  'As built',
] as const;

test('every caution of a sheet is told whole once, at its work or before it, and every stop before', () => {
  for (const soil of ['garden', 'paving'] as const) {
    const { cautions } = built({ ...roof, height: 1.8, frame: { soil, gust: 10 } });
    const own = [...cautions, { id: 'local-1', tasks: [], stop: false, text: 'Gusts of 1.5 times the mean; at five.' }];
    const told = [...mindedFirst(own), ...WORK.flatMap((work) => mindedAt(work, own, 'metric'))].map(
      ({ text }) => text,
    );
    for (const { text } of own)
      expect(
        told.filter((words) => words === text),
        text,
      ).toHaveLength(1);
    expect(mindedFirst(own).filter(({ stop }) => stop)).toEqual(own.filter(({ stop }) => stop));
  }
});

test('at other work a caution’s first words stand, whole sentences of what is to be done', () => {
  const { cautions } = built({ ...roof, height: 2.4 });
  const texts = mindedAt('Hang the cloth', cautions, 'metric').map(({ text }) => text);
  expect(texts).toContain(
    'Ladders: a step ladder, set fully open on firm level ground, never leaned against the frame.',
  );
  expect(texts).toContain('Take the cloth off before a storm: also when thunderstorms are forecast.');
  expect(mindedAt('Ready the ground', cautions, 'metric')[0].text).toMatch(
    /^Stop if a power line .*within 3 m of it, farther/,
  );
});

test('every stop that a sheet can have is listed by what it is of', () => {
  const yard = cautionsFor(['build', 'dig', 'climb', 'cut', 'concrete', 'floor', 'wind', 'cloth', 'winter']);
  const stops = yard.filter(({ stop }) => stop).map(({ id }) => id);
  expect(Object.keys(STOP_TITLES).toSorted()).toEqual(stops.toSorted());
});

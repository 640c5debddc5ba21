/**
 * The report as one page that needs nothing else: no script, no picture from elsewhere, every text of a person's as
 * text.
 */

import type { Advice } from '../../advice/year/advice.ts';
import { yearEntries } from '../../advice/year/season/entries.ts';
import type { PlantLoad, Verdict } from '../../load/types.ts';
import { dateWords } from '../../plan/dates/dates.ts';
import { boundsOf } from '../../plan/geometry/shapes.ts';
import { formatHeatLimit, formatLength, formatTemperature } from '../../plan/units/shown.ts';
import { compassWord } from '../../plan/words/compass-word.ts';
import { nameOf } from '../../plan/words/names.ts';
import { plantLetter } from '../map/heat-map.ts';
import { escaped, htmlTable, list, paragraph, section } from '../sheet/markup.ts';
import { oneLine } from '../text/plain-text.ts';
import { basisWords, eachOnce, waterAdvice, waterTable } from '../text/season-text.ts';
import { optionsSection } from './options.ts';
import { gradeKey, planPicture } from './plan.ts';
import { sectionPicture } from './section.ts';
import { STYLE } from './style.ts';
import type { Report } from './types.ts';

/** Worst first. */
const VERDICT_ORDER: readonly (Verdict | null)[] = [
  'will burn',
  'at risk',
  'too dark',
  'fine once established',
  'no shade needed',
  'fine',
  null,
];

/** @param full Whether it prints with every number, else on two pages. */
export function reportHtml(report: Report, full = false): string {
  const title = oneLine(report.plan.name ?? '') || 'The yard';
  const parts = [
    head(report, title),
    plants(report),
    map(report),
    ...(report.tried === null ? [] : [optionsSection(report.tried)]),
    ...cuts(report),
    dates(report),
    cautions(report),
    ...[numbers, year, sure].map((part) => `<div class="more">${part(report)}</div>`),
  ];
  return (
    `<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><meta name="viewport" ` +
    `content="width=device-width, initial-scale=1">` +
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src ` +
    `'unsafe-inline'"><title>${escaped(title)}: report</title><style>${STYLE}</style></head>` +
    `<body${full ? ' class="in-full"' : ''}><main>${parts.join('\n')}</main></body></html>\n`
  );
}

function head({ plan, season, made, climate, rough, place, load, units, day }: Report, title: string): string {
  const { minX, minY, maxX, maxY } = boundsOf(plan.site.boundary);
  const facts = [
    `Season ${dateWords(season.from)} to ${dateWords(season.to)}. The yard measures ` +
      `${formatLength(maxX - minX, units)} by ${formatLength(maxY - minY, units)}; the map is for ` +
      `${day === null ? 'the whole season' : dayWordsOf(day)}, ${formatLength(load.grid.height, units)} above the ` +
      `ground.`,
    made === null ? 'Made on: ____________________' : `Made on ${dateWords(made)}.`,
    ...(place === null
      ? []
      : [`Place: latitude ${place.latitude}°, longitude ${place.longitude}°.`.replaceAll('-', '−')]),
  ];
  return (
    `<header><h1>${escaped(title)}</h1>${facts.map(paragraph).join('')}<p${rough ? ' class="rough"' : ''}>` +
    `${escaped(climate)}</p></header>`
  );
}

/** "the heatwave day, 21 July 2026". */
function dayWordsOf({ date, isHeatwave }: NonNullable<Report['day']>): string {
  return isHeatwave ? `the heatwave day, ${dateWords(date)}` : dateWords(date);
}

function plants({ load }: Report): string {
  const worstFirst = load.plants
    .map((plant, index) => ({ plant, index }))
    .toSorted((a, b) => VERDICT_ORDER.indexOf(a.plant.verdict) - VERDICT_ORDER.indexOf(b.plant.verdict));
  const said = worstFirst.map(
    ({ plant, index }) => `${plantLetter(index) === '' ? '' : `${plantLetter(index)}: `}${plant.sentence}`,
  );
  return section(
    'plants',
    'How each plant stands the heatwave day',
    said.length === 0 ? [paragraph('No plant or bed is drawn yet.')] : [list(said)],
  );
}

function map({ plan, load, units, day }: Report): string {
  const spots = load.hotSpots.map(({ sentence }) => sentence);
  return section('map', 'Where the sun does harm', [
    `<figure>${planPicture(plan, load, units)}<figcaption class="key">${gradeKey()}</figcaption></figure>`,
    paragraph(
      `Grades of the hot sun ${day === null ? 'of a mean day of the season' : `of ${dayWordsOf(day)}`}, an index of ` +
        `this project’s own. Letters are the plants. Thick lines are walls, broken ones cloth, dotted rings crowns.`,
    ),
    spots.length === 0 ? paragraph('Hot spots: none of grade harsh or scorching.') : list(spots),
  ]);
}

function cuts({ plan, sections, units }: Report): string[] {
  return sections.map(({ canopy, plant, section: cut }, index) => {
    const towards =
      cut.slip === null ? '' : ` The cut looks at the sun in the ${compassWord(cut.bearing)}, on the heatwave day.`;
    const title = `${nameOf(plan, canopy)} and ${nameOf(plan, plant)}, cut through`;
    const picture = cut.slip === null ? '' : `<figure class="cut">${sectionPicture(title, cut, units)}</figure>`;
    const told = section(`cut-${index + 1}`, title, [picture, paragraph(`${cut.sentence}${towards}`)]);
    return index === 0 ? told : `<div class="more">${told}</div>`;
  });
}

function numbers({ plan, load, units, day }: Report): string {
  if (load.plants.length === 0) return '';
  const open =
    `In the open: ${load.season.openSunHours.toFixed(1)} h of sun a day, hot sun ` +
    `${load.season.openHotLoad.toFixed(1)} MJ/m² a day.`;
  const rows = load.plants.map((plant, index) => [
    `${plantLetter(index)} ${nameOf(plan, plant.id)}`,
    plant.verdict ?? 'not judged',
    plant.sunHours.toFixed(1),
    plant.hotHours.toFixed(1),
    plant.hotLoad.toFixed(1),
    plant.dailyLight.toFixed(0),
    plant.scorchDose === null ? '' : plant.scorchDose.toFixed(0),
    leafWords(plant, units),
  ]);
  return section('numbers', 'The numbers', [
    htmlTable(
      [
        'plant',
        'verdict',
        'sun, h',
        'hot hours, h',
        'hot sun, MJ/m²',
        'light, mol/m²',
        'heat damage, K·h',
        'leaf / its limit',
      ],
      rows,
      [2, 3, 4, 5, 6],
    ),
    paragraph(
      `${open} Sun, hot hours, hot sun and light are ` +
        `${day === null ? 'means of a day of the season' : `of ${dayWordsOf(day)}`}, over a plant’s top and its ` +
        `eight sides; heat damage and leaf are the heatwave day’s, the leaf with water and without.`,
    ),
  ]);
}

function leafWords({ leaf }: PlantLoad, units: Report['units']): string {
  if (leaf === null) return '';
  const [watered, thirsty] = [leaf.watered, leaf.thirsty].map((celsius) => formatTemperature(celsius, units));
  const limit = formatHeatLimit(leaf.limit, units);
  return watered === thirsty ? `${watered} / ${limit}` : `${watered} to ${thirsty} / ${limit}`;
}

function dates({ season }: Report): string {
  const rows = yearEntries(season).map(({ from, to, title }) => [
    from === to ? dateWords(from) : `${dateWords(from)} to ${dateWords(to)}`,
    title,
  ]);
  return section('dates', 'Dates', [
    ...season.notes.map(paragraph),
    rows.length === 0 ? paragraph('Nothing with a date this year.') : htmlTable(['when', 'what'], rows),
  ]);
}

function year({ plan, season, units }: Report): string {
  const blocks: readonly (readonly [string, readonly Advice[]])[] = [
    ['Cloth', eachOnce(season.cloth.flatMap(({ advice }) => advice))],
    ['Clay', season.clay.advice],
    ['Water', waterAdvice()],
    ['Frost', season.frost.advice],
  ];
  const water = waterTable(plan, season, units);
  const drinking = season.water.length === 0 ? '' : htmlTable(water.head, water.rows, water.numbers);
  return section(
    'year',
    'Cloth, clay, water and frost',
    blocks.flatMap(([title, advice]) =>
      advice.length === 0
        ? []
        : [
            `<h3>${title}</h3>${title === 'Water' ? drinking : ''}` +
              `${list(advice.map((one) => `${one.text} ${basisWords(one)}`))}`,
          ],
    ),
  );
}

function cautions(report: Report): string {
  return section('cautions', 'Take care', [list(report.cautions.map(({ text }) => text))]);
}

function sure({ rough }: Report): string {
  return section('sure', 'How sure this is', [
    list([
      'Leaf temperatures are estimates: each stands with how far it may be off; water decides more than that.',
      'Hot sun, its grades and heat damage are this project’s own: good for one spot against another, no measurement.',
      ...(rough ? ['Rough climate: put in the highs and lows of your own months, and make this report again.'] : []),
      'Local codes, the label and people licensed for the work come before anything here.',
    ]),
  ]);
}

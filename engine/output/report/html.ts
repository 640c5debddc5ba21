/**
 * The report as one page that needs nothing else: no script, no picture from elsewhere, every text of a person's as
 * text.
 */
import { dateWords } from '../../advice/year/season/words.ts';
import type { Advice } from '../../advice/year/advice.ts';
import { yearEntries } from '../../advice/review/year-entries.ts';
import { compassWord } from '../../plan/compass.ts';
import { nameOf } from '../../plan/names.ts';
import type { PlantLoad, Verdict } from '../../load/types.ts';
import { boundsOf } from '../../plan/geometry/shapes.ts';
import { formatHeatLimit, formatLength, formatTemperature } from '../../plan/units.ts';
import { plantLetter } from '../map/heat-map.ts';
import { oneLine } from '../text/plain-text.ts';
import { basisWords, eachOnce, waterAdvice, waterTable } from '../text/season-text.ts';
import { escaped, htmlTable, list, paragraph, section } from '../sheet/markup.ts';
import { gradeKey, planPicture } from './plan.ts';
import type { Report } from './types.ts';
import { sectionPicture } from './section.ts';

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

const STYLE =
  `
@page { margin: 15mm; }
body { color: black; background: white; font: 11pt/1.4 sans-serif; max-width: 180mm; margin: 0 auto; padding: 4mm; }
h1 { font-size: 18pt; margin: 0; } h2 { font-size: 13pt; border-bottom: 1px solid black; break-after: avoid; } h3 { ` +
  `font-size: 11pt; break-after: avoid; }
table { border-collapse: collapse; width: 100%; } th, td { text-align: left; vertical-align: top; padding: 1mm 2mm; ` +
  `border-bottom: 1px solid #999; }
.number { text-align: right; font-variant-numeric: tabular-nums; } .rough { border: 2px solid black; padding: 1mm ` +
  `2mm; font-weight: bold; }
svg { display: block; } svg:not([width]) { width: 100%; max-height: 140mm; }
figure { margin: 0 0 4mm; } .cut svg { max-height: 70mm; } ` +
  `.key svg { max-height: 9mm; }
tr, li, figure { break-inside: avoid; } thead { display: table-header-group; } p, li { overflow-wrap: anywhere; }
#cautions li { list-style-type: "☐ "; }
@media screen { svg[width] { max-width: 100%; height: auto; } }
@media print { body { max-width: none; padding: 0; } }
`;

export function reportHtml(report: Report): string {
  const title = oneLine(report.plan.name ?? '') || 'The yard';
  const parts = [
    head(report, title),
    plants(report),
    map(report),
    ...cuts(report),
    numbers(report),
    dates(report),
    year(report),
    cautions(report),
    sure(report),
  ];
  return (
    `<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><meta name="viewport" ` +
    `content="width=device-width, initial-scale=1">` +
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src ` +
    `'unsafe-inline'"><title>${escaped(title)}: report</title><style>${STYLE}</style></head>` +
    `<body><main>${parts.join('\n')}</main></body></html>\n`
  );
}

function head({ plan, season, made, climate, rough, place, load, units }: Report, title: string): string {
  const { minX, minY, maxX, maxY } = boundsOf(plan.site.boundary);
  const facts = [
    `Season ${dateWords(season.from)} to ${dateWords(season.to)}, ${load.season.days} days. The yard measures ` +
      `${formatLength(maxX - minX, units)} by ${formatLength(maxY - minY, units)}; the map is for ` +
      `${formatLength(load.grid.height, units)} above the ground.`,
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

function map({ plan, load, units }: Report): string {
  const spots = load.hotSpots.map(({ sentence }) => sentence);
  return section('map', 'Where the sun does harm', [
    `<figure>${planPicture(plan, load, units)}<figcaption class="key">${gradeKey()}</figcaption></figure>`,
    paragraph(
      'Grades of the season’s mean hot load, an index of this project’s own. Letters are the plants. Thick lines ' +
        'are walls, broken ones cloth, dotted rings crowns.',
    ),
    spots.length === 0 ? paragraph('Hot spots: none of grade harsh or scorching.') : list(spots),
  ]);
}

function cuts({ plan, sections }: Report): string[] {
  return sections.map(({ canopy, plant, section: cut }, index) => {
    const towards =
      cut.slip === null ? '' : ` The cut looks at the sun in the ${compassWord(cut.bearing)}, on the heatwave day.`;
    const title = `${nameOf(plan, canopy)} and ${nameOf(plan, plant)}, cut through`;
    const picture = cut.slip === null ? '' : `<figure class="cut">${sectionPicture(title, cut)}</figure>`;
    return section(`cut-${index + 1}`, title, [picture, paragraph(`${cut.sentence}${towards}`)]);
  });
}

function numbers({ plan, load, units }: Report): string {
  if (load.plants.length === 0) return '';
  const open =
    `In the open: ${load.season.openSunHours.toFixed(1)} h of sun a day, hot load ` +
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
        'hot load, MJ/m²',
        'light, mol/m²',
        'heat damage, K·h',
        'leaf / its limit',
      ],
      rows,
      [2, 3, 4, 5, 6],
    ),
    paragraph(
      `${open} Sun, hot hours, hot load and light are means of a day of the season, over a plant’s top and its ` +
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
      'Hot load, its grades and heat damage are this project’s own: good for one spot against another, no measurement.',
      ...(rough ? ['Rough climate: put in the highs and lows of your own months, and make this report again.'] : []),
      'Local codes, the label and people licensed for the work come before anything here.',
    ]),
  ]);
}

/**
 * What the build sheet says, section by section, in the order in which somebody works through it: once, for text and
 * for paper.
 */

import { formatAbout, formatMark, formatTape, formatThin } from '../../frame/layout/lengths.ts';
import type { DimensionKind } from '../../frame/layout/types.ts';
import type { ClothPiece } from '../../frame/shop/types.ts';
import { GRAVITY } from '../../frame/strength/wind.ts';
import type { BuildSheet } from '../../frame/types.ts';
import { MASS_PER_UNIT, METRES_PER_FOOT } from '../../plan/units/per-unit.ts';
import { formatCut, formatSpeed, formatShare } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { checklist, list, section, sentence, type SheetSection, table } from './part.ts';
import { cutList, partsAndJoints, shopping, tools } from './shop.ts';
import { anchors, strength, wind } from './strength.ts';

export function sheetSections(sheet: BuildSheet, units: Units): readonly SheetSection[] {
  const sections = [
    summary,
    stops,
    notes,
    shopping,
    tools,
    partsAndJoints,
    cutList,
    cloth,
    strength,
    placing,
    wind,
    anchors,
    cautions,
    steps,
    storm,
    winter,
    asBuilt,
  ];
  return sections.map((of) => of(sheet, units)).filter(({ parts }) => parts.length > 0);
}

function summary(sheet: BuildSheet, units: Units): SheetSection {
  const { tube, settingOut, kind, drawing } = sheet;
  const across = (side: DimensionKind): number =>
    drawing.dimensions.find((dimension) => dimension.kind === side)?.length ?? 0;
  const heights = [...new Set(settingOut.posts.map((post) => formatCut(post.height, units)))];
  const sizes =
    kind === 'canopy'
      ? `${formatCut(across('length'), units)} long and ${formatCut(across('width'), units)} wide between post middles`
      : screenLength(sheet, units);
  const what =
    `A ${kind === 'canopy' ? 'roof frame' : 'screen frame'} on ${standsOn(sheet)}, ` +
    `${sizes}, ${
      heights.length === 1
        ? `${heights[0]} high`
        : `${heights[0]} high at the back and ${heights[heights.length - 1]} in front`
    }, of ${tube.name}: ${formatThin(tube.outside, units)} outside, ` +
    `${formatThin(tube.wall, units)} wall, ${massPerLength(tube.mass, units)}.`;
  const cost =
    sheet.cost.total === null
      ? `No total cost: no price is known in ${sheet.cost.currency}.`
      : `About ${sheet.cost.total.toFixed(0)} ${sheet.cost.currency}. ${sheet.cost.note}`;
  return section('summary', `Build sheet: ${sheet.name}`, [
    sentence(what),
    sentence(sheet.overBudget === null ? cost : `${cost} ${sheet.overBudget}`),
    { kind: 'drawing', of: 'frame' },
  ]);
}

/** "4 posts", "2 posts and 2 wall brackets". */
function standsOn({ settingOut: { posts } }: BuildSheet): string {
  const brackets = posts.filter(({ onWall }) => onWall).length;
  return `${posts.length - brackets} posts${brackets === 0 ? '' : ` and ${brackets} wall brackets`}`;
}

/** From end post to end post, along the bends if it has any, or all the way round. */
function screenLength({ drawing, settingOut }: BuildSheet, units: Units): string {
  const along = drawing.dimensions.reduce((sum, { kind, length }) => (kind === 'bay' ? sum + length : sum), 0);
  const [straight] = settingOut.diagonals;
  const bends = straight !== undefined && along > straight.length + 0.001;
  const measured = bends ? 'long along its bends' : 'long between the end posts';
  return `${formatCut(along, units)} ${straight === undefined ? 'all the way round' : measured}`;
}

function notes(sheet: BuildSheet): SheetSection {
  return section('notes', 'Mind first', [list(sheet.notes)]);
}

function placing(sheet: BuildSheet, units: Units): SheetSection {
  const { settingOut } = sheet;
  const measured = settingOut.fixed.length === 2;
  const rows = settingOut.posts.map((post) => [
    post.id,
    ...(measured ? [formatTape(post.fromA, units), formatTape(post.fromB, units), post.hand] : []),
    formatCut(post.height, units),
  ]);
  const posts = table(
    ['post', ...(measured ? ['from A', 'from B', 'hand'] : []), 'height'],
    rows,
    measured ? [1, 2, 4] : [1],
  );
  const diagonals = settingOut.diagonals
    .map(({ from, to, length }) => `${from} to ${to} ${formatTape(length, units)}`)
    .join(', ');
  const square =
    diagonals === ''
      ? ''
      : sheet.kind === 'canopy'
        ? `Diagonals: ${diagonals}. Both must agree.`
        : `End to end: ${diagonals}.`;
  const remarks = settingOut.posts.flatMap((post) => post.notes.map((note) => `${post.id} ${note}.`));
  return section('setting-out', 'Where the posts stand', [
    sentence(settingOut.sentence),
    ...(measured ? [{ kind: 'drawing', of: 'setting out' } as const] : []),
    posts,
    sentence(square),
    list(remarks),
  ]);
}

function cloth(sheet: BuildSheet, units: Units): SheetSection {
  const rows = sheet.cloth.pieces.map((piece) => [
    placeOf(piece),
    formatShare(piece.density),
    `${formatMark(piece.finished[0], units)} × ${formatMark(piece.finished[1], units)}`,
    piece.buy === 'from the roll'
      ? `${formatMark(piece.cut[0], units)} × ${formatMark(piece.cut[1], units)}`
      : 'ready-made',
    `${piece.ties}, every ${spacingWords(piece, units)}`,
  ]);
  const { pull, gap } = sheet.cloth;
  return section('cloth', 'Cloth', [
    table(['piece', 'density', 'finished', 'cut', 'ties'], rows, [1]),
    list(sheet.cloth.pieces.map((piece) => `${placeOf(piece)}: ${piece.direction}`)),
    sentence(
      `The cloth hangs ${formatAbout(gap, units)} inside the tubes’ middles on each side; the ties fill the gap ` +
        `and pull it flat.`,
    ),
    sentence(
      `Elastic ties are the fuse: a cloth so taut that it sags only ${formatMark(pull.sag, units)} would drag its ` +
        `rails inward with ${massPerLength(pull.perMetre / GRAVITY, units)} in gusts of ` +
        `${formatSpeed(pull.gust, units)}. Never lash every point with cord that does not give.`,
    ),
    list(sheet.cloth.notes),
  ]);
}

function steps(sheet: BuildSheet): SheetSection {
  return section('steps', 'Steps', [
    checklist(
      sheet.steps.map((step) => step.text),
      'to do',
      true,
    ),
  ]);
}

function storm(sheet: BuildSheet): SheetSection {
  return section('storm', 'Storm plan', [list(sheet.storm.sentences)]);
}

function winter(sheet: BuildSheet): SheetSection {
  return section('winter', 'Winter', [sentence(sheet.cloth.frost?.sentence ?? '')]);
}

/** One line a post: each length as planned, and a blank for what the tape shows. */
function asBuilt(sheet: BuildSheet, units: Units): SheetSection {
  const ids = [...new Set(sheet.asBuilt.map(({ post }) => post))];
  const rows = ids.map((id) => [
    id,
    ...sheet.asBuilt
      .filter(({ post }) => post === id)
      .flatMap(({ measures, planned }) => [
        measures === 'height' ? formatCut(planned, units) : formatTape(planned, units),
        '______',
      ]),
  ]);
  const measured = sheet.settingOut.fixed.length === 2;
  const head = ['post', 'height', 'built', ...(measured ? ['from A', 'built', 'from B', 'built'] : [])];
  return section('as-built', 'As built: measure, and type it into the plan', [
    sentence('Height of the rail’s middle above the ground; from A and from B level, to the post’s middle.'),
    table(head, rows, [1, 3, 5]),
  ]);
}

/** What has to be settled before anything is bought or dug. */
function stops(sheet: BuildSheet): SheetSection {
  const told = sheet.cautions.filter(({ stop }) => stop).map(({ text }) => text.replace(/^Stop/, 'STOP'));
  return section('stops', 'Stop: before you buy, tick each', [checklist(told, 'stops')]);
}

function cautions(sheet: BuildSheet): SheetSection {
  return section('cautions', 'Cautions', [list(sheet.cautions.filter(({ stop }) => !stop).map(({ text }) => text))]);
}

/** "520 mm", or "500 mm along and 520 mm across". */
function spacingWords({ tieSpacing }: ClothPiece, units: Units): string {
  const [along, across] = tieSpacing.map((metres) => formatMark(metres, units));
  return along === across ? along : `${along} along and ${across} across`;
}

/** "drop left (P1 to P3)": where a cloth hangs, by the posts of the drawing. */
function placeOf({ where, between }: ClothPiece): string {
  return between === null ? where : `${where} (${between[0]} to ${between[1]})`;
}

/** @param perMetre [kg/m] */
function massPerLength(perMetre: number, units: Units): string {
  const [value, unit] =
    units === 'metric' ? [perMetre, 'kg a metre'] : [perMetre * (METRES_PER_FOOT / MASS_PER_UNIT.lb), 'lb a foot'];
  return `${value.toFixed(value < 10 ? 2 : 0)} ${unit}`;
}

/** What the build sheet says, section by section, in the order in which somebody works through it: once, for text and for paper. */
import { groundPlace } from '../frame/grounds.ts';
import { jointWords } from '../frame/fittings.ts';
import { formatAbout, formatForce, formatSlight, formatStress, formatTape, formatThin } from '../frame/lengths.ts';
import { STEEL } from '../frame/tube.ts';
import type { BuildSheet, ClothPiece } from '../frame/types.ts';
import { LEAN_ON_POST, LEAN_ON_RAIL } from '../frame/wind-plan.ts';
import { GRAVITY, holesFactor } from '../frame/wind.ts';
import { formatArea, formatCut, formatMass, formatSpeed } from '../plan/units.ts';
import type { Units } from '../plan/units.ts';

/** A table's `numbers` are the columns set flush right. */
export type SheetPart =
  | { readonly kind: 'sentence'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[]; readonly numbered: boolean }
  | { readonly kind: 'table'; readonly head: readonly string[]; readonly rows: readonly (readonly string[])[]; readonly numbers: readonly number[] }
  | { readonly kind: 'cuts' }
  | { readonly kind: 'drawing' };

export interface SheetSection {
  readonly id: string;
  readonly title: string;
  readonly parts: readonly SheetPart[];
}

export function sheetSections(sheet: BuildSheet, units: Units): readonly SheetSection[] {
  const sections = [summary, notes, shopping, tools, partsAndJoints, cutList, placing, cloth, strength, wind, anchors, steps, storm, winter, asBuilt, cautions];
  return sections.map((of) => of(sheet, units)).filter(({ parts }) => parts.length > 0);
}

function summary(sheet: BuildSheet, units: Units): SheetSection {
  const { tube, settingOut, kind, drawing } = sheet;
  const heights = [...new Set(settingOut.posts.map((post) => formatCut(post.height, units)))];
  const sizes =
    kind === 'canopy'
      ? `${formatCut(drawing.dimensions[1].length, units)} long and ${formatCut(drawing.dimensions[0].length, units)} wide between post middles`
      : screenLength(sheet, units);
  const what = `A ${kind === 'canopy' ? 'roof frame' : 'screen frame'} on ${settingOut.posts.length} posts, ${sizes}, ${heights.length === 1 ? `${heights[0]} high` : `${heights[0]} high at the back and ${heights[heights.length - 1]} in front`}, of ${tube.name}: ${formatThin(tube.outside, units)} outside, ${formatThin(tube.wall, units)} wall, ${massPerLength(tube.mass, units)}.`;
  const cost = sheet.cost.total === null ? `No total cost: no price is known in ${sheet.cost.currency}.` : `About ${money(sheet.cost.total, sheet)}. ${sheet.cost.note}`;
  return section('summary', `Build sheet: ${sheet.name}`, [sentence(what), sentence(cost), { kind: 'drawing' }]);
}

/** From end post to end post, along the bends if it has any, or all the way round. */
function screenLength({ drawing, settingOut }: BuildSheet, units: Units): string {
  const along = drawing.dimensions.slice(0, -1).reduce((sum, { length }) => sum + length, 0);
  const [straight] = settingOut.diagonals;
  return `${formatCut(along, units)} ${straight === undefined ? 'all the way round' : along > straight.length + 0.001 ? 'long along its bends' : 'long between the end posts'}`;
}

function notes(sheet: BuildSheet): SheetSection {
  return section('notes', 'Mind first', [list(sheet.notes)]);
}

function shopping(sheet: BuildSheet, units: Units): SheetSection {
  const aisles = [...new Set(sheet.cost.items.map((item) => item.aisle))];
  const rows = aisles.flatMap((aisle) => [
    [aisle, '', '', ''],
    ...sheet.cost.items
      .filter((item) => item.aisle === aisle)
      .map((item) => [
        `· ${item.name}${item.length === undefined ? '' : `, ${formatCut(item.length, units)}`}${item.pack > 1 ? ` (${item.need} needed, packs of ${item.pack})` : ''}`,
        item.unit === 'm²' ? formatArea(item.count, units) : `${item.count} ${plural(item.unit, item.count)}`,
        item.price === null ? 'no price' : item.unit === 'm²' ? pricePerArea(item.price, units) : item.price.toFixed(2),
        item.amount === null ? '' : item.amount.toFixed(2),
      ]),
  ]);
  const total = sheet.cost.total === null ? [] : [['Total', '', '', sheet.cost.total.toFixed(2)]];
  return section('shopping', 'Shopping list', [table(['what', 'how many', 'each', sheet.cost.currency], [...rows, ...total], [1, 2, 3]), sentence(sheet.cost.note)]);
}

function tools(sheet: BuildSheet): SheetSection {
  return section('tools', 'Tools, hands and hours', [sentence(`Tools: ${sheet.tools.map((tool) => tool.name).join('; ')}.`), ...sheet.work.sentences.map(sentence)]);
}

function partsAndJoints(sheet: BuildSheet, units: Units): SheetSection {
  const parts = table(['part', 'length', 'count'], sheet.pieces.map((piece) => [piece.part, formatCut(piece.length, units), String(piece.count)]), [1, 2]);
  const joints = table(['joint', 'sockets', 'count', 'what it joins'], sheet.fittings.map((fitting) => [fitting.kind, String(fitting.socketsEach), String(fitting.count), jointWords(fitting)]), [1, 2]);
  const { tubes, sockets, inGround } = sheet.sockets;
  const ground = inGround > 0 ? ` and ${inGround} stand in the ground` : '';
  const check = `Check: ${tubes} tubes have ${2 * tubes} ends; ${sockets} sit in a socket${ground}. ${sheet.sockets.holds ? 'None is left over.' : 'They do not agree: do not buy by this list.'}`;
  return section('parts', 'Parts and joints', [parts, joints, sentence(check)]);
}

function cutList(sheet: BuildSheet, units: Units): SheetSection {
  const { cutting } = sheet;
  const kerf = cutting.kerf === 0 ? 'Cut with a rolling cutter, which loses nothing.' : `Every cut loses ${formatSlight(cutting.kerf, units)}.`;
  const best = cutting.proven
    ? 'No other way of cutting needs less: proved.'
    : `It could be done with ${cutting.counted === 'tubes' ? `${cutting.bound} tubes` : cutting.counted === 'length' ? `${cutting.bound.toFixed(1)} m` : money(cutting.bound, sheet)} at the very best; no way better than this was found.`;
  const savings = cutting.savings.map((saving) => `Saves ${saving.money === null ? `${saving.tubes} ${plural('tube', saving.tubes)}` : money(saving.money, sheet)}: ${saving.change}.`);
  return section('cuts', 'Cut list', [{ kind: 'cuts' }, sentence(`${kerf} ${best}`), list(savings)]);
}

function placing(sheet: BuildSheet, units: Units): SheetSection {
  const { settingOut } = sheet;
  const measured = settingOut.fixed.length === 2;
  const rows = settingOut.posts.map((post) => [post.id, ...(measured ? [formatTape(post.fromA, units), formatTape(post.fromB, units), post.hand] : []), formatCut(post.height, units)]);
  const posts = table(['post', ...(measured ? ['from A', 'from B', 'hand'] : []), 'height'], rows, measured ? [1, 2, 4] : [1]);
  const diagonals = settingOut.diagonals.map(({ from, to, length }) => `${from} to ${to} ${formatTape(length, units)}`).join(', ');
  const square = diagonals === '' ? '' : sheet.kind === 'canopy' ? `Diagonals: ${diagonals}. Both must agree.` : `End to end: ${diagonals}.`;
  const remarks = settingOut.posts.flatMap((post) => post.notes.map((note) => `${post.id} ${note}.`));
  return section('setting-out', 'Where the posts stand', [sentence(settingOut.sentence), posts, sentence(square), list(remarks)]);
}

function cloth(sheet: BuildSheet, units: Units): SheetSection {
  const rows = sheet.cloth.pieces.map((piece) => [
    placeOf(piece),
    `${Math.round(piece.density * 100)} %`,
    `${formatCut(piece.finished[0], units)} × ${formatCut(piece.finished[1], units)}`,
    piece.buy === 'from the roll' ? `${formatCut(piece.cut[0], units)} × ${formatCut(piece.cut[1], units)}` : 'ready-made',
    String(piece.ties),
  ]);
  const { pull, gap } = sheet.cloth;
  return section('cloth', 'Cloth', [
    table(['piece', 'density', 'finished', 'cut', 'ties'], rows, [1, 4]),
    list(sheet.cloth.pieces.map((piece) => `${placeOf(piece)}: ${piece.direction}`)),
    sentence(`The cloth hangs ${formatAbout(gap, units)} inside the tubes’ middles on each side; the ties fill the gap and pull it flat.`),
    sentence(`Pulled so taut that it sags only ${formatCut(pull.sag, units)}, it would drag its rails inward with ${massPerLength(pull.perMetre / GRAVITY, units)} in gusts of ${formatSpeed(pull.gust, units)}: that is why the ties must give.`),
    list(sheet.cloth.notes),
  ]);
}

function strength(sheet: BuildSheet, units: Units): SheetSection {
  const roof = sheet.kind === 'canopy';
  const spans = table(
    ['rail', 'span', 'sag', 'span/sag', roof ? 'bears gusts, free below' : 'bears gusts', ...(roof ? ['blocked below'] : [])],
    sheet.spans.map((span) => [span.rail, formatCut(span.span, units), formatSlight(span.sag, units), span.sagRatio.toFixed(0), formatSpeed(Math.floor(span.gust.clear), units), ...(roof ? [formatSpeed(Math.floor(span.gust.blocked), units)] : [])]),
    [1, 2, 3, 4, 5],
  );
  const [longest] = sheet.spans.toSorted((a, b) => b.span - a.span);
  const { post } = sheet;
  const allowed = STEEL.allowable / 1e6;
  const limit = (stressMPa: number): string => `${formatStress(stressMPa, units)} of the ${formatStress(allowed, units)} allowed${stressMPa > allowed ? ': TOO MUCH' : ''}`;
  const braced = sheet.drawing.tubes.some(({ part }) => part === 'brace' || part === 'stay');
  const cure = braced ? `Here ${roof ? 'braces' : 'stays'} take that push.` : roof ? 'A brace in each of two upright faces is worth more than thicker posts.' : 'Thicker tube is the cure.';
  return section('strength', 'What the tube bears', [
    spans,
    sentence(`Somebody who leans on the middle of the longest rail with ${formatForce(LEAN_ON_RAIL, units)} bends it ${formatSlight(longest.leaned.sag, units)}, ${limit(longest.leaned.stressMPa)}.`),
    sentence(`A post of ${formatCut(post.height, units)} without a brace gives ${formatSlight(post.leaned.sag, units)} when its top alone is pushed with ${formatForce(LEAN_ON_POST, units)}, ${limit(post.leaned.stressMPa)}. ${cure} Downwards it would carry ${formatForce(post.strength, units)} and has to carry ${formatForce(post.load, units)}.`),
  ]);
}

function wind(sheet: BuildSheet, units: Units): SheetSection {
  const { uplift } = sheet;
  const roof = sheet.kind === 'canopy';
  const side = uplift.rows.some((row) => row.sidePush > 0);
  const head = ['gust', ...(roof ? ['uplift, free below', 'uplift, blocked below'] : []), ...(side ? ['side push'] : [])];
  const rows = uplift.rows.map((row) => [
    `${formatSpeed(row.gust, units)}`,
    ...(roof ? [formatForce(row.uplift.clear, units), formatForce(row.uplift.blocked, units)] : []),
    ...(side ? [formatForce(row.sidePush, units)] : []),
  ]);
  const blocked = uplift.blockedBy.length > 0 ? `Here the hard end counts: the wind is caught by ${uplift.blockedBy.join(', ')}.` : 'Nothing near this roof catches the wind below it, so the mild end counts, as long as nothing is stacked or grown up under it.';
  return section('wind', 'Wind', [
    sentence(uplift.wording),
    table(head, rows, [1, 2, 3]),
    ...(roof ? [sentence(blocked)] : []),
    sentence(formulas(sheet, units)),
    list(uplift.sources),
  ]);
}

/** The formulas themselves are metric, whatever the units shown: they are read by those who check them. */
function formulas({ uplift, kind, cloth: { pieces } }: BuildSheet, units: Units): string {
  const up = kind === 'canopy' ? `Uplift ${uplift.formula}, C ${uplift.coefficient.clear.toFixed(1)} (free below) to ${uplift.coefficient.blocked.toFixed(1)} (blocked), Kp ${uplift.holes.toFixed(2)}, A ${formatArea(uplift.area, units)}. ` : '';
  const standing = pieces.filter(({ between }) => between !== null);
  const side = uplift.sideFormula === null ? '' : `Push on cloth that stands ${uplift.sideFormula}, Kp ${[...new Set(standing.map(({ density }) => holesFactor(density).toFixed(2)))].join(' and ')}, A its own area${standing.length > 1 && kind === 'canopy' ? '; the table has the drops that one wind strikes together' : ''}. `;
  return `${up}${side}F in newtons, V in m/s, A in m². Own weight of tube and cloth ${formatMass(uplift.ownWeight, units)}.`;
}

function anchors(sheet: BuildSheet, units: Units): SheetSection {
  const { anchors: plan } = sheet;
  const rows = plan.posts.map((post) => [`${post.count} × ${post.post}`, range(post.ballast.clear, post.ballast.blocked, units)]);
  const where = plan.ground === null ? 'Anchors: not worked out' : `Anchors ${groundPlace(plan.ground)}`;
  const loads = sheet.kind === 'canopy' ? [table(['post', 'weight needed, free to blocked'], rows, [1])] : [];
  return section('anchors', where, [...loads, ...plan.sentences.map(sentence)]);
}

function steps(sheet: BuildSheet): SheetSection {
  return section('steps', 'Steps', [list(sheet.steps.map((step) => step.text), true)]);
}

function storm(sheet: BuildSheet): SheetSection {
  return section('storm', 'Storm plan', [list(sheet.storm.sentences)]);
}

function winter(sheet: BuildSheet): SheetSection {
  return section('winter', 'Winter', [sentence(sheet.cloth.frost?.sentence ?? '')]);
}

function asBuilt(sheet: BuildSheet, units: Units): SheetSection {
  const rows = sheet.asBuilt.map((field) => [field.label, field.label.includes('height') ? formatCut(field.planned, units) : formatTape(field.planned, units), '________']);
  return section('as-built', 'As built: measure, and type it into the plan', [table(['what', 'planned', 'measured'], rows, [1])]);
}

function cautions(sheet: BuildSheet): SheetSection {
  return section('cautions', 'Cautions', [list(sheet.cautions.map((caution) => caution.text.replace(/^Stop/, 'STOP')))]);
}

/** Empty sentences and lists are left out, so that a section with nothing to say has no parts. */
function section(id: string, title: string, parts: readonly SheetPart[]): SheetSection {
  return { id, title, parts: parts.filter((part) => (part.kind === 'sentence' ? part.text !== '' : part.kind === 'list' ? part.items.length > 0 : true)) };
}

function sentence(text: string): SheetPart {
  return { kind: 'sentence', text };
}

function list(items: readonly string[], numbered = false): SheetPart {
  return { kind: 'list', items, numbered };
}

function table(head: readonly string[], rows: readonly (readonly string[])[], numbers: readonly number[]): SheetPart {
  return { kind: 'table', head, rows, numbers };
}

/** "drop left (P1 to P3)": where a cloth hangs, by the posts of the drawing. */
function placeOf({ where, between }: ClothPiece): string {
  return between === null ? where : `${where} (${between[0]} to ${between[1]})`;
}

function money(amount: number, sheet: BuildSheet): string {
  return `${amount.toFixed(2)} ${sheet.cost.currency}`;
}

/** @param price Of a square metre. */
function pricePerArea(price: number, units: Units): string {
  return units === 'metric' ? `${price.toFixed(2)} a m²` : `${(price * 0.3048 ** 2).toFixed(3)} a ft²`;
}

function plural(word: string, count: number): string {
  return count === 1 ? word : `${word}s`;
}

/** @param perMetre [kg/m] */
function massPerLength(perMetre: number, units: Units): string {
  const [value, unit] = units === 'metric' ? [perMetre, 'kg a metre'] : [perMetre * (0.3048 / 0.45359237), 'lb a foot'];
  return `${value.toFixed(value < 10 ? 2 : 0)} ${unit}`;
}

function range(low: number, high: number, units: Units): string {
  return `${formatMass(Math.ceil(low), units)} to ${formatMass(Math.ceil(high), units)}`;
}

/** One feature of the plan, or of an option's adds: its keys, their ranges, and how they go together. */
import {
  FOOT,
  SHARE,
  SIZE,
  checkCellCount,
  checkFootBelowTop,
  checkHow,
  checkOutline,
  checkPath,
  checkSide,
  checkYearlySpan,
  SURFACES,
  round,
} from './rules.ts';
import { DEFAULTS } from '../defaults.ts';
import {
  eitherOf,
  isCivilDate,
  isRecord,
  ownerOf,
  quote,
  readClockTime,
  readFlag,
  readList,
  readNumber,
  readObject,
  readOwners,
  readPoint,
  readText,
  readWord,
  report,
  show,
} from './reader.ts';
import type { NumberRule, Owner } from './reader.ts';
import type { Colour, CrownShape, DropSide, FeatureKind, Problem } from '../types.ts';

const GUST: NumberRule = { min: 0, max: 120, unit: 'm/s' };
const WORTH: NumberRule = { min: 0, max: 1000 };
const SHAPES: readonly CrownShape[] = ['round', 'cone', 'column'];
const COLOURS: readonly Colour[] = ['white', 'light', 'mid', 'dark'];
const SIDES: readonly DropSide[] = ['front', 'back', 'left', 'right'];

const CHECKS: Readonly<Record<FeatureKind, (owner: Owner) => void>> = {
  wall: checkWall,
  hedge: checkWall,
  building: checkBuilding,
  tree: checkTree,
  canopy: checkCanopy,
  screen: checkScreen,
  bed: checkBed,
  plant: checkPlant,
  keepout: checkKeepout,
  ground: checkGround,
  eye: checkEye,
  reading: checkReading,
};

export const FEATURE_KINDS = Object.keys(CHECKS) as readonly FeatureKind[];

/** Pushes every problem of one feature. */
export function checkFeature(value: unknown, pointer: string, problems: Problem[]): void {
  const owner = ownerOf(value, pointer, subjectOf(value, pointer), problems);
  if (owner === undefined) return;
  const id = readText(owner, 'id', 'required');
  if (id !== undefined && id.trim() === '') report(owner, 'id', 'id must not be empty.');
  readText(owner, 'name', 'optional');
  checkHow(owner);
  const kind = readText(owner, 'kind', 'required');
  if (kind === undefined) return;
  if (!Object.hasOwn(CHECKS, kind))
    report(owner, 'kind', `${show(kind)} is not a kind of thing; it must be ${eitherOf(FEATURE_KINDS)}.`);
  else CHECKS[kind as FeatureKind](owner);
}

/** What to call a feature in a sentence: `Wall "west"`. */
function subjectOf(value: unknown, pointer: string): string {
  if (!isRecord(value)) return `Feature ${Number(pointer.slice(pointer.lastIndexOf('/') + 1)) + 1}`;
  const kind = typeof value.kind === 'string' && Object.hasOwn(CHECKS, value.kind) ? value.kind : 'feature';
  const title = kind[0].toUpperCase() + kind.slice(1);
  if (typeof value.id === 'string' && value.id !== '') return `${title} ${quote(value.id)}`;
  return `${title} without an id`;
}

function checkWall(owner: Owner): void {
  checkPath(owner, 2);
  readNumber(owner, 'height', SIZE, 'required');
  readNumber(owner, 'thickness', { min: 0.01, max: 100, unit: 'm' }, 'required');
  readNumber(owner, 'openness', SHARE, 'optional');
  if (owner.object.kind === 'wall') readWord(owner, 'colour', COLOURS, 'optional');
}

function checkBuilding(owner: Owner): void {
  checkOutline(owner, 'outline');
  readNumber(owner, 'height', SIZE, 'required');
  readNumber(owner, 'eaves', { min: 0, max: 50, unit: 'm' }, 'optional');
  readWord(owner, 'colour', COLOURS, 'optional');
}

function checkTree(owner: Owner): void {
  readPoint(owner, 'at', 'required');
  const height = readNumber(owner, 'height', SIZE, 'required');
  readNumber(owner, 'crownWidth', SIZE, 'required');
  const base = readNumber(owner, 'crownBase', FOOT, 'required');
  checkFootBelowTop(owner, 'crownBase', base, height);
  readWord(owner, 'shape', SHAPES, 'optional');
  readNumber(owner, 'openness', SHARE, 'required');
  const leafless = checkYearlySpan(owner, 'leafless');
  if (leafless !== undefined) readNumber(leafless, 'openness', SHARE, 'required');
  checkPlanted(owner);
}

function checkCanopy(owner: Owner): void {
  readPoint(owner, 'center', 'required');
  readNumber(owner, 'length', SIZE, 'required');
  readNumber(owner, 'width', SIZE, 'required');
  readNumber(owner, 'turn', { min: -3600, max: 3600, unit: 'degrees' }, 'optional');
  const back = readNumber(owner, 'height', SIZE, 'required');
  const rise = readNumber(owner, 'rise', { min: -100, max: 100, unit: 'm' }, 'optional') ?? DEFAULTS.rise;
  checkCloth(owner);
  const front = back === undefined ? undefined : back + rise;
  if (front !== undefined && front <= 0)
    report(
      owner,
      'rise',
      `with height ${back} m and rise ${rise} m the front edge would be at ${round(front)} m, not above the ground.`,
    );
  checkDrops(owner, back, front);
}

function checkDrops(owner: Owner, back: number | undefined, front: number | undefined): void {
  const seen = new Set<DropSide>();
  for (const drop of readOwners(owner, 'drops', 'optional', (_, index) => `${owner.subject}, drop ${index + 1}`)) {
    const side = readWord(drop, 'side', SIDES, 'required');
    const depth = readNumber(drop, 'depth', SIZE, 'required');
    readNumber(drop, 'density', SHARE, 'required');
    if (side === undefined) continue;
    if (seen.has(side)) report(drop, 'side', `there is already a drop on the ${side} side; each side takes one.`);
    seen.add(side);
    if (depth === undefined || back === undefined || front === undefined) continue;
    const edge = side === 'front' ? front : side === 'back' ? back : Math.min(front, back);
    if (depth > edge + 1e-9)
      report(
        drop,
        'depth',
        `the drop is ${depth} m deep, but its edge is only ${round(edge)} m ` +
          `high${front !== back && (side === 'left' || side === 'right') ? ' at its lower end' : ''}.`,
      );
  }
}

function checkScreen(owner: Owner): void {
  checkPath(owner, 2);
  const bottom = readNumber(owner, 'bottom', FOOT, 'optional') ?? DEFAULTS.bottom;
  checkFootBelowTop(owner, 'bottom', bottom, readNumber(owner, 'height', SIZE, 'required'));
  checkCloth(owner);
}

/** What canopies and screens share. */
function checkCloth(owner: Owner): void {
  readNumber(owner, 'density', SHARE, 'required');
  readNumber(owner, 'measuredDensity', SHARE, 'optional');
  checkYearlySpan(owner, 'up');
  const frame = readObject(owner, 'frame', `${owner.subject}, frame`, 'optional');
  if (frame === undefined) return;
  for (const key of ['tube', 'anchor', 'soil']) readText(frame, key, 'optional');
  for (const key of ['bottomRails', 'braces']) readFlag(frame, key);
  readNumber(frame, 'maxBay', { min: 0.3, max: 20, unit: 'm' }, 'optional');
  readNumber(frame, 'takeOff', { min: 0, max: 1, unit: 'm' }, 'optional');
  readNumber(frame, 'gust', GUST, 'optional');
}

function checkBed(owner: Owner): void {
  const ring = checkOutline(owner, 'outline');
  if (ring !== undefined) checkCellCount(owner, 'outline', ring, DEFAULTS.bedCell);
  readNumber(owner, 'plantHeight', FOOT, 'required');
  checkCrownShade(owner);
  checkPlanted(owner);
}

function checkPlant(owner: Owner): void {
  readPoint(owner, 'at', 'required');
  const height = readNumber(owner, 'height', SIZE, 'required');
  readNumber(owner, 'spread', SIZE, 'required');
  checkCrownShade(owner);
  const container = readFlag(owner, 'container');
  const pot = readObject(owner, 'pot', `${owner.subject}, pot`, 'optional');
  const potHeight =
    (pot && readNumber(pot, 'height', { above: 0, max: 3, unit: 'm' }, 'optional')) ?? DEFAULTS.potHeight;
  if (pot !== undefined) {
    readNumber(pot, 'width', { above: 0, max: 5, unit: 'm' }, 'optional');
    readText(pot, 'colour', 'optional');
  }
  readWord(owner, 'move', ['carry', 'trolley', 'never'], 'optional');
  const foot = readNumber(owner, 'foliageFrom', FOOT, 'optional');
  if (foot !== undefined) checkFootBelowTop(owner, 'foliageFrom', foot, height);
  else if (
    container === true &&
    height !== undefined &&
    potHeight >= height &&
    !Object.hasOwn(owner.object, 'foliageFrom')
  ) {
    report(
      owner,
      'height',
      `height is ${height} m from the ground, pot included, but the pot alone is ${potHeight} m high.`,
    );
  }
  checkPlanted(owner);
}

/** What plants and beds say of the shade they cast. */
function checkCrownShade(owner: Owner): void {
  readNumber(owner, 'openness', SHARE, 'optional');
  readFlag(owner, 'shades');
}

/** What trees, beds and plants share; whether the plant's row exists is for the whole plan to say. */
function checkPlanted(owner: Owner): void {
  readText(owner, 'plant', 'optional');
  readNumber(owner, 'worth', WORTH, 'optional');
  const planted = readText(owner, 'planted', 'optional');
  if (planted !== undefined && !/^\d{4}$/.test(planted) && !isCivilDate(planted)) {
    report(owner, 'planted', `planted must be a year, "2024", or a day, "2024-03-10", got ${show(planted)}.`);
  }
}

function checkKeepout(owner: Owner): void {
  checkOutline(owner, 'outline');
  for (const [index, word] of (readList(owner, 'blocks', 'required') ?? []).entries()) {
    if (word === 'posts' || word === 'pots' || word === 'canopy') continue;
    owner.problems.push({
      pointer: `${owner.pointer}/blocks/${index}`,
      message: `${owner.subject}: it can keep out ${eitherOf(['posts', 'pots', 'canopy'])}, got ${show(word)}.`,
      severity: 'error',
    });
  }
}

function checkGround(owner: Owner): void {
  checkOutline(owner, 'outline');
  readWord(owner, 'surface', SURFACES, 'required');
}

function checkEye(owner: Owner): void {
  checkPath(owner, 1);
  readNumber(owner, 'height', FOOT, 'required');
}

function checkReading(owner: Owner): void {
  readPoint(owner, 'at', 'required');
  readClockTime(owner, 'when');
  readNumber(owner, 'air', { min: -60, max: 70, unit: '°C' }, 'optional');
  readNumber(owner, 'leaf', { min: -60, max: 100, unit: '°C' }, 'optional');
  readNumber(owner, 'light', { min: 0, max: 200_000, unit: 'lux' }, 'optional');
  readFlag(owner, 'covered');
  for (const key of ['pair', 'plant', 'text']) readText(owner, key, 'optional');
  checkSide(owner);
}

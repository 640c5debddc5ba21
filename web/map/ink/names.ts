import { holds, overlap, placeLabels, placesOfPin, placesOn, placesRound } from '../../charts/label-boxes.ts';
import type { Box } from '../../charts/label-boxes.ts';

/** What lies over the paper and would hide a name: its buttons, arrow, bar and caption say so of themselves. */
const OVER_PAPER = '[data-over-paper]';

/** Half of what the smallest thing takes on the paper: an onlooker's face. [px] */
const SMALLEST_PX = 9;

/** A longer name beside a thing would hide more of the drawing than it tells; share of the paper's width. */
const LONGEST_SHARE = 0.35;

/** How a name lies to the thing it names. */
export interface NamedBody {
  /** On the thing, or beside it. */
  readonly lies: 'on' | 'beside';
  /** Half of the thing, across and up. [m] */
  readonly across: number;
  readonly up: number;
  /** Names with a lower one are placed first. */
  readonly rank: number;
  /** No other name may lie over it. */
  readonly solid: boolean;
}

/** Written where the name stands, read back when names are placed. */
export function writeBody(words: HTMLElement, { lies, across, up, rank, solid }: NamedBody): void {
  Object.assign(words.dataset, { lies, across, up, rank, solid: solid ? 'yes' : 'no' });
}

interface Name {
  readonly words: HTMLElement;
  readonly anchor: DOMRect;
  readonly body: Box;
  readonly width: number;
  readonly height: number;
}

/**
 * Moves names out of each other's way, off the plants, off the edge and from under the buttons; hides those without
 * room, and the numbers of lines that would lie under a name.
 * @param pixels a metre
 */
export function placeNames(container: HTMLElement, pixels: number): void {
  const frame = container.getBoundingClientRect();
  // All are measured before any is moved, so that the page is laid out once.
  const names = [...container.querySelectorAll<HTMLElement>('.map-name span')]
    .map((words) => nameOn(words, pixels))
    .sort((a, b) => Number(a.words.dataset.rank) - Number(b.words.dataset.rank));
  const numbers = [
    ...container.querySelectorAll<HTMLElement>('.map-number.contour span, .map-number.hidden-height span'),
  ];
  const over: Box[] = [...(container.closest('main')?.querySelectorAll(OVER_PAPER) ?? [])].map((each) =>
    each.getBoundingClientRect(),
  );
  clearNumbers(container, frame, over);
  const numberBoxes = numbers.map((words) => words.getBoundingClientRect());
  const marks = [...container.querySelectorAll('.numbered-mark')].map((each) => each.getBoundingClientRect());
  const taken: Box[] = [...over, ...marks];
  const plants = names.filter(({ words }) => words.dataset.solid === 'yes').map(({ body }) => body);
  const longest = LONGEST_SHARE * frame.width;
  const places = names.map(({ words, body, width, height }) => {
    const on = words.dataset.lies === 'on' ? placesOn(body, frame, width, height) : [];
    // What is cut off by the edge lies too far off for a name beside it.
    const isWhole = words.dataset.lies !== 'on' || holds(frame, body);
    return on.length > 0 || width > longest || !isWhole ? on : placesRound(body, width, height);
  });
  const found = placeLabels([...places, ...numberBoxes.map((box) => [box])], frame, [...taken, ...plants]);
  names.forEach(({ words, anchor }, k) => {
    const place = found[k];
    words.classList.toggle('hidden', place === null);
    if (place !== null) {
      const { left, top } = places[k][place];
      words.style.translate = `${left - anchor.left}px ${top - anchor.top}px`;
    }
  });
  numbers.forEach((words, k) => words.classList.toggle('hidden', found[names.length + k] === null));
}

/** Each turn of a pin. */
const TURNS = [[], ['to-left'], ['below'], ['to-left', 'below']] as const;

/**
 * Numbered pins are turned about their places out of each other's way, the chosen one first, and drawn smaller where
 * that is not enough; a word among them, as "front", gives way where it would lie over one.
 */
function clearNumbers(container: HTMLElement, frame: Box, over: readonly Box[]): void {
  const pins = [
    ...container.querySelectorAll<HTMLElement>('.numbered-mark.chosen'),
    ...container.querySelectorAll<HTMLElement>('.numbered-mark:not(.word, .chosen)'),
  ];
  container.classList.remove('crowded');
  if (!turnPins(pins, frame, over)) {
    container.classList.add('crowded');
    turnPins(pins, frame, over);
  }
  const standing = pins.map((pin) => pin.getBoundingClientRect());
  for (const word of container.querySelectorAll('.numbered-mark.word')) {
    const box = word.getBoundingClientRect();
    word.classList.toggle(
      'hidden',
      standing.some((mark) => overlap(mark, box)),
    );
  }
}

function firstTurn(pin: HTMLElement): number {
  return Number(pin.querySelector('span')?.dataset.turn);
}

/** @returns whether each found room */
function turnPins(pins: readonly HTMLElement[], frame: Box, over: readonly Box[]): boolean {
  for (const pin of pins) pin.classList.remove('to-left', 'below');
  const places = pins.map((pin) => {
    const { left, bottom, width } = pin.getBoundingClientRect();
    return placesOfPin({ x: left, y: bottom }, width, firstTurn(pin));
  });
  const found = placeLabels(places, frame, over);
  pins.forEach((pin, k) => pin.classList.add(...TURNS[firstTurn(pin) ^ (found[k] ?? 0)]));
  return !found.includes(null);
}

function nameOn(words: HTMLElement, pixels: number): Name {
  const anchor = words.parentElement!.getBoundingClientRect();
  const least = words.dataset.lies === 'beside' ? SMALLEST_PX : 0;
  const half = {
    x: Math.max(least, Number(words.dataset.across) * pixels),
    y: Math.max(least, Number(words.dataset.up) * pixels),
  };
  const body = {
    left: anchor.left - half.x,
    right: anchor.left + half.x,
    top: anchor.top - half.y,
    bottom: anchor.top + half.y,
  };
  return { words, anchor, body, width: words.offsetWidth, height: words.offsetHeight };
}

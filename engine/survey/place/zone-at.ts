import file from './zones.json' with { type: 'json' };

/** The coarsest cells over the world. */
const COLUMNS = 48;
const ROWS = 24;
/** Written before a cell that is four quarters, and for a zone that has not been named before. */
const QUARTERED = '#'.charCodeAt(0);
const NEXT_NAME = '!'.charCodeAt(0);

/**
 * The IANA time zone of a place. Near a border it may be the neighbour's: show it and let it be changed.
 * @throws RangeError beyond ± 90° or ± 180°
 */
export function zoneAt(latitude: number, longitude: number): string {
  if (!(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180))
    throw new RangeError(`No place at latitude ${latitude}°, longitude ${longitude}°.`);
  const x = Math.min(((180 + longitude) / 360) * COLUMNS, COLUMNS * (1 - Number.EPSILON));
  const y = Math.min(((90 - latitude) / 180) * ROWS, ROWS * (1 - Number.EPSILON));
  const zones = zonesInOrder();
  for (let row = 0; row < ROWS; row++) {
    for (let column = 0; column < COLUMNS; column++) {
      const zone = zoneInCell(zones, x - column, y - row);
      if (zone !== null) return zone;
    }
  }
  throw new Error('The table of time zones has a hole.');
}

/**
 * Reads one cell, quarters and all, and so moves on to the next one.
 * @param x From the cell's western edge, in its widths; `y` from its northern one.
 * @returns The zone there, or null when the place is not in the cell.
 */
function zoneInCell(next: () => string | null, x: number, y: number): string | null {
  const zone = next();
  if (zone !== null) return x >= 0 && x < 1 && y >= 0 && y < 1 ? zone : null;
  let found: string | null = null;
  for (const south of [0, 1]) for (const east of [0, 1]) found = zoneInCell(next, 2 * x - east, 2 * y - south) ?? found;
  return found;
}

/**
 * Gives cell after cell its zone, null for one that is quartered. A zone is written as how many others have been met
 * since it was.
 */
function zonesInOrder(): () => string | null {
  const recent: string[] = [];
  let named = 0;
  let at = 0;
  return () => {
    const code = file.cells.charCodeAt(at++);
    if (code === QUARTERED) return null;
    const zone = code === NEXT_NAME ? file.names[named++] : recent.splice(code < 256 ? code - 36 : code - 256, 1)[0];
    recent.unshift(zone);
    return zone;
  };
}

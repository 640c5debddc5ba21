/**
 * Drawings for other programs as DXF, in the form that every reader knows (AutoCAD Release 12, ASCII). Metres; x right,
 * y up, z up.
 */

type Point = readonly [x: number, y: number, z?: number];

export type DxfEntity =
  | { readonly kind: 'line'; readonly layer: string; readonly from: Point; readonly to: Point }
  | { readonly kind: 'polyline'; readonly layer: string; readonly points: readonly Point[]; readonly closed: boolean }
  | { readonly kind: 'circle'; readonly layer: string; readonly center: Point; readonly radius: number }
  | {
      readonly kind: 'text';
      readonly layer: string;
      readonly at: Point;
      readonly height: number;
      readonly text: string;
    };

/** A group: its code and its value, a line each. */
type Group = readonly [code: number, value: string | number];

export function dxfText(entities: readonly DxfEntity[]): string {
  const layers = [...new Set(entities.map(({ layer }) => layerName(layer)))];
  const groups: Group[] = [
    [0, 'SECTION'],
    [2, 'HEADER'],
    [9, '$ACADVER'],
    [1, 'AC1009'],
    // Metres.
    [9, '$INSUNITS'],
    [70, 6],
    [0, 'ENDSEC'],
    [0, 'SECTION'],
    [2, 'TABLES'],
    [0, 'TABLE'],
    [2, 'LAYER'],
    [70, layers.length],
    ...layers.flatMap((name): Group[] => [
      [0, 'LAYER'],
      [2, name],
      [70, 0],
      [62, 7],
      [6, 'CONTINUOUS'],
    ]),
    [0, 'ENDTAB'],
    [0, 'ENDSEC'],
    [0, 'SECTION'],
    [2, 'ENTITIES'],
    ...entities.flatMap(groupsOf),
    [0, 'ENDSEC'],
    [0, 'EOF'],
  ];
  const lines = groups.map(([code, value]) => `${code}\r\n${typeof value === 'number' ? plain(value) : value}\r\n`);
  return lines.join('');
}

function groupsOf(entity: DxfEntity): Group[] {
  const layer: Group = [8, layerName(entity.layer)];
  switch (entity.kind) {
    case 'line':
      return [[0, 'LINE'], layer, ...at(entity.from, 10), ...at(entity.to, 11)];
    case 'circle':
      return [[0, 'CIRCLE'], layer, ...at(entity.center, 10), [40, entity.radius]];
    case 'text':
      return [[0, 'TEXT'], layer, ...at(entity.at, 10), [40, entity.height], [1, ascii(entity.text)]];
    case 'polyline':
      return [
        [0, 'POLYLINE'],
        layer,
        [66, 1],
        ...at([0, 0, 0], 10),
        [70, entity.closed ? 1 : 0],
        ...entity.points.flatMap((point): Group[] => [[0, 'VERTEX'], layer, ...at(point, 10)]),
        [0, 'SEQEND'],
      ];
  }
}

/** A point's three groups, ten apart. */
function at([x, y, z = 0]: Point, code: number): Group[] {
  return [
    [code, x],
    [code + 10, y],
    [code + 20, z],
  ];
}

/** Names of layers hold capitals, digits and few signs. */
function layerName(name: string): string {
  return name.toUpperCase().replaceAll(/[^A-Z0-9_-]/g, '_');
}

/** On one line; other letters as this form writes them. */
function ascii(text: string): string {
  return text
    .replaceAll(/[\r\n]+/g, ' ')
    .replaceAll(
      /[^\x20-\x7e]/gu,
      (letter) => `\\U+${(letter.codePointAt(0) ?? 63).toString(16).toUpperCase().padStart(4, '0')}`,
    );
}

/** To a hundredth of a millimetre, never with an exponent; whole numbers of flags stay whole. */
function plain(value: number): string {
  return Number.isInteger(value) ? String(value) : value.toFixed(5);
}

/** The shopping list with its cost: every line by aisle, in packs, with spares for what gets lost. */
import type { Plan, StockTube } from '../../plan/types.ts';
import { formatCut } from '../../plan/units.ts';
import type { Units } from '../../plan/units.ts';
import { socketsOf } from '../layout/fittings.ts';
import type { FrameBrief, FrameModel } from '../layout/model.ts';
import { currencyOf, priceOf } from './prices.ts';
import type { Price, PriceKey } from './prices.ts';
import { stockCloth } from './stock.ts';
import type { AnchorPlan, ClothPiece, ClothPlan, Cost, CostItem, CutPlan, Fitting } from '../types.ts';

/** Spares of everything that is small and easily lost. */
const SPARE = 0.1;
const PACK = 10;
/** A steel rod for the lower hem of a drop. [m] */
const HEM_ROD = 2;
/** Tube from this diameter on takes heavy corners. [m] */
const HEAVY = 0.04;
const ROLL_STEP = 0.1;

const JOINT_PRICES: Readonly<Record<string, PriceKey>> = {
  '2-way corner': 'corner2',
  '3-way corner': 'corner3',
  '3-way tee': 'tee3',
  '4-way': 'way4',
  '5-way': 'way5',
  'flat 4-way cross': 'cross4',
  'side clamp': 'clamp',
  'brace clamp': 'clamp',
  foot: 'foot',
};

export interface ShoppingInput {
  readonly plan: Plan;
  readonly model: FrameModel;
  readonly brief: FrameBrief;
  readonly cutting: CutPlan;
  readonly fittings: readonly Fitting[];
  readonly cloth: ClothPlan;
  readonly anchors: AnchorPlan;
}

export function costOfFrame(input: ShoppingInput, units: Units): Cost {
  const items = [...tubeItems(input), ...jointItems(input), ...clothItems(input, units), ...anchorItems(input)];
  const known = items.filter((item) => item.amount !== null);
  const missing = items.filter((item) => item.amount === null).map((item) => item.name);
  if (input.anchors.ground === null) missing.push('anchors (the ground is not known)');
  const examples = known.some((item) => item.priceFrom === 'example');
  return {
    currency: currencyOf(input.plan),
    total: known.length === 0 ? null : cents(known.reduce((sum, item) => sum + (item.amount ?? 0), 0)),
    items,
    missing,
    note: `${examples ? 'Example prices, rough: check your shop and type yours.' : known.length > 0 ? 'Your own prices.' : 'No prices yet: type yours.'}${missing.length > 0 ? ` Not in the total: ${missing.join(', ')}.` : ''}`,
  };
}

function tubeItems({ plan, cutting, brief }: ShoppingInput): CostItem[] {
  return brief.lengths.flatMap((tube: StockTube) => {
    const count = cutting.tubes.filter((cut) => cut.tube === tube.id).length;
    // A shop's own list holds its prices; the price of a usual tube is remembered by the tube's id.
    const key = brief.ownTubes ? null : tube.id;
    const own = brief.ownTubes || plan.stock?.prices?.[tube.id] !== undefined;
    const price: Price = {
      key,
      price: tube.price ?? null,
      from: tube.price === undefined ? 'none' : own ? 'yours' : 'example',
    };
    return count === 0 ? [] : [line(`tube-${tube.id}`, 'Tube', tube.name, count, count, 'tube', 1, price, tube.length)];
  });
}

function jointItems({ plan, model, fittings, brief }: ShoppingInput): CostItem[] {
  const joints = fittings.map((fitting) => {
    const kind = fitting.kind.replace(', adjustable', '');
    const adjustable = kind !== fitting.kind;
    const heavy = kind === '3-way corner' && brief.tube.outside >= HEAVY;
    const key = adjustable ? 'adjustable' : heavy ? 'corner3Heavy' : JOINT_PRICES[kind];
    return line(
      `joint-${fitting.kind}`,
      'Joints and fixings',
      fitting.kind,
      fitting.count,
      fitting.count,
      'piece',
      1,
      priceOf(plan, key),
    );
  });
  const clamps = model.joints.filter((joint) => joint.kind === 'brace clamp' || joint.kind === 'side clamp').length;
  const screws = model.joints.reduce((sum, joint) => sum + socketsOf(joint.kind), 0) + clamps;
  return [
    ...joints,
    spared('screws', 'Joints and fixings', 'set screws or eye-bolts, one a socket', screws, priceOf(plan, 'screw')),
    line(
      'zinc-paint',
      'Joints and fixings',
      'zinc paint for cut ends, small tin',
      1,
      1,
      'tin',
      1,
      priceOf(plan, 'zincPaint'),
    ),
  ];
}

function clothItems({ plan, cloth, model }: ShoppingInput, units: Units): CostItem[] {
  const pieces = oncePerName(cloth.pieces.map((piece, index) => clothItem(plan, piece, index, units)));
  const ties = cloth.pieces.reduce((sum, piece) => sum + piece.ties, 0);
  const rolls = cloth.pieces.filter((piece) => piece.buy === 'from the roll');
  const clips = rolls.reduce((sum, piece) => sum + piece.ties, 0);
  const rods = model.cloths.reduce(
    (sum, piece) => sum + (piece.where.startsWith('drop') ? Math.ceil(piece.opening[0] / HEM_ROD - 1e-9) : 0),
    0,
  );
  return [
    ...pieces,
    spared('ties', 'Cloth and ties', 'elastic ties with a ball', ties, priceOf(plan, 'tie')),
    ...(clips > 0
      ? [spared('clips', 'Cloth and ties', 'plastic snap clips for the cloth’s edge', clips, priceOf(plan, 'clip'))]
      : []),
    ...(rolls.length > 0
      ? [
          line(
            'thread',
            'Cloth and ties',
            'UV-proof polyester thread, one spool',
            1,
            1,
            'spool',
            1,
            priceOf(plan, 'thread'),
          ),
        ]
      : []),
    ...(rods > 0
      ? [
          line(
            'hem-rods',
            'Cloth and ties',
            'steel rods, 8 mm × 2 m (5/16 in × 6 1/2 ft), for the lower hems',
            rods,
            rods,
            'piece',
            1,
            priceOf(plan, 'hemRod'),
          ),
        ]
      : []),
  ];
}

function clothItem(plan: Plan, piece: ClothPiece, index: number, units: Units): CostItem {
  const percent = `${Math.round(piece.density * 100)} %`;
  const id = `cloth-${index + 1}`;
  if (piece.buy === 'ready-made') {
    const row = stockCloth(plan).find(
      ({ width, length }) =>
        length !== undefined &&
        Math.min(width, length) === piece.rollWidth &&
        Math.max(width, length) === piece.rollLength,
    );
    const made = priceOf(plan, 'clothMade');
    const area = piece.rollWidth * piece.rollLength;
    const price: Price =
      row?.price !== undefined
        ? { key: null, price: row.price, from: 'yours' }
        : { ...made, price: made.price === null ? null : cents(made.price * area) };
    return line(
      id,
      'Cloth and ties',
      `shade cloth ${percent} for the ${piece.where}, hemmed with eyelets, ${formatCut(piece.finished[0], units)} ` +
        `× ${formatCut(piece.finished[1], units)}`,
      1,
      1,
      'panel',
      1,
      price,
    );
  }
  const length = Math.ceil(piece.rollLength / ROLL_STEP - 1e-9) * ROLL_STEP;
  const row = stockCloth(plan).find(
    (candidate) =>
      candidate.width === piece.rollWidth && candidate.price !== undefined && candidate.length !== piece.rollWidth,
  );
  const perArea: Price =
    row?.price !== undefined
      ? {
          key: null,
          price: row.length === undefined ? row.price : cents(row.price / (row.length * row.width)),
          from: 'yours',
        }
      : priceOf(plan, 'clothRoll');
  const name =
    `knitted shade cloth ${percent} for the ${piece.where}: ${formatCut(length, units)} off a roll ` +
    `${formatCut(piece.rollWidth, units)} wide`;
  const area = cents(length * piece.rollWidth);
  return line(id, 'Cloth and ties', name, area, area, 'm²', 1, perArea);
}

/** Pieces of one kind on one line. */
function oncePerName(items: readonly CostItem[]): CostItem[] {
  const firsts = items.filter((item, index) => items.findIndex(({ name }) => name === item.name) === index);
  return firsts.map((first) => {
    const same = items.filter(({ name }) => name === first.name);
    if (same.length === 1) return first;
    const sum = (of: (item: CostItem) => number): number => cents(same.reduce((total, item) => total + of(item), 0));
    return {
      ...first,
      name: `${first.name}, ${same.length} times`,
      need: sum(({ need }) => need),
      count: sum(({ count }) => count),
      amount: first.amount === null ? null : sum(({ amount }) => amount ?? 0),
    };
  });
}

function anchorItems({ plan, model, anchors, brief }: ShoppingInput): CostItem[] {
  const aisle = 'Ground and anchors';
  if (anchors.ground === null) return [];
  if (anchors.footing !== null) {
    const feet = model.joints.filter((joint) => joint.kind === 'foot').length;
    const onRails = brief.bottomRails ? model.posts.filter((post) => post.role !== 'inner').length : 0;
    const bolts = anchors.kind === 'sunk' ? 0 : 2 * feet;
    return [
      line(
        'concrete',
        aisle,
        'ready-mixed dry concrete, bags of 25 kg (55 lb)',
        anchors.footing.bags,
        anchors.footing.bags,
        'bag',
        1,
        priceOf(plan, 'concrete'),
      ),
      ...(bolts > 0
        ? [
            line(
              'hold-downs',
              aisle,
              'bent anchor bolts, M10 × 200 (3/8 × 8 in), nuts and washers, two a foot',
              bolts,
              bolts,
              'piece',
              1,
              priceOf(plan, 'holdDown'),
            ),
          ]
        : []),
      ...(onRails > 0
        ? [
            line(
              'u-bolts',
              aisle,
              'U-bolts, M10 (3/8 in), for the bottom rail, two a post',
              2 * onRails,
              2 * onRails,
              'piece',
              1,
              priceOf(plan, 'holdDown'),
            ),
          ]
        : []),
    ];
  }
  const feet = model.posts.length + model.tubes.filter((tube) => tube.part === 'stay').length;
  const straps = line(
    'straps',
    aisle,
    'straps with ratchet, one a post or stay',
    feet,
    feet,
    'piece',
    1,
    priceOf(plan, 'strap'),
  );
  if (anchors.kind === 'stakes')
    return [
      line(
        'stakes',
        aisle,
        'rebar stakes, 12 mm × 0.6 m (1/2 in × 2 ft), with caps',
        anchors.count,
        anchors.count,
        'piece',
        1,
        priceOf(plan, 'stake'),
      ),
      straps,
    ];
  if (anchors.kind === 'augers')
    return [
      line(
        'augers',
        aisle,
        'garden augers, 30 to 40 cm (12 to 16 in)',
        anchors.count,
        anchors.count,
        'piece',
        1,
        priceOf(plan, 'auger'),
      ),
      straps,
    ];
  return [
    line(
      'water-cans',
      aisle,
      'water cans with a lid, 25 litres (6.6 gallons)',
      anchors.count,
      anchors.count,
      'piece',
      1,
      priceOf(plan, 'waterCan'),
    ),
    straps,
  ];
}

function spared(id: string, aisle: string, name: string, need: number, price: Price): CostItem {
  const packs = Math.ceil((need * (1 + SPARE)) / PACK - 1e-9);
  return line(id, aisle, name, need, packs * PACK, 'piece', PACK, price);
}

function line(
  id: string,
  aisle: string,
  name: string,
  need: number,
  count: number,
  unit: string,
  pack: number,
  { key, price, from }: Price,
  length?: number,
): CostItem {
  return {
    id,
    aisle,
    name,
    need,
    count,
    unit,
    pack,
    price,
    amount: price === null ? null : cents(price * count),
    priceFrom: from,
    priceKey: key,
    ...(length === undefined ? {} : { length }),
  };
}

function cents(amount: number): number {
  return Math.round(amount * 100) / 100;
}

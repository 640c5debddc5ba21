import { METRES_PER_FOOT } from '../../../engine/index.ts';

/** Longest the bar may get. [px] */
const MOST_PX = 150;
/** Whole numbers a bar may show. */
const STEPS = [1, 2, 4, 10, 20, 40, 100];

/** The longest round length that fits, and its width. @param pixels a metre */
function barFor(
  pixels: number,
  units: 'metric' | 'imperial',
): { readonly length: number; readonly unit: string; readonly widthPx: number } {
  const perUnit = units === 'metric' ? pixels : pixels * METRES_PER_FOOT;
  const length = STEPS.findLast((step) => step * perUnit <= MOST_PX) ?? 0.5;
  return { length, unit: units === 'metric' ? 'm' : 'ft', widthPx: length * perUnit };
}

interface Props {
  readonly pixels: number;
  readonly units: 'metric' | 'imperial';
}

/** A ruler's end lying on the paper: two inked quarters, two blank. */
export function ScaleBar({ pixels, units }: Props) {
  const { length, unit, widthPx } = barFor(pixels, units);
  const quarter = widthPx / 4;
  return (
    <svg
      class="scale-bar"
      width={widthPx + 46}
      height="26"
      role="img"
      aria-label={`Scale: the bar is ${length} ${unit} long`}
    >
      <g transform="translate(7 15)">
        {[0, 1, 2, 3].map((k) => (
          <rect
            key={k}
            x={k * quarter}
            y={k % 2 === 0 ? 0 : 3}
            width={quarter}
            height={k % 2 === 0 ? 6 : 3}
            class={k % 2 === 0 ? 'inked' : 'blank'}
          />
        ))}
        <path d={`M0 0V6M${widthPx} -1V7`} />
        <text x="0" y="-4" text-anchor="middle">
          0
        </text>
        <text x={widthPx} y="-4" text-anchor="middle">
          {length}
        </text>
        <text x={widthPx + 7} y="6">
          {unit}
        </text>
      </g>
    </svg>
  );
}

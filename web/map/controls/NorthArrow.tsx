interface Props {
  /** True bearing of the paper's upward direction. [°] */
  readonly upBearing: number;
  readonly guessed: boolean;
}

/** Which way true north lies on this paper: a garden line's reel and needle. */
export function NorthArrow({ upBearing, guessed }: Props) {
  const words =
    `True north lies ${Math.abs(Math.round(upBearing))}° ` +
    `${upBearing >= 0 ? 'to the left of' : 'to the right of'} the paper's upper edge`;
  return (
    <svg
      class={guessed ? 'north-arrow guessed' : 'north-arrow'}
      viewBox="-32 -32 64 64"
      width="64"
      height="64"
      role="img"
      aria-label={upBearing === 0 ? 'True north is straight up' : words}
    >
      <g transform={`rotate(${-upBearing})`}>
        <circle r="15" class="reel" />
        <path class="needle" d="M0 19L0 -17" />
        <path class="needle-head" d="M0 -20L4.5 -8Q0 -10.5 -4.5 -8Z" />
        <path class="needle" d="M-4 19H4" />
        <text y="-22" text-anchor="middle" transform={`rotate(${upBearing} 0 -26)`}>
          N
        </text>
      </g>
    </svg>
  );
}

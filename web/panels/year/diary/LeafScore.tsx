/** Share of the leaf that is burnt, by score; a tip at 1, and nothing green at 5. */
const BURNT = [0, 0.12, 0.25, 0.5, 0.7, 1] as const;
const LEAF = 'M20 3C35 12 34 30 20 41C6 30 5 12 20 3Z';

/** One step of the damage scale as a leaf seen from above: black is what burnt. The words beside it say the same. */
export function LeafScore({ score }: { readonly score: number }) {
  const burnt = BURNT[Math.max(0, Math.min(5, Math.round(score)))];
  return (
    <svg class="leaf-score" viewBox="0 0 40 48" aria-hidden="true">
      <path class="leaf" d={LEAF} />
      <path class="leaf-burnt" d={LEAF} style={{ clipPath: `inset(0 0 ${((1 - burnt) * 100).toFixed(0)}% 0)` }} />
      <path class="leaf-rib" d="M20 8V46M20 18l7-4M20 18l-7-4M20 28l8-5M20 28l-8-5" />
    </svg>
  );
}

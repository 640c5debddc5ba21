/** "8.4 K·h a day": heat over a plant's limit, the project's measure of harm. */
export function harmWords(harm: number | null): string {
  return harm === null ? '–' : `${harm.toFixed(1)} K·h`;
}

export function percentWords(share: number): string {
  return `${Math.round(share * 100)} %`;
}

export function moneyWords(cost: number | null, currency: string): string {
  return cost === null ? 'price not known' : `${Math.round(cost)} ${currency}`;
}

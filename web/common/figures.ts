/** "8.4 K·h a day": heat over a plant's limit, the project's measure of harm. */
export function harmWords(harm: number | null): string {
  return harm === null ? '–' : `${harm.toFixed(1)} K·h`;
}

export function moneyWords(cost: number | null, currency: string): string {
  return cost === null ? 'price not known' : `${Math.round(cost)} ${currency}`;
}

/** Light that is not told apart from none lost. [mol/m²] */
export const LESS_LIGHT = 0.5;

/** Up to these shares of an effect its doubt leaves it sure, or fairly sure. Our choice. */
const SURE = 0.25;
const FAIRLY_SURE = 0.6;

/** How sure an effect is, by its own ±. */
export function sureWords(effect: number, pm: number): string {
  return ['rough', 'fairly sure', 'sure'][sureStep(effect, pm)];
}

/** The same as dots: three are sure, one is rough. */
export function sureMarks(effect: number, pm: number): string {
  return ['●○○', '●●○', '●●●'][sureStep(effect, pm)];
}

function sureStep(effect: number, pm: number): 0 | 1 | 2 {
  const size = Math.abs(effect);
  return pm <= SURE * size ? 2 : pm <= FAIRLY_SURE * size ? 1 : 0;
}

/** Whether the open sea is within some 20 km: it tells which towns' weather is the yard's. */
export const SEA_CHOICES = { unknown: 'not known', yes: 'yes', no: 'no' } as const;
export type SeaAnswer = keyof typeof SEA_CHOICES;

export function bySeaOf(answer: SeaAnswer): boolean | undefined {
  return answer === 'unknown' ? undefined : answer === 'yes';
}

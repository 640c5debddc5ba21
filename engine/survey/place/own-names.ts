/**
 * What people call towns whose names the list has in English, or has otherwise than most: the usual ones, from memory,
 * as `plain` writes them.
 */
export const OWN_NAMES: Readonly<Record<string, readonly string[] | undefined>> = {
  Athens: ['athina', 'αθηνα'],
  Florence: ['firenze'],
  Genoa: ['genova'],
  Icel: ['mersin'],
  Iraklio: ['heraklion'],
  Lisbon: ['lisboa'],
  Marrakesh: ['marrakech'],
  'Mexico City': ['ciudad de mexico', 'cdmx'],
  Milan: ['milano'],
  Munich: ['munchen'],
  Naples: ['napoli'],
  Prague: ['praha'],
  Rome: ['roma'],
  Seville: ['sevilla'],
  Thessaloniki: ['saloniki'],
  Turin: ['torino'],
  Vienna: ['wien'],
};

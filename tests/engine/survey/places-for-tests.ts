import type { Finding } from '../../../engine/survey/estimate.ts';
import type { Place } from '../../../engine/survey/place/sun-at.ts';

/** Invented yards: a low desert, an Andalusian courtyard, a river town in South Australia. */
export const DESERT: Place = { latitude: 33.4, longitude: -112, timeZone: 'America/Phoenix', elevation: 340 };
export const COURTYARD: Place = { latitude: 37.88, longitude: -4.78, timeZone: 'Europe/Madrid', elevation: 120 };
export const LANE: Place = { latitude: -34.45, longitude: 140.57, timeZone: 'Australia/Adelaide', elevation: 40 };

export function reasonOf(finding: Finding<unknown>): string {
  if (finding.ok) throw new Error(`not refused: ${JSON.stringify(finding.value)}`);
  return finding.reason;
}

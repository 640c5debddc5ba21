import type { PlantRow } from '../../plan/types.ts';
import { formatStretch } from '../../plan/units/clock.ts';
import {
  bareHeatLimit,
  bareTemperature,
  formatTemperature,
  formatTemperatureDifference,
  formatPlusMinus,
  formatShare,
} from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { agreeingWith } from '../../plan/words/agreement.ts';
import { compassWord } from '../../plan/words/compass-word.ts';
import { capital } from '../../plan/words/first-letter.ts';
import { isSmallFruit } from '../leaf/spread.ts';
import { leastLight } from '../light/light-class.ts';
import type { ClothNow, LeafHeat, Nine, PlantKind, PlantSide, Stretch, Verdict } from '../types.ts';
import { clothClause } from './cloth-now.ts';
import { isCoolCrop, sowCool } from './cool-season.ts';
import type { Limit } from './limit.ts';

/** All that a verdict is told from. */
export interface Findings {
  readonly name: string;
  readonly kind: PlantKind;
  /** [m] */
  readonly height: number;
  readonly row: PlantRow;
  readonly verdict: Verdict;
  /** Leaves less than 2 K warmer or cooler would get another verdict. */
  readonly close: boolean;
  readonly leaf: LeafHeat;
  readonly limit: Limit;
  readonly when: Stretch | null;
  /** From sunrise to sunset of that day; `null` where there is none. */
  readonly sunUp: Stretch | null;
  /** The worst point; `null` of a bed. */
  readonly side: PlantSide | null;
  /** Where the top is the worst: the worst of the eight bearings, if the verdict holds there too. [°] */
  readonly flank: number | null;
  /** How that sun comes: "coming over the low wall"; `null` where the beam has next to no part in it. */
  readonly sunCame: string | null;
  readonly cloth: ClothNow | null;
  /** Whether walls throw something on it. */
  readonly amongWalls: boolean;
  /** At its top; a bed's mean. */
  readonly light: Nine;
  /** Year of planting, if known. */
  readonly plantedYear: string | null;
  readonly units: Units;
}

/** The verdict in a sentence or three that a person can act on. */
export function sentenceOf(found: Findings): string {
  return verdictSentence(found) + closeCall(found);
}

function verdictSentence(found: Findings): string {
  const who = agreeingWith(found.name);
  switch (found.verdict) {
    case 'will burn':
      return `${found.name}: will burn ${where(found)}; ${surface(found)}.${hardening(found)}${clothFor(found)}`;
    case 'at risk':
      return `${found.name}: at risk ${where(found)}; ${surface(found)}.${hardening(found)} ${waterFirst(found)}`;
    case 'too dark':
      return (
        `${found.name}: too dark${found.kind === 'bed' ? '' : ` at ${who.their} top`}; ` +
        `${lightShort(found)}.${heatAnyway(found)}`
      );
    case 'no shade needed':
      return (
        `${found.name}: no shade needed; ${who.their} kind takes this sun. ${capital(surface(found))}. ` +
        `Water ${who.them} before a heatwave.`
      );
    case 'fine once established':
      return (
        `${found.name}: fine once established, and ${who.they} ${who.are}${planted(found)}: no shade needed. ` +
        `${capital(surface(found))}. Water ${who.them} before a heatwave.`
      );
    case 'fine':
      return `${found.name}: fine; ${surface(found)}.`;
  }
}

/** What is said of a plant that names no row. */
export function unnamedSentence(name: string, light: Nine, gradeWord: string): string {
  const { they, are, does } = agreeingWith(name);
  return (
    `${name}: ${light.sunHours.toFixed(1)} h of sun a day, hot sun ${light.hotLoad.toFixed(1)} MJ/m² ` +
    `(${gradeWord}). Say which plant ${they} ${are} and ${they} ${does('get')} a verdict.`
  );
}

function where(found: Findings): string {
  const { when, sunUp, sunCame, units } = found;
  const part = partWords(found);
  const time = when === null ? '' : `, ${formatStretch(when, units, sunUp)}`;
  return `${part}${time}, ${sunCame === null ? 'from the hot air more than from the sun' : `the sun ${sunCame}`}`;
}

function partWords({ name, side, flank, kind }: Findings): string {
  if (kind === 'bed') return 'where it is sunniest';
  const { their } = agreeingWith(name);
  if (side !== 'top' && side !== null) return `on ${their} ${compassWord(side)} side`;
  return flank === null ? `at ${their} top` : `at ${their} top and on ${their} ${compassWord(flank)} side`;
}

/** "a thirsty leaf about 51 °C (± 4) on the heatwave day, a watered one 46, limit 44" */
function surface({ row, leaf, units, amongWalls }: Findings): string {
  const degrees = (celsius: number) => formatTemperature(celsius, units);
  const limit = bareHeatLimit(leaf.limit, units);
  const pm = `(${formatPlusMinus(leaf.spread.thirsty, units)})`;
  if (row.limitOf === 'fruit') {
    const aside = fruitAside(row, amongWalls);
    const skin = `the bare fruit’s skin about ${degrees(leaf.thirsty)} ${pm}${aside}${aside === '' ? '' : ','}`;
    return `${skin} on the heatwave day, limit ${limit}`;
  }
  return (
    `a thirsty leaf about ${degrees(leaf.thirsty)} ${pm} on the heatwave day, a watered one ` +
    `${bareTemperature(leaf.watered, units)}, limit ${limit}`
  );
}

/** What a fruit’s number leaves out, after it. */
export function fruitAside(row: PlantRow, amongWalls: boolean): string {
  const less = isSmallFruit(row) ? ', small as it is rather less' : '';
  return `${less}${amongWalls ? ', what walls throw on it not counted' : ''}`;
}

function hardening({ name, limit, units }: Findings): string {
  if (!limit.unhardened) return '';
  const { they, were, them } = agreeingWith(name);
  return (
    ` The limit is ${formatTemperatureDifference(2, units)} lower: ${they} ${were} planted or moved less than two ` +
    `weeks before. Harden ${them} off first, morning sun before afternoon sun.`
  );
}

function clothFor(found: Findings): string {
  const clause = clothClause(found.row, found.cloth, found.height);
  const { their, them } = agreeingWith(found.name);
  const cool = isCoolCrop(found.row) ? `, or ${sowCool(them)}` : '';
  const leaves = found.row.limitOf === 'fruit' ? ' Leave every leaf over the fruit.' : '';
  if (clause !== null) return `${leaves} ${found.cloth?.how === 'under' ? 'Hang' : 'Use'} ${clause}${cool}.`;
  if (found.cloth === null) return '';
  const soak = leaves === '' ? `: soak ${them} before a heatwave` : '';
  return `${leaves} ${capital(their)} cloth is as thick as suits ${them}${soak}.`;
}

function waterFirst(found: Findings): string {
  const clause = clothClause(found.row, found.cloth, found.height);
  if (found.row.limitOf === 'fruit')
    return `Water does not cool the fruit${clause === null ? '.' : `; ${clause}${isOfTheSun(found)} does.`}`;
  const or = found.sunCame === null || clause === null ? '.' : `, or hang ${clause}.`;
  return `Water decides: soak ${agreeingWith(found.name).them} before a heatwave${or}`;
}

/** A bare range of cloth says of what it stops so much. */
function isOfTheSun({ cloth }: Findings): string {
  return cloth === null ? ' of the sun' : '';
}

function lightShort({ name, row, light }: Findings): string {
  const { they, does } = agreeingWith(name);
  const share = formatShare(light.dailyLight / leastLight(row));
  return `${they} ${does('get')} ${share} of the light that ${they} ${does('need')}`;
}

function heatAnyway(found: Findings): string {
  if (found.when === null) return '';
  const { them } = agreeingWith(found.name);
  const when = formatStretch(found.when, found.units, found.sunUp);
  return ` Even so ${surface(found)}, ${when}: give ${them} more light, but morning light.`;
}

function planted({ plantedYear }: Findings): string {
  return plantedYear === null ? '' : ` (planted ${plantedYear})`;
}

function closeCall({ name, close, units }: Findings): string {
  if (!close) return '';
  const by = formatTemperatureDifference(2, units);
  return ` A close call: ${by} more or less would change this. Watch ${agreeingWith(name).them} on hot days.`;
}

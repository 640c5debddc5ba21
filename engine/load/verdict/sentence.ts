import { isCoolCrop, SOW_IT_COOL } from './cool-season.ts';
import { isSmallFruit } from '../leaf/spread.ts';
import { leastLight } from '../light/light-class.ts';
import type { PlantRow } from '../../plan/types.ts';
import { formatStretch } from '../../plan/units/clock.ts';
import {
  formatHeatLimit,
  formatTemperature,
  formatTemperatureDifference,
  formatPlusMinus,
} from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import type { Limit } from './limit.ts';
import { compassWord } from '../../plan/compass.ts';
import { capital } from '../../plan/list-words.ts';
import type { LeafHeat, Nine, PlantKind, PlantSide, Stretch, Verdict } from '../types.ts';

/** Cloth that hangs over or beside a plant already, and what it stops of the sun that harms there. */
export interface ClothNow {
  /** That sun comes thinned through it, or in under its edge. */
  readonly how: 'through' | 'under';
  /** 0 to 1. */
  readonly stops: number;
}

/** All that a verdict is told from. */
export interface Findings {
  readonly name: string;
  readonly kind: PlantKind;
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
  switch (found.verdict) {
    case 'will burn':
      return `${found.name}: will burn ${where(found)}; ${surface(found)}.${hardening(found)}${clothFor(found)}`;
    case 'at risk':
      return `${found.name}: at risk ${where(found)}; ${surface(found)}.${hardening(found)} ${waterFirst(found)}`;
    case 'too dark':
      return (
        `${found.name}: too dark${found.kind === 'bed' ? '' : ' at its top'}; ` +
        `${lightShort(found)}.${heatAnyway(found)}`
      );
    case 'no shade needed':
      return (
        `${found.name}: no shade needed; its kind takes this sun. ${capital(surface(found))}. Water it ` +
        `before a heatwave.`
      );
    case 'fine once established':
      return (
        `${found.name}: fine once established, and it is${planted(found)}: no shade needed. ` +
        `${capital(surface(found))}. Water it before a heatwave.`
      );
    case 'fine':
      return `${found.name}: fine; ${surface(found)}.`;
  }
}

/** What is said of a plant that names no row. */
export function unnamedSentence(name: string, light: Nine, gradeWord: string): string {
  return (
    `${name}: ${light.sunHours.toFixed(1)} h of sun a day, hot sun ${light.hotLoad.toFixed(1)} MJ/m² ` +
    `(${gradeWord}). Say which plant it is and it gets a verdict.`
  );
}

function where(found: Findings): string {
  const { when, sunUp, sunCame, units } = found;
  const place = placeOf(found);
  const time = when === null ? '' : `, ${formatStretch(when, units, sunUp)}`;
  return `${place}${time}, ${sunCame === null ? 'from the hot air more than from the sun' : `the sun ${sunCame}`}`;
}

function placeOf({ side, flank, kind }: Findings): string {
  if (kind === 'bed') return 'where it is sunniest';
  if (side !== 'top' && side !== null) return `on its ${compassWord(side)} side`;
  return flank === null ? 'at its top' : `at its top and on its ${compassWord(flank)} side`;
}

/** "a thirsty leaf about 51 °C (± 4) on the heatwave day, a watered one 46, limit 44" */
function surface({ row, leaf, units }: Findings): string {
  const degrees = (celsius: number) => formatTemperature(celsius, units);
  const bare = (celsius: number) => degrees(celsius).split(' ')[0];
  const limit = formatHeatLimit(leaf.limit, units).split(' ')[0];
  const pm = `(${formatPlusMinus(leaf.spread.thirsty, units)})`;
  if (row.limitOf === 'fruit') {
    const less = isSmallFruit(row) ? ', small as it is rather less,' : '';
    return `the fruit’s skin about ${degrees(leaf.thirsty)} ${pm}${less} on the heatwave day, limit ${limit}`;
  }
  return (
    `a thirsty leaf about ${degrees(leaf.thirsty)} ${pm} on the heatwave day, a watered one ` +
    `${bare(leaf.watered)}, limit ${limit}`
  );
}

function hardening({ limit, units }: Findings): string {
  if (!limit.unhardened) return '';
  return (
    ` The limit is ${formatTemperatureDifference(2, units)} lower: it was planted or moved less than two ` +
    `weeks before. Harden it off first, morning sun before afternoon sun.`
  );
}

function clothRange(row: PlantRow): string | null {
  if (!row.cloth) return null;
  const [least, most] = row.cloth;
  return least === most ? `${least} %` : `${least} to ${most} %`;
}

/** Cloth as it would help, in a clause: thicker than hangs there, on the side where it comes in under; null: none. */
function clothClause({ row, cloth }: Findings): string | null {
  const range = clothRange(row);
  if (range === null || cloth === null) return range === null ? null : `cloth that stops ${range}`;
  if (cloth.how === 'under') return 'a drop or a screen on that side';
  return isThin(row, cloth) ? `cloth that stops ${range} in place of ${percentOf(cloth)}` : null;
}

/** Whether cloth that hangs there is thinner than suits a plant. */
function isThin({ cloth: range }: PlantRow, cloth: ClothNow): boolean {
  return range !== null && range !== undefined && 100 * cloth.stops < range[0] - 0.5;
}

function percentOf({ stops }: ClothNow): string {
  return `${(100 * stops).toFixed(0)} %`;
}

function clothFor(found: Findings): string {
  const clause = clothClause(found);
  const cool = isCoolCrop(found.row) ? `, or ${SOW_IT_COOL}` : '';
  if (clause !== null) return ` ${found.cloth?.how === 'under' ? 'Hang' : 'Use'} ${clause}${cool}.`;
  return found.cloth === null ? '' : ` Its cloth is as thick as suits it: soak it before a heatwave.`;
}

function waterFirst(found: Findings): string {
  const clause = clothClause(found);
  if (found.row.limitOf === 'fruit')
    return `Water does not cool the fruit${clause === null ? '.' : `; ${clause}${isOfTheSun(found)} does.`}`;
  const or = found.sunCame === null || clause === null ? '.' : `, or hang ${clause}.`;
  return `Water decides: soak it before a heatwave${or}`;
}

/** A bare range of cloth says of what it stops so much. */
function isOfTheSun({ cloth }: Findings): string {
  return cloth === null ? ' of the sun' : '';
}

function lightShort({ row, light }: Findings): string {
  const share = (100 * light.dailyLight) / leastLight(row);
  return `it gets ${share.toFixed(0)} % of the light that it needs`;
}

function heatAnyway(found: Findings): string {
  if (found.when === null) return '';
  const when = formatStretch(found.when, found.units, found.sunUp);
  return ` Even so ${surface(found)}, ${when}: give it more light, but morning light.`;
}

function planted({ plantedYear }: Findings): string {
  return plantedYear === null ? '' : ` (planted ${plantedYear})`;
}

function closeCall({ close, units }: Findings): string {
  if (!close) return '';
  const by = formatTemperatureDifference(2, units);
  return ` A close call: ${by} more or less would change this. Watch it on hot days.`;
}

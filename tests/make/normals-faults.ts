import { kilometresBetween } from '../../engine/plan/geometry/lon-lat.ts';
import type { TownNormals } from '../../engine/survey/climate/blend-normals.ts';

/** A year of means is smooth: three waves a year meet every month of a true table within 1 K. [K] */
const WAVES = 3;
const OFF_WAVES = 1.2;
/** Beyond this latitude the hottest month must lie in the half year of its own summer. [°] */
const SEASONS = 23;

/** What is wrong with a table, town by town; nothing where it can be carried. */
export function faultsOf(towns: readonly TownNormals[], sources: readonly string[]): string[] {
  const faults: string[] = [];
  towns.forEach((town, index) => {
    const say = (what: string): void => void faults.push(`${town.name}, ${town.country}: ${what}`);
    faultsOfTown(town).forEach(say);
    if (!sources.includes(town.source)) say(`no source "${town.source}"`);
    for (const other of towns.slice(0, index)) {
      if (other.name === town.name && other.country === town.country) say('twice in the table');
      if (other.high.join() === town.high.join()) say(`the highs of ${other.name}, ${other.country}`);
      if (kilometresBetween(town, other) < 3) say(`in the same place as ${other.name}`);
    }
  });
  return faults;
}

function faultsOfTown({ high, low, humidity = [], latitude, longitude, elevation }: TownNormals): string[] {
  const faults: string[] = [];
  if (high.length !== 12 || low.length !== 12 || ![0, 12].includes(humidity.length)) return ['not twelve months'];
  if (![...high, ...low].every((value) => value > -30 && value < 52)) faults.push('beyond any normal');
  if (!humidity.every((value) => value > 5 && value <= 100)) faults.push('no such humidity');
  if (!high.every((value, month) => value - low[month] > 2 && value - low[month] < 25)) faults.push('highs and lows');
  if (!(Math.abs(latitude) < 60 && Math.abs(longitude) <= 180 && elevation > -430 && elevation < 4000))
    faults.push('no such place');
  for (const series of [high, low]) {
    const off = offWaves(series);
    if (Math.max(...off) > OFF_WAVES) faults.push(`month ${off.indexOf(Math.max(...off)) + 1} stands out`);
  }
  const means = high.map((value, month) => value + low[month]);
  const hottest = means.indexOf(Math.max(...means)) + 1;
  const northern = hottest >= 4 && hottest <= 10;
  if (Math.abs(latitude) > SEASONS && northern !== latitude > 0) faults.push(`hottest in month ${hottest}`);
  return faults;
}

/** How far each month lies from the mean and the first waves of the year's Fourier series. [K] */
function offWaves(series: readonly number[]): number[] {
  const turn = (wave: number, month: number): number => (2 * Math.PI * wave * month) / 12;
  const mean = series.reduce((sum, value) => sum + value, 0) / 12;
  return series.map((value, month) => {
    let smooth = mean;
    for (let wave = 1; wave <= WAVES; wave++)
      smooth += series.reduce((sum, other, k) => sum + other * Math.cos(turn(wave, month - k)), 0) / 6;
    return Math.abs(value - smooth);
  });
}

import { Kept } from '../../plan/kept.ts';
import type { Plan, Plant } from '../../plan/types.ts';
import { MS_PER_HOUR } from '../../plan/units/per-unit.ts';
import { clockNear } from '../../sun/days/zone.ts';
import type { HeatDay } from '../leaf/heat-day.ts';
import { facingCaster } from '../light/kept-caster.ts';
import type { SkyViewer } from '../light/sky-viewer.ts';
import type { PotLoad, Roots } from '../types.ts';
import { plantPoints, potPoints } from '../verdict/plant-points.ts';
import type { Yard } from '../yard.ts';
import { firstHelp } from './helps.ts';
import { type StandingPot, standingPot } from './pot-day.ts';
import { rootSpread, rootZone, type RootZone } from './root-zone.ts';

/** What a pot's wall gets in the yard's period, and how warm its roots get on the heatwave day. */
export function potLoad(yard: Yard, heat: HeatDay, plant: Plant): PotLoad {
  const sides = potSides(yard, plant);
  const mean = (key: 'sunHours' | 'hotHours') => sides.reduce((sum, side) => sum + side[key], 0) / sides.length;
  return { sunHours: mean('sunHours'), hotHours: mean('hotHours'), roots: rootsOf(yard.plan, yard.sky, heat, plant) };
}

/** The warmest root zone of a pot on the heatwave day. */
export function rootsOf(plan: Plan, sky: SkyViewer, heat: HeatDay, plant: Plant): Roots {
  return known.of([sky, plan.site, heat.samples, plant], heat.shelter, () => {
    const standing = standingPot(plan, sky, heat, plant);
    const last = knownLast.of([plan.site, heat.samples, plant], heat.shelter, () => ({ light: null, roots: null }));
    if (last.roots === null || !isSame(last.light, standing.day.light)) {
      last.light = standing.day.light;
      last.roots = rootsIn(plan, heat, standing);
    }
    return last.roots;
  });
}

/** Pots are told of by several answers of one report, and heat takes long to settle in them. */
const known = new Kept<Roots>();
/** Of yards that are held against each other most leave a pot in the light that it had. */
const knownLast = new Kept<{ light: Float64Array | null; roots: Roots | null }>();

function isSame(a: Float64Array | null, b: Float64Array): boolean {
  return a !== null && a.every((each, n) => each === b[n]);
}

function rootsIn({ site }: Plan, heat: HeatDay, standing: StandingPot): Roots {
  const zone = rootZone(standing.day, standing.pot);
  return {
    warmest: zone.warmest,
    when: clockAt(heat, zone.hour, site.timeZone),
    side: zone.bearing,
    spread: spreadOf(zone, heat),
    verdict: zone.verdict,
    help: zone.verdict === 'fine' ? null : helpOf(standing, zone),
  };
}

function helpOf(standing: StandingPot, zone: RootZone): Roots['help'] {
  const { id, warmest } = firstHelp(standing, zone);
  return { id, cooler: zone.warmest - warmest };
}

function spreadOf({ warmest }: RootZone, { day }: HeatDay): number {
  return rootSpread(warmest - day.high);
}

/** Clock time of a true solar time of the day, to the nearest ten minutes. */
function clockAt({ samples, day }: HeatDay, solarHour: number, timeZone: string): string {
  const middle = Math.floor(samples.count / 2);
  const when =
    samples.count === 0
      ? day.startMs + solarHour * MS_PER_HOUR
      : samples.when[middle] + (solarHour - samples.solarHour[middle]) * MS_PER_HOUR;
  return clockNear(when, timeZone, 10);
}

type PotSide = Pick<PotLoad, 'sunHours' | 'hotHours'>;

/**
 * Sun and hot hours on each side of a pot's wall, in the yard's period: lit only while the sun is less than a right
 * angle from its bearing.
 */
function potSides(yard: Yard, plant: Plant): PotSide[] {
  return knownSides.of([yard.sky, yard.samples, plant], '', () => sidesIn(yard, plant));
}

const knownSides = new Kept<PotSide[]>();

function sidesIn(yard: Yard, plant: Plant): PotSide[] {
  const { channels } = yard.weights;
  const { own } = plantPoints(yard.plan, plant);
  return potPoints(yard.plan, plant).map(({ side, point }): PotSide => {
    const { samples, sharesAt } = facingCaster(yard.scene, yard.samples, Number(side));
    const shares = sharesAt(point, own);
    let sunHours = 0;
    let hotHours = 0;
    for (let n = 0; n < samples.length; n++) {
      sunHours += shares[n] * channels.sunHours[samples[n]];
      hotHours += shares[n] * channels.hotHours[samples[n]];
    }
    return { sunHours, hotHours };
  });
}

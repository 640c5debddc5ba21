import { heatDayOf } from '../../load/leaf/heat-day.ts';
import { skyViewerOf } from '../../load/light/sky-viewer.ts';
import { rootsHelped } from '../../load/pot/helps.ts';
import { standingPot } from '../../load/pot/pot-day.ts';
import { rootZone, type RootZone } from '../../load/pot/root-zone.ts';
import { type Outcome, ROOT_HELPS, type RootHelpId } from '../../load/types.ts';
import type { Plan, Plant } from '../../plan/types.ts';
import { formatTemperature, formatTemperatureDifference } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { compassWord } from '../../plan/words/compass-word.ts';
import { capital } from '../../plan/words/first-letter.ts';
import { listWords } from '../../plan/words/list-words.ts';
import { namedInside } from '../../plan/words/names.ts';
import { sceneOf } from '../../scene/scene-of.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import type { LadderStep, PotRoots } from './step.ts';

/** What cools the roots by less is not told. [K] */
const WORTH_TELLING = 1;

/**
 * How hot the roots in each pot get on the heatwave day, and by how many degrees each help cools them, alone: of every
 * pot, also one that stays, and one whose leaves bear the sun.
 * @returns `null` where no pot's roots get too hot, or only because the air is
 */
export function wrapStep(plan: Plan, units: Units, weather?: Weather): Outcome<LadderStep | null> {
  const pots = plan.features.filter(
    (feature): feature is Plant => feature.kind === 'plant' && feature.container === true,
  );
  if (pots.length === 0) return { ok: true, value: null };
  const scene = sceneOf(plan);
  const heat = heatDayOf(plan, scene, { kind: 'heatwave' }, weather);
  if (!heat.ok) return heat;
  const sky = skyViewerOf(scene);
  const hot = pots
    .flatMap((pot) => {
      const standing = standingPot(plan, sky, heat.value, pot);
      const zone = rootZone(standing.day, standing.pot);
      if (zone.verdict === 'fine') return [];
      const helps = ROOT_HELPS.map((id) => ({ id, cooler: zone.warmest - rootsHelped(standing, zone, id).warmest }));
      return [{ zone, told: { plant: pot.id, warmest: zone.warmest, verdict: zone.verdict, helps } }];
    })
    .toSorted((a, b) => b.zone.warmest - a.zone.warmest);
  const named = {
    id: 'wrap',
    name: pots.length > 1 ? 'Wrap and group the pots' : 'Wrap the pot',
    serves: hot.map(({ told }) => told.plant),
    spared: null,
    sparedShare: null,
    cost: null,
    roots: hot.map(({ told }) => told),
  } as const;
  const degrees = (kelvin: number) => formatTemperatureDifference(kelvin, units);
  const most = Math.max(0, ...hot.flatMap(({ told }) => told.helps.map(({ cooler }) => cooler)));
  if (most < WORTH_TELLING) return { ok: true, value: null };
  const sentences = hot.map(({ zone, told }) => rootsSentence(plan, zone, told, pots.length > 1, units));
  const gain = `cools roots by up to ${degrees(most)}`;
  return {
    ok: true,
    value: {
      ...named,
      gain,
      effect: gain,
      sentence: `${sentences.join(' ')} It helps the roots, not the leaves.`,
    },
  };
}

function rootsSentence(
  plan: Plan,
  zone: RootZone,
  { plant, helps }: PotRoots,
  hasOthers: boolean,
  units: Units,
): string {
  const about = `${capital(namedInside(plan, plant))}: roots about ${formatTemperature(zone.warmest, units)}`;
  const toTell = helps.filter(({ id, cooler }) => cooler >= WORTH_TELLING && (hasOthers || id !== 'group'));
  if (toTell.length === 0) return `${about}; it is the air that does it.`;
  const told = toTell.map(
    ({ id, cooler }, k) =>
      `${HELPED[id].replace('SIDE', compassWord(zone.bearing))} ${formatTemperatureDifference(cooler, units)}` +
      `${k === 0 ? ' less' : ''}`,
  );
  return `${about}; ${listWords(told)}.`;
}

/** A pot after each help, shortest; SIDE is where its roots are warmest. */
const HELPED: Readonly<Record<RootHelpId, string>> = {
  white: 'in white',
  double: 'in a wider pot',
  group: 'with others close on its SIDE',
  shade: 'behind a board or cloth',
};

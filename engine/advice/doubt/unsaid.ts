/** What is in doubt though the plan says nothing of it: shelter from the wind, what cloth stops, colours of walls. */

import { type PlantFeature, plantFeatures } from '../../load/verdict/planted.ts';
import { colourOf } from '../../plan/defaults.ts';
import { middleOf } from '../../plan/edit/edit-feature.ts';
import { distance, nearestOnSegment } from '../../plan/geometry/shapes.ts';
import { isCloth } from '../../plan/kinds.ts';
import type { Building, Cloth, Colour, Feature, Plan, Shelter, Wall } from '../../plan/types.ts';
import { shelterOf } from '../../scene/shelter.ts';
import type { DoubtInput } from './types.ts';

/** How far cloth may be from what it is sold as: nets sold as 50 % were measured at 42 to 60 %. */
const SOLD_AS_PM = 0.08;
/** Walls farther from a plant are not asked their colour. [m] */
const SHINES_WITHIN = 2;
const SHELTERS: readonly Shelter[] = ['open', 'sheltered', 'court'];
const COLOURS: readonly Colour[] = ['white', 'light', 'mid', 'dark'];

/** Whether the plan says it or it is guessed from the walls drawn, a yard may be one class more or less sheltered. */
export function shelterInput(plan: Plan): DoubtInput[] {
  if (plantFeatures(plan).length === 0) return [];
  const { shelter, guessed } = shelterOf(plan);
  const shifts = besides(SHELTERS, shelter).map((other): Plan => ({ ...plan, site: { ...plan.site, shelter: other } }));
  const by = guessed ? 'guess' : (plan.site.how?.shelter?.by ?? null);
  return [{ key: 'site.shelter', kind: 'shelter', feature: null, of: 'shelter', by, pm: 1, shifts }];
}

/** What a cloth is sold as is not what it stops, unless it was measured on the spot. */
export function clothInput(plan: Plan, feature: Feature): DoubtInput[] {
  if (!isCloth(feature)) return [];
  if (feature.measuredDensity !== undefined || feature.how?.density !== undefined) return [];
  const shifts = [SOLD_AS_PM, -SOLD_AS_PM].map((by) => withFeatureIn(plan, withDensity(feature, by)));
  return [
    {
      key: `${feature.id}.density`,
      kind: 'thickness of shade',
      feature: feature.id,
      of: 'density',
      by: 'catalogue',
      pm: SOLD_AS_PM,
      shifts,
    },
  ];
}

function withDensity(cloth: Cloth, by: number): Feature {
  const off = (density: number) => Math.min(1, Math.max(0, density + by));
  if (cloth.kind === 'screen' || cloth.drops === undefined) return { ...cloth, density: off(cloth.density) };
  const drops = cloth.drops.map((drop) => ({ ...drop, density: off(drop.density) }));
  return { ...cloth, density: off(cloth.density), drops };
}

/** A wall or building whose colour nobody said, where its light and its glow reach a plant. */
export function colourInput(plan: Plan, feature: Feature): DoubtInput[] {
  if ((feature.kind !== 'wall' && feature.kind !== 'building') || feature.colour !== undefined) return [];
  if (!plantFeatures(plan).some((plant) => apart(plant, feature) <= SHINES_WITHIN)) return [];
  const shifts = besides(COLOURS, colourOf(feature)).map((colour) => withFeatureIn(plan, { ...feature, colour }));
  return [
    { key: `${feature.id}.colour`, kind: 'colour', feature: feature.id, of: 'colour', by: 'guess', pm: 1, shifts },
  ];
}

/** Between two things' middles, or the middle of one and the edges of the other. [m] */
function apart(plant: PlantFeature, solid: Wall | Building): number {
  const at = middleOf(plant);
  const edges = solid.kind === 'wall' ? solid.path : [...solid.outline, solid.outline[0]];
  return Math.min(...edges.slice(1).map((end, k) => distance(at, nearestOnSegment(at, edges[k], end))));
}

/** The words on either side of one. */
function besides<Word>(words: readonly Word[], word: Word): Word[] {
  const at = words.indexOf(word);
  return words.filter((_, k) => Math.abs(k - at) === 1);
}

/** The plan with one feature another. */
export function withFeatureIn(plan: Plan, changed: Feature): Plan {
  return { ...plan, features: plan.features.map((each) => (each.id === changed.id ? changed : each)) };
}

import { plantRowOf } from '../../plan/catalogue/plants.ts';
import type { Bed, Plan, Plant, PlantRow, Tree } from '../../plan/types.ts';

/** What is judged as a plant: plants in the ground or a pot, beds, and trees that name their plant. */
export type PlantFeature = Plant | Bed | Tree;

export function plantFeatures(plan: Plan): PlantFeature[] {
  return plan.features.filter(
    (feature): feature is PlantFeature =>
      feature.kind === 'plant' || feature.kind === 'bed' || (feature.kind === 'tree' && feature.plant !== undefined),
  );
}

/** The catalogue's or the person's row of a plant; none where it names none. */
export function rowOf(plan: Plan, feature: PlantFeature): PlantRow | undefined {
  return feature.plant === undefined ? undefined : plantRowOf(plan, feature.plant);
}

/** Whether what burns on it is the fruit, which water does not cool. @param id of a plant, bed or planted tree */
export function burnsByFruit(plan: Plan, id: string): boolean {
  const feature = plantFeatures(plan).find((plant) => plant.id === id);
  return feature !== undefined && rowOf(plan, feature)?.limitOf === 'fruit';
}

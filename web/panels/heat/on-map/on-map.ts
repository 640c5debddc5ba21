import { computed, effect } from '@preact/signals';
import { buildScene, crownsOf, shadowRingsOf, stateOf, withOptions, monthDayOf } from '../../../../engine/index.ts';
import type { PlantLoad } from '../../../../engine/index.ts';
import { contoursOf, linesOn } from '../../../charts/contours.ts';
import { evened } from '../../../charts/field.ts';
import { gradeZonesOf } from '../../../charts/grade-zones.ts';
import { SCALES } from '../../../charts/ramp.ts';
import { softened } from '../../../charts/softened.ts';
import { contourLines, gradeZones, hatched, plantMarks, printing, shadowRings } from '../../../map/laid-on/overlays.ts';
import type { PlantMark } from '../../../map/laid-on/overlays.ts';
import { reckonedPlan } from '../../../state/reckoned.ts';
import { day, heat, sunNow } from '../../../state/results.ts';
import { mapHeight, quantity, shownOptions } from '../../../state/view.ts';
import { isGraded } from '../../parts/quantity-words.ts';

/**
 * Lays contours, plant marks and the shadows of the chosen minute over the map, and keeps them so until the function it
 * returns is called.
 */
export function layHeatOverlays(): () => void {
  const shown = computed(() => heat.value.shown?.value ?? null);
  const scene = computed(() => {
    const built = withOptions(reckonedPlan.value, shownOptions.value);
    return buildScene(built.ok ? built.plan : reckonedPlan.value);
  });
  const occluders = computed(() => {
    const date = day.value.shown?.value.date;
    return date ? scene.value.states[stateOf(scene.value, monthDayOf(date))] : [];
  });
  const stops = [
    effect(() => {
      const sun = sunNow.value;
      shadowRings.value = sun
        ? shadowRingsOf(occluders.value, sun.azimuth, sun.altitude, scene.value.upBearing, mapHeight.value)
        : [];
    }),
    effect(() => {
      const result = shown.value;
      const lined = quantity.value === 'grade' ? 'hotLoad' : quantity.value;
      const even = result ? evened(result.grid, result.cells[lined]) : new Float64Array();
      contourLines.value = result
        ? contoursOf(result.grid, even, linesOn(even, SCALES[quantity.value].contours)).map(({ value, lines }) => ({
            lines: lines.map(softened),
            label: String(value),
          }))
        : [];
    }),
    effect(() => {
      const result = shown.value;
      gradeZones.value =
        result && isGraded(quantity.value) && (hatched.value || printing.value)
          ? gradeZonesOf(result.grid, result.cells.grade, crownsOf(reckonedPlan.value))
          : [];
    }),
    effect(() => {
      plantMarks.value = new Map(
        (shown.value?.plants ?? []).flatMap((plant) => (plant.sides ? [[plant.id, markOf(plant)] as const] : [])),
      );
    }),
  ];
  return () => {
    stops.forEach((stop) => stop());
    shadowRings.value = [];
    contourLines.value = [];
    gradeZones.value = [];
    plantMarks.value = new Map();
  };
}

/** Tones by scorch dose, the plant's own worst side full; nothing harmed, nothing toned. */
function markOf({ sides = [] }: PlantLoad): PlantMark {
  const dose = sides.map(({ scorchDose }) => scorchDose ?? 0);
  const worst = Math.max(...dose);
  const tone = (value: number): number => (worst > 0 ? value / worst : 0);
  const round = sides.flatMap(({ side }, index) => (side === 'top' ? [] : [dose[index]]));
  const top = sides.findIndex(({ side }) => side === 'top');
  return {
    sides: round.map(tone),
    top: tone(dose[top] ?? 0),
    worst: Math.max(...round) > 0 ? round.indexOf(Math.max(...round)) : null,
  };
}

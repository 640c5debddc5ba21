/** The engine's public face: what the command line and the page may use. Each folder appends its own lines. */
export type * from './plan/types.ts';
export { DEFAULTS, foliageFromOf, potOf, upBearingOf, worthOf } from './plan/defaults.ts';
export type {
  Cells, HotSpot, LeafHeat, LightClass, LoadResult, Nine, Outcome, PlantLoad, PlantSide, Quantity, SideLoad, SpotResult, Stretch, Verdict,
} from './load/types.ts';
export { QUANTITIES, QUANTITY_UNITS } from './load/types.ts';

export type { Crown, Occluder, Prism, Scene, Sheet, Solid, Trunk } from './scene/solids.ts';
export { buildScene, stateOf } from './scene/build.ts';
export { planDirection } from './scene/direction.ts';
export type { Passes } from './cast/passes.ts';
export type { GridSpec } from './cast/grid.ts';
export type { Blocker, RayResult } from './cast/ray.ts';
export type { PointCaster } from './cast/share.ts';
export { castRay } from './cast/ray.ts';
export { createPointCaster } from './cast/share.ts';
export { castGrid } from './cast/grid.ts';
export { skyPasses, skyRays, skyView, skyViewGrid } from './cast/sky.ts';
export { CATALOGUE, PLANT_SOURCES, nearestPlantIds, plantRowOf } from './plan/catalogue.ts';
export type { PlantSource } from './plan/catalogue.ts';
export { checkPlan } from './plan/check.ts';
export { DEMO_NAMES, demoPlan, isDemoName } from './plan/demos/index.ts';
export type { DemoName } from './plan/demos/index.ts';
export {
  area, boundsOf, canopyCorners, canopyEdge, canopyHeightOver, centroid, cleanPath, distance, distanceToPath, distanceToSegment, isClosed,
  nearestOnSegment, openRing, pathLength, pointInRing, turned,
} from './plan/geometry.ts';
export type { Bounds, SpacePoint } from './plan/geometry.ts';
export { withOptions } from './plan/options.ts';
export { parsePlan, salvagePlan } from './plan/parse.ts';
export type { ParsedPlan, SalvagedPlan } from './plan/parse.ts';
export { pointerOf, pointerToken } from './plan/pointer.ts';
export { planText } from './plan/serialize.ts';
export { difference, intersect, kinks, pointInRegion, regionArea, union } from './plan/turf.ts';
export type { Region } from './plan/turf.ts';
export {
  formatArea, formatCut, formatLength, formatLight, formatMass, formatSpeed, formatTemperature, formatTemperatureDifference, parseArea, parseLength,
  parseLight, parseMass, parseNumber, parseSpeed, parseTemperature, parseTemperatureDifference, unitsOf,
} from './plan/units.ts';
export type { Units } from './plan/units.ts';
export { inYearlySpan } from './plan/year-span.ts';

export type * from './frame/types.ts';
export type { AsBuiltNumbers } from './frame/as-built.ts';
export { withAsBuilt } from './frame/as-built.ts';
export { cautionsFor } from './frame/cautions.ts';
export { frameDrawing } from './frame/drawing.ts';
export { costOf, sheetOf } from './frame/sheet.ts';
export type { CivilDay } from './sun/zone.ts';
export { civilDay, instantOf, isTimeZone, localDate, localIso } from './sun/zone.ts';
export { dateIn, datesBetween, daysAfter } from './sun/calendar.ts';
export type { SunEvents, SunPosition } from './sun/position.ts';
export { sunPosition } from './sun/position.ts';
export type { SunTimes } from './sun/sun-times.ts';
export { sunTimes } from './sun/sun-times.ts';
export type { SkyIrradiance } from './sun/clear-sky.ts';
export { clearSky } from './sun/clear-sky.ts';
export type { MonthClimate } from './sun/climate.ts';
export { monthClimate } from './sun/climate.ts';
export type { Heat, SeasonMonth } from './sun/season.ts';
export { dateOfDay, hottestMonth, seasonDates, seasonMonths } from './sun/season.ts';
export type { Period, SampleDay, SampleResult, SampleTable } from './sun/samples.ts';
export { heatDays, samplesOf } from './sun/samples.ts';
export { skylineAltitude } from './sun/skyline.ts';
export type { Weather, WeatherMonth, WeatherPlace } from './sun/weather.ts';
export { parseEpw } from './sun/epw.ts';
export { weightsOf } from './load/weights.ts';

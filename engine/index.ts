/** The engine's public face: what the command line and the page may use. Each folder appends its own lines. */
export type * from './plan/types.ts';
export { DEFAULTS, foliageFromOf, potOf, upBearingOf, worthOf } from './plan/defaults.ts';
export type {
  Cells, HotSpot, LeafHeat, LightClass, LoadResult, Nine, Outcome, PlantLoad, PlantSide, Quantity, SideLoad, SpotResult, Stretch, Verdict,
} from './load/types.ts';
export { QUANTITIES, QUANTITY_UNITS } from './load/types.ts';

export type { Crown, Occluder, Lid, Prism, Scene, Sheet, Solid } from './scene/solids.ts';
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
export { weatherWarnings } from './sun/weather-fit.ts';
export { weightsOf } from './load/weights.ts';
export {
  addFeature, changeFeature, duplicateFeature, featureOf, freshId, middleOf, moveFeature, removeFeature, resizeFeature, setHow, turnFeature,
} from './plan/edit.ts';
export type { FeatureChanges } from './plan/edit.ts';
export { deleteCorner, insertCorner, moveCorner } from './plan/edit-corners.ts';
export type { CornersOf } from './plan/edit-corners.ts';
export { acceptOption, addOption, addToOption, changeOption, moveInOption, removeInOption, removeOption } from './plan/edit-options.ts';
export {
  appendJournal, removeJournalEntry, removePlantRow, setClimate, setClimateMonth, setPartHow, setPlan, setPlantRow, setSeason, setSite, setStock, startNextYear,
} from './plan/edit-plan.ts';
export { wrapBearing } from './survey/bearing.ts';
export { CLIMATE_TYPES } from './survey/climate-types.ts';
export type { ClimateType } from './survey/climate-types.ts';
export { parseCoordinates } from './survey/coordinates.ts';
export type { Coordinates } from './survey/coordinates.ts';
export { declinationAt } from './survey/declination.ts';
export type { Estimate, Finding, Refusal } from './survey/estimate.ts';
export { directionNotes, heightFromPicture, heightOfEdge, heightOfTop, heightOfTree, slopeFromPole, slopeFromTime } from './survey/height.ts';
export type { Slope } from './survey/height.ts';
export { defaultPm } from './survey/known-by.ts';
export { northFrom, northFromCompass, northFromShadow, northFromVanishing } from './survey/north.ts';
export type { NorthSighting } from './survey/north.ts';
export { northTimes } from './survey/north-times.ts';
export type { ClockWindow } from './survey/north-times.ts';
export { northTogether } from './survey/north-together.ts';
export type { NorthTogether } from './survey/north-together.ts';
export { checkPace, pacedLength, withPace } from './survey/pace.ts';
export type { Pace } from './survey/pace.ts';
export { pictureScale } from './survey/picture-scale.ts';
export type { PictureLength, PictureScale } from './survey/picture-scale.ts';
export { ELEVATION_NOTE, northCheckLine, placeCheckLine, placeNotes, zoneAt } from './survey/place.ts';
export { findTowns, nearestTown, TOWNS } from './survey/places.ts';
export type { Town } from './survey/places.ts';
export { askedMonth, climateTypeOf, likelyClimate, roughClimate, withKnownTemperatures } from './survey/rough-climate.ts';
export type { KnownTemperatures } from './survey/rough-climate.ts';
export { shadowLength, shadowTable } from './survey/shadow-table.ts';
export type { StickShadow } from './survey/shadow-table.ts';
export { sunAt } from './survey/sun-at.ts';
export type { Place, SunAt } from './survey/sun-at.ts';
export { placeFromTapes } from './survey/tape.ts';
export type { TapedPoint } from './survey/tape.ts';
export { closeWalk, parseWalk } from './survey/walk.ts';
export type { ClosedWalk, Leg } from './survey/walk.ts';
export { heightByCourses, heightFromOtherSide, levelNotes } from './survey/wall-height.ts';
export { loadOf } from './load/load-of.ts';
export { spotOf } from './load/spot-of.ts';
export { latestDamage, whyBurnt } from './advice/why.ts';
export { blanksOf, fieldSheet } from './advice/field-sheet.ts';
export type { Blank, BlankKind, FieldSheet, SheetDay } from './advice/field-sheet.ts';
export { withAnswers } from './advice/field-sheet-answers.ts';
export type { Answered, Answers } from './advice/field-sheet-answers.ts';
export { RIVAL_IDS, rivalsOf } from './advice/why-rivals.ts';
export type { Rival, RivalId } from './advice/why-rivals.ts';
export { parseSide, sideWords } from './advice/why-side.ts';
export { DAMAGE_PARTS } from './advice/why-types.ts';
export type { DamagePart, RankedSide, WhyAnswer, WhyRequest, WhyResult } from './advice/why-types.ts';
export type { Command } from './output/command-line.ts';
export { readCommand } from './output/command-line.ts';
export { helpText, verbHelpText } from './output/help.ts';
export { oneLine } from './output/plain-text.ts';
export { VERBS } from './output/verbs/index.ts';
export type { Verb, VerbRequest, VerbResult } from './output/verbs/verb.ts';

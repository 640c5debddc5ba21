/**
 * The engine's public face: all that the command line and the page use. One block a folder, in the order in which data
 * flows.
 */

// plan: What a person drew: the plan file, its checks, edits, units, catalogue and demo yards.
export type { CrownGuess, CrownKind } from './plan/crowns.ts';
export { CROWN_KINDS, crownGuess, crownKindOf, crownSourceWords } from './plan/crowns.ts';
export type { PlantSource } from './plan/catalogue.ts';
export { CATALOGUE, nearestPlantIds, PLANT_SOURCES, plantRowOf } from './plan/catalogue.ts';
export { checkPlan } from './plan/check/check.ts';
export {
  bottomOf,
  colourOf,
  crownShapeOf,
  eavesOf,
  elevationOf,
  foliageFromOf,
  knownElevationOf,
  lieOf,
  numberOf,
  offsetOf,
  opennessOf,
  potOf,
  riseOf,
  shadesOf,
  turnOf,
  upBearingOf,
  worthOf,
} from './plan/defaults.ts';
export type { DemoName } from './plan/demos/index.ts';
export { DEMO_NAMES, demoPlan, isDemoName } from './plan/demos/index.ts';
export type { CornersOf } from './plan/edit/corners.ts';
export { deleteCorner, insertCorner, moveCorner } from './plan/edit/corners.ts';
export {
  acceptOption,
  addOption,
  addToOption,
  changeOption,
  moveInOption,
  removeInOption,
  removeOption,
} from './plan/edit/options.ts';
export {
  appendJournal,
  removeJournalEntry,
  removePlantRow,
  setClimate,
  setClimateMonth,
  setPartHow,
  setPlan,
  setPlantRow,
  setSeason,
  setSite,
  setStock,
  startNextYear,
} from './plan/edit/plan.ts';
export type { FeatureChanges } from './plan/edit/edit-feature.ts';
export {
  addFeature,
  changeFeature,
  duplicateFeature,
  featureOf,
  freshId,
  middleOf,
  moveFeature,
  removeFeature,
  resizeFeature,
  setHow,
  turnFeature,
} from './plan/edit/edit-feature.ts';
export type { Bounds, SpacePoint } from './plan/geometry/shapes.ts';
export {
  area,
  boundsOf,
  canopyCorners,
  canopyEdge,
  canopyHeightOver,
  canopyRing,
  centroid,
  cleanPath,
  distance,
  distanceToPath,
  distanceToSegment,
  footprintOf,
  isClosed,
  nearestOnSegment,
  openRing,
  pathLength,
  pointInRing,
  turned,
} from './plan/geometry/shapes.ts';
export { hullOf } from './plan/geometry/hull.ts';
export { pathStripes } from './plan/geometry/stripes.ts';
export { trunkRadius } from './plan/geometry/trunk.ts';
export { withOptions } from './plan/options.ts';
export type { ParsedPlan, SalvagedPlan } from './plan/file/parse.ts';
export { parsePlan, salvagePlan } from './plan/file/parse.ts';
export { pointerOf, pointerToken } from './plan/file/pointer.ts';
export { planText } from './plan/file/serialize.ts';
export { FEATURE } from './plan/schema/feature.ts';
export type { Keys, NumberForm, NumberRule } from './plan/schema/form.ts';
export { heldAt, withoutUndefined } from './plan/schema/say.ts';
export type * from './plan/types.ts';
export type { Units } from './plan/units.ts';
export {
  formatArea,
  formatCut,
  formatDistance,
  formatLength,
  formatLight,
  formatMass,
  formatPerArea,
  formatSpeed,
  formatFrostLimit,
  formatHeatLimit,
  formatTemperature,
  formatTemperatureDifference,
  parseArea,
  parseLength,
  parseLight,
  parseMass,
  parseNumber,
  parseSpeed,
  parseTemperature,
  parseTemperatureDifference,
  unitsOf,
} from './plan/units.ts';
export { inYearlySpan } from './plan/year-span.ts';

// survey: What a person can find out with a tape, a pole and a clock.
export { wrapBearing } from './survey/north/bearing.ts';
export type { ClimateType } from './survey/climate/climate-types.ts';
export { CLIMATE_TYPES } from './survey/climate/climate-types.ts';
export type { Coordinates } from './survey/place/coordinates.ts';
export { parseCoordinates } from './survey/place/coordinates.ts';
export { declinationAt } from './survey/north/declination.ts';
export type { Estimate, Finding, Refusal } from './survey/estimate.ts';
export type { Slope } from './survey/height/height.ts';
export {
  directionNotes,
  heightFromPicture,
  heightOfEdge,
  heightOfTop,
  heightOfTree,
  slopeFromPole,
  slopeFromTime,
} from './survey/height/height.ts';
export { defaultPm } from './survey/known-by.ts';
export type { ClockWindow } from './survey/north/times.ts';
export { northTimes, tellsNorth } from './survey/north/times.ts';
export type { AllNorth } from './survey/north/all-north.ts';
export { allNorth } from './survey/north/all-north.ts';
export type { NorthTogether } from './survey/north/together.ts';
export { northTogether } from './survey/north/together.ts';
export type { NorthSighting } from './survey/north/north.ts';
export { northFrom, northFromCompass, northFromShadow, northFromVanishing } from './survey/north/north.ts';
export type { Pace } from './survey/pace.ts';
export { checkPace, pacedLength, withPace } from './survey/pace.ts';
export type { PictureLength, PictureScale } from './survey/picture-scale.ts';
export { pictureScale } from './survey/picture-scale.ts';
export { ELEVATION_NOTE, northCheckLine, placeCheckLine, placeNotes } from './survey/place/place.ts';
export type { Town } from './survey/place/places.ts';
export { findTowns, nearestTown, townMeant, TOWNS, townWords } from './survey/place/places.ts';
export { climateOfPlace } from './survey/climate/climate-of-place.ts';
export type { ClimateAsked, PlaceClimate } from './survey/climate/place-climate.ts';
export type { KnownTemperatures } from './survey/climate/rough-climate.ts';
export {
  askedMonth,
  climateTypeOf,
  likelyClimate,
  roughClimate,
  withKnownTemperatures,
} from './survey/climate/rough-climate.ts';
export type { StickShadow } from './survey/height/shadow-table.ts';
export { shadowLength, shadowTable } from './survey/height/shadow-table.ts';
export type { Place, SunAt } from './survey/place/sun-at.ts';
export { sunAt, sunAtMs } from './survey/place/sun-at.ts';
export type { TapedPoint } from './survey/tape.ts';
export { placeFromTapes } from './survey/tape.ts';
export type { ClosedWalk, Leg } from './survey/walk.ts';
export { closeWalk, parseWalk } from './survey/walk.ts';
export type { HeightFound, ShadowSeen, SunAsked, ThingAsked } from './survey/height/height-from.ts';
export { heightFromShadow } from './survey/height/height-from.ts';
export { heightByCourses, heightFromOtherSide, levelNotes } from './survey/height/wall-height.ts';
export type { Whereabouts, WhereaboutsRequest } from './survey/place/whereabouts.ts';
export { whereabouts } from './survey/place/whereabouts.ts';
export { zoneAt } from './survey/place/zone-at.ts';

// sun: Where the sun is, how strong, and how warm the air.
export { dateIn, datesBetween, daysAfter } from './sun/calendar.ts';
export type { SkyIrradiance } from './sun/clear-sky.ts';
export { clearSky } from './sun/clear-sky.ts';
export type { MonthClimate } from './sun/climate.ts';
export { monthClimate } from './sun/climate.ts';
export { parseEpw } from './sun/epw.ts';
export type { SunEvents, SunPosition } from './sun/position.ts';
export { sunPosition } from './sun/position.ts';
export type { Period, SampleDay, SampleResult, SampleTable } from './sun/samples.ts';
export { heatDays, samplesOf } from './sun/samples.ts';
export type { Heat, SeasonMonth } from './sun/season.ts';
export { dateOfDay, hottestMonth, seasonDates, seasonMonths } from './sun/season.ts';
export { skylineAltitude } from './sun/skyline.ts';
export type { SunTimes } from './sun/sun-times.ts';
export { sunTimes } from './sun/sun-times.ts';
export type { WeatherFile } from './sun/weather-file.ts';
export { weatherFile } from './sun/weather-file.ts';
export { weatherWarnings } from './sun/weather-fit.ts';
export type { Weather, WeatherMonth, WeatherPlace } from './sun/weather.ts';
export type { CivilDay } from './sun/zone.ts';
export { civilDay, instantOf, isTimeZone, localDate, localIso } from './sun/zone.ts';

// scene: The plan as solids.
export { buildScene, clothSheets, stateOf } from './scene/build.ts';
export { planDirection } from './scene/direction.ts';
export type { Crown, Lid, Occluder, Prism, Scene, Sheet, Solid } from './scene/solids.ts';

// cast: Which share of the beam and of the sky reaches a point.
export type { GridSpec } from './cast/grid.ts';
export { castGrid } from './cast/grid.ts';
export { shadowRingsOf } from './cast/shadow-rings.ts';
export type { TrialCaster } from './cast/trial.ts';
export { createTrialCaster } from './cast/trial.ts';
export type { GroupedPasses } from './cast/grouped-passes.ts';
export { groupedPasses } from './cast/grouped-passes.ts';
export type { Passes } from './cast/passes.ts';
export type { Blocker, RayResult } from './cast/ray.ts';
export { castRay } from './cast/ray.ts';
export type { Silhouette, SkyPoint } from './cast/silhouettes.ts';
export type { PointCaster } from './cast/share.ts';
export { createPointCaster } from './cast/share.ts';
export { skyPasses, skyRays, skyView, skyViewGrid } from './cast/sky.ts';

// load: What arrives, added up: quantities, grades, leaves, verdicts, harm.
export { cellCenter, GRID_DEFAULTS, gridOf, maskOf, MAX_CELLS } from './load/light/grid-of.ts';
export type { DayTable } from './load/light/day-table.ts';
export { dayTable } from './load/light/day-table.ts';
export type { PathStep, SkyPicture } from './load/light/sky-from.ts';
export { skyFrom } from './load/light/sky-from.ts';
export type { SpotWeek, WeeksRequest } from './load/light/weeks-at.ts';
export { weeksAt } from './load/light/weeks-at.ts';
export type { Seen } from './load/sun-eye/beam-frame.ts';
export type { SunEye } from './load/sun-eye/sun-eye.ts';
export { sunEyes } from './load/sun-eye/sun-eye.ts';
export type { PlantHarm } from './load/verdict/harm-of.ts';
export { harmOf } from './load/verdict/harm-of.ts';
export type { HotLeafHours } from './load/verdict/hot-leaf-hours.ts';
export { hotLeafHours } from './load/verdict/hot-leaf-hours.ts';
export { LEAF_SPREAD } from './load/leaf/leaf.ts';
export type { LoadRequest } from './load/load-of.ts';
export { loadOf, plantLoadsOf } from './load/load-of.ts';
export { compassWord, nameOf } from './load/verdict/names.ts';
export { GRADE_FROM, GRADE_WORDS, gradeOf } from './load/light/nine.ts';
export type { NearWall } from './load/verdict/near-wall.ts';
export { nearWall } from './load/verdict/near-wall.ts';
export type { PlantPoints, SidePoint } from './load/verdict/plant-points.ts';
export { plantPoints, potPoints } from './load/verdict/plant-points.ts';
export type { SpotRequest } from './load/light/spot-of.ts';
export { spotOf } from './load/light/spot-of.ts';
export type {
  Cells,
  HotSpot,
  LeafHeat,
  LightClass,
  LoadResult,
  Nine,
  Outcome,
  PlantKind,
  PlantLoad,
  PlantSide,
  Quantity,
  SeasonTotals,
  SideLoad,
  SpotDayResult,
  SpotResult,
  SpotSeasonResult,
  SpotStep,
  Stretch,
  Verdict,
} from './load/types.ts';
export { QUANTITIES, QUANTITY_UNITS } from './load/types.ts';
export { weightsOf } from './load/light/weights.ts';

// frame: How to build it.
export type { AsBuiltNumbers } from './frame/layout/as-built.ts';
export { withAsBuilt } from './frame/layout/as-built.ts';
export { cautionsFor } from './frame/work/cautions.ts';
export { frameDrawing } from './frame/layout/drawing.ts';
export { costOf, sheetOf } from './frame/sheet.ts';
export { ANCHOR_KINDS, GROUND_KINDS, anchorName, groundName, groundPlace } from './frame/strength/grounds.ts';
export { currencyOf } from './frame/shop/prices.ts';
export { kerfOf, stockCloth, stockTubes } from './frame/shop/stock.ts';
export { whatStandsAt } from './frame/layout/surroundings.ts';
export { formatTape, formatThin } from './frame/layout/lengths.ts';
export type { SheetPart, SheetSection } from './output/sheet/part.ts';
export { sheetSections } from './output/sheet/sections.ts';
export { SHEET_STYLE, sheetHtml } from './output/sheet/html.ts';
export { cutDrawing, measureMe, planDrawing, sideDrawing } from './output/sheet/drawing.ts';
export type { LetterPictures } from './output/sheet/letter-pictures.ts';
export { letterPictures } from './output/sheet/letter-pictures.ts';
export { sheetText } from './output/sheet/text.ts';
export type * from './frame/types.ts';
export type * from './frame/cuts/types.ts';
export type * from './frame/layout/types.ts';
export type * from './frame/shop/types.ts';
export type * from './frame/strength/types.ts';
export type * from './frame/work/types.ts';

// advice: What to do.
export { payoffMap } from './advice/site/payoff-map.ts';
export { siteOf } from './advice/site/site.ts';
export type { Sight, SiteSeen } from './advice/site/sights.ts';
export { siteSeen } from './advice/site/sights.ts';
export type { Trial, TrialPlant, TrialScore } from './advice/site/scoring/trial.ts';
export { createTrial } from './advice/site/scoring/trial.ts';
export type {
  ClothKind,
  ClothSize,
  LowSun,
  OptionPlant,
  PayoffMap,
  PlantState,
  RulePrice,
  SiteOption,
  SiteRequest,
  SiteResult,
  SiteRule,
  SiteTried,
} from './advice/site/types.ts';
export type { Answered, Answers } from './advice/hand-outs/field-sheet-answers.ts';
export { withAnswers } from './advice/hand-outs/field-sheet-answers.ts';
export type { Blank, BlankKind, FieldSheet, SheetDay } from './advice/hand-outs/field-sheet.ts';
export { blanksOf, fieldSheet } from './advice/hand-outs/field-sheet.ts';
export type { Hardening, HardeningDay } from './advice/place/hardening.ts';
export type { GrownQuestion } from './advice/year/grown.ts';
export { grownQuestions } from './advice/year/grown.ts';
export { hardeningOf } from './advice/place/hardening.ts';
export type { ShareCopy } from './advice/hand-outs/share-copy.ts';
export { shareCopy } from './advice/hand-outs/share-copy.ts';
export type { Pack, PackChange } from './advice/hand-outs/pack.ts';
export { PACK_FORMAT, PACK_VERSION, withPack } from './advice/hand-outs/pack.ts';
export type { CheaperFirst } from './advice/cheaper-first/cheaper-first.ts';
export { cheaperFirst } from './advice/cheaper-first/cheaper-first.ts';
export type { LadderStep } from './advice/cheaper-first/step.ts';
export { placeOf } from './advice/place/place.ts';
export type { BarredGround } from './advice/place/barred-ground.ts';
export { barredGround } from './advice/place/barred-ground.ts';
export type { PotThere } from './advice/place/pot-there.ts';
export { potNamed, potThere } from './advice/place/pot-there.ts';
export type { PotGround } from './advice/place/ground.ts';
export { potGround } from './advice/place/ground.ts';
export type { LightStanding, PlaceRequest, PlaceResult, PlaceSpot, PotSwap } from './advice/place/types.ts';
export type { Section, SectionPoint, SectionRequest, SideSlip } from './advice/sight/section.ts';
export { sectionOf } from './advice/sight/section.ts';
export type { Cure } from './advice/sight/section-slip.ts';
export { doubtOf } from './advice/doubt/doubt.ts';
export type { DoubtKind } from './advice/doubt/inputs.ts';
export type { DoubtBar, DoubtRequest, DoubtResult, PlantDoubt } from './advice/doubt/types.ts';
export type { MarkCheck, MarksTogether, ShadowCure, ShadowMark, ShadowMarksResult } from './advice/marks/types.ts';
export { shadowEdge } from './advice/marks/shadow-edge.ts';
export { shadowMarks } from './advice/marks/shadow-marks.ts';
export { compareOptions } from './advice/compare/compare.ts';
export { clothArea } from './advice/compare/cost.ts';
export { hoursWords } from './advice/compare/words.ts';
export { seenFrom } from './advice/compare/seen.ts';
export type { ClothTop, HiddenHeights, Reach } from './advice/sight/hidden-heights.ts';
export { hiddenHeights } from './advice/sight/hidden-heights.ts';
export type { SightCut } from './advice/sight/sight-cut.ts';
export { sightCuts } from './advice/sight/sight-cut.ts';
export type {
  ChoiceCost,
  ComparedChoice,
  ComparedPlant,
  CompareRequest,
  CompareResult,
  PlantLight,
  PlantStand,
  SeenFrom,
  SideStand,
} from './advice/compare/types.ts';
export type { EyePoint, EyeReach, HiddenHeight, SightLines } from './advice/sight/hidden-height.ts';
export {
  eyeReaches,
  hiddenHeightAt,
  hiddenHeightGrid,
  hiddenHeightWords,
  LEAST_USEFUL,
  seenAbove,
  sightLinesOf,
  TALLEST_SAID,
} from './advice/sight/hidden-height.ts';
export type { Rival, RivalId } from './advice/why/rivals.ts';
export { RIVAL_IDS, rivalsOf } from './advice/why/rivals.ts';
export { parseSide, sideWords } from './advice/why/side.ts';
export type { DamagePart, RankedSide, WhyAnswer, WhyRequest, WhyResult } from './advice/why/types.ts';
export { DAMAGE_PARTS } from './advice/why/types.ts';
export { latestDamage, whyBurnt } from './advice/why/why.ts';
export { DAMAGE_SCALE, READING_PROTOCOL } from './advice/review/protocol.ts';
export type {
  Correction,
  DamageNote,
  PairCheck,
  ReadingCheck,
  ReviewResult,
  YearComparison,
  YearVerdict,
} from './advice/review/types.ts';
export { reviewOf } from './advice/review/review.ts';
export { yearsAgainst } from './advice/review/year-against-year.ts';
export type { ClayAdvice, ClayPlant } from './advice/year/clay.ts';
export type { FrostAdvice, FrostPlant } from './advice/year/frost.ts';
export type { Advice, Basis } from './advice/year/advice.ts';
export type {
  ClothLight,
  ClothMonth,
  ClothSeason,
  MonthPage,
  SeasonEvent,
  SeasonResult,
} from './advice/year/season/types.ts';
export { seasonYearOf } from './advice/year/season/span.ts';
export { seasonOf } from './advice/year/season/season.ts';
export { sentenceCase } from './advice/year/season/words.ts';
export { yearEntries } from './advice/review/year-entries.ts';
export type { Forecast, Tomorrow, TomorrowPlant, TomorrowTask } from './advice/year/tomorrow/types.ts';
export { tomorrowOf } from './advice/year/tomorrow/tomorrow.ts';
export type { PlantWater, WaterDay } from './advice/year/water.ts';
export { waterOf } from './advice/year/water.ts';

// output: Results for people and other programs.
export { loadCsv } from './output/map/csv.ts';
export { loadGeoJson, lonLatOf } from './output/map/geo-json.ts';
export { GRADE_HATCH } from './output/map/grade-hatch.ts';
export type { Occupied } from './output/map/grade-numbers.ts';
export { crownsOf, gradeNumbersAt } from './output/map/grade-numbers.ts';
export { heatMap, heatMapKey } from './output/map/heat-map.ts';
export type { CalendarRequest } from './output/calendar/icalendar.ts';
export { icalendar } from './output/calendar/icalendar.ts';
export type { Report, ReportRequest, ReportSection } from './output/report/types.ts';
export { reportHtml } from './output/report/html.ts';
export { reportOf } from './output/report/report-of.ts';
export { planPicture } from './output/report/plan.ts';
export { seasonCalendar } from './output/calendar/season-calendar.ts';
export { waterAdvice, waterTable } from './output/text/season-text.ts';

/**
 * The engine's public face: what the page, the README's example and the tests of the two ask of it, and no more
 * (knip). One block a folder, in the order in which data flows.
 */

// plan: What a person drew: the plan file, its checks, edits, units, catalogue and demo yards.
export { compassWord } from './plan/words/compass-word.ts';
export { capital, uncapital } from './plan/words/first-letter.ts';
export { fewNames, namedInside, nameOf } from './plan/words/names.ts';
export { CROWN_KINDS, crownGuess, crownKindOf, crownSourceWords } from './plan/catalogue/crowns.ts';
export { CATALOGUE, plantRowOf } from './plan/catalogue/plants.ts';
export { PLANT_SOURCES } from './plan/catalogue/plant-sources.ts';
export { checkPlan } from './plan/check/check.ts';
export {
  bottomOf,
  colourOf,
  crownShapeOf,
  eavesOf,
  elevationOf,
  fruitWidthOf,
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
export { dateWords, dayWords, MONTHS, monthWord } from './plan/dates/dates.ts';
export { clockOfMoment, dateOfMoment, monthDayOf, monthOfDate, yearOf } from './plan/dates/parts.ts';
export { isCloth } from './plan/kinds.ts';
export { readMonthDay } from './plan/dates/typed-day.ts';
export { courtyard } from './plan/demos/courtyard.ts';
export { DEMO_NAMES, demoPlan } from './plan/demos/index.ts';
export { type CornersOf, deleteCorner, insertCorner, moveCorner } from './plan/edit/corners.ts';
export { acceptOption, addOption, addToOption, moveInOption, removeOption } from './plan/edit/options.ts';
export {
  appendJournal,
  changeJournalEntry,
  removeJournalEntry,
  setClimate,
  setClimateMonth,
  setPartHow,
  setPlan,
  setPlantRow,
  setSite,
  setStock,
  setSummerMonth,
  startNextYear,
} from './plan/edit/plan.ts';
export {
  type FeatureChanges,
  addFeature,
  changeFeature,
  duplicateFeature,
  featureOf,
  freshId,
  middleOf,
  moveFeature,
  removeFeature,
  setHow,
  turnFeature,
} from './plan/edit/edit-feature.ts';
export { headingOf, radiansOf, wrapBearing } from './plan/geometry/angles.ts';
export type { SpacePoint } from './plan/geometry/vectors.ts';
export {
  area,
  boundsOf,
  centroid,
  distance,
  distanceToEdge,
  distanceToPath,
  isClosed,
  lineRound,
  openRing,
  pathLength,
  pointInRing,
  turned,
} from './plan/geometry/shapes.ts';
export { canopyEdge, canopyHeightOver, canopyRing, footprintOf } from './plan/geometry/cloth-shapes.ts';
export { clamp } from './plan/numbers/clamp.ts';
export { meanOf } from './plan/numbers/mean.ts';
export { pointToMillimetre, toCentimetre, toMillimetre } from './plan/numbers/rounding.ts';
export { pathStripes } from './plan/geometry/stripes.ts';
export { trunkRadius } from './plan/geometry/trunk.ts';
export { drawnAnywhere, withOptions } from './plan/yards/options.ts';
export { LIMITS } from './plan/file/limits.ts';
export { parsePlan, salvagePlan } from './plan/file/parse.ts';
export { planText } from './plan/file/serialize.ts';
export { FEATURE } from './plan/schema/feature.ts';
export type { Keys, NumberForm, NumberRule } from './plan/schema/form.ts';
export { shownName } from './plan/words/shown-name.ts';
export { heldAt, withoutUndefined } from './plan/schema/say.ts';
export type * from './plan/types.ts';
export { type Units, unitsOf } from './plan/units/units.ts';
export { METRES_PER_FOOT, MS_PER_DAY } from './plan/units/per-unit.ts';
export { formatClock, formatStretch, minutesOf } from './plan/units/clock.ts';
export {
  formatArea,
  formatCut,
  formatDistance,
  formatHeatLimit,
  formatLength,
  formatPerArea,
  formatPlusMinus,
  formatRain,
  formatShare,
  formatSpeed,
  formatTemperature,
  formatTemperatureDifference,
  formatUpToHand,
  upToHand,
} from './plan/units/shown.ts';
export { parseLength, parseLight, parseNumber, parseSpeed, parseRain, parseTemperature } from './plan/units/typed.ts';
export { lessDamage } from './plan/words/spoken.ts';
export { inYearlySpan } from './plan/dates/year-span.ts';

// survey: What a person can find out with a tape, a pole and a clock.
export { CLIMATE_TYPES } from './survey/climate/climate-types.ts';
export { parseCoordinates } from './survey/place/coordinates.ts';
export type { Estimate, Finding } from './survey/estimate.ts';
export { heightFromPicture } from './survey/height/height.ts';
export { heightFromTilt } from './survey/height/tilt.ts';
export { skylineFrom, type SkylineSighting } from './survey/skyline.ts';
export { defaultPm } from './survey/known-by.ts';
export { type AllNorth, allNorth } from './survey/north/all-north.ts';
export { checkPace, pacedLength, withPace } from './survey/pace.ts';
export { type PictureLength, pictureScale } from './survey/picture-scale.ts';
export { ELEVATION_NOTE } from './survey/place/place.ts';
export { type Town, nearestTown, townMeant, towns, townWords } from './survey/place/places.ts';
export { climateOfPlace } from './survey/climate/climate-of-place.ts';
export { askedMonth } from './survey/climate/known-temperatures.ts';
export { shadowTable } from './survey/height/shadow-table.ts';
export { sunAtMs } from './survey/place/sun-at.ts';
export { placeFromTapes } from './survey/tape.ts';
export { closeWalk, parseWalk } from './survey/walk.ts';
export { type ShadowSeen, heightFromShadow } from './survey/height/height-from.ts';
export { heightByCourses, heightFromOtherSide, levelNotes } from './survey/height/wall-height.ts';
export { type Whereabouts, type WhereaboutsRequest, whereabouts } from './survey/place/whereabouts.ts';

// sun: Where the sun is, how strong, and how warm the air.
export { daysAfter } from './sun/days/calendar.ts';
export { parseEpw } from './sun/weather/epw.ts';
export { sunPosition } from './sun/position.ts';
export type { Period } from './sun/samples.ts';
export { seasonMonths } from './sun/days/season.ts';
export { type WeatherFile, weatherFile } from './sun/weather/weather-file.ts';
export type { Weather } from './sun/weather/weather.ts';
export { instantOf, localDate } from './sun/days/zone.ts';

// scene: The plan as solids.
export { buildScene, stateOf } from './scene/build.ts';

// cast: Which share of the beam and of the sky reaches a point.
export type { GridSpec } from './cast/grids/grid-spec.ts';
export { shadowRingsOf } from './cast/drawn/shadow-rings.ts';
export { castRay } from './cast/points/ray.ts';
export type { SkyPoint } from './cast/drawn/silhouettes.ts';

// load: What arrives, added up: quantities, grades, leaves, verdicts, harm.
export { gridOf, usualCell } from './load/light/grid-of.ts';
export { type DayTable, dayTable } from './load/light/day-table.ts';
export { type PathStep, type SkyPicture, skyFrom } from './load/light/sky-from.ts';
export { type SpotWeek, type WeeksRequest, weeksAt } from './load/light/weeks-at.ts';
export type { Seen } from './load/sun-eye/beam-frame.ts';
export { type SunEye, sunEyes } from './load/sun-eye/sun-eye.ts';
export type { PotColour } from './load/pot/root-zone.ts';
export { loadOf, plantLoadsOf } from './load/load-of.ts';
export { GRADE_FROM, GRADE_WORDS, gradeOf } from './load/light/nine.ts';
export { wallWords } from './load/verdict/wall-heat.ts';
export { plantPoints } from './load/verdict/plant-points.ts';
export { spotOf } from './load/light/spot-of.ts';
export {
  type LoadResult,
  type Outcome,
  type PlantLoad,
  type PlantSide,
  type Quantity,
  type SpotResult,
  type SpotStep,
  type Stretch,
  type Verdict,
  QUANTITIES,
  QUANTITY_UNITS,
} from './load/types.ts';

// frame: How to build it.
export { withAsBuilt } from './frame/layout/as-built.ts';
export { cautionsFor, reminderOf } from './frame/work/cautions.ts';
export { costOf, sheetOf } from './frame/sheet.ts';
export { packWords } from './frame/shop/line.ts';
export { ANCHOR_KINDS, GROUND_KINDS, ROD_MEETS, anchorName, groundName } from './frame/strength/grounds.ts';
export { groundOf } from './frame/layout/ground-of.ts';
export { DEFAULT_GUST } from './frame/layout/brief.ts';
export { currencyOf } from './frame/shop/prices.ts';
export { kerfOf, stockTubes } from './frame/shop/stock.ts';
export { whatStandsAt } from './frame/layout/surroundings.ts';
export { formatThin } from './frame/layout/lengths.ts';
export type { SheetPart } from './output/sheet/part.ts';
export { sheetSections } from './output/sheet/sections.ts';
export { frameDxf } from './output/drawing/frame-dxf.ts';
export { yardDxf } from './output/drawing/yard-dxf.ts';
export { planPicture } from './output/report/plan.ts';
export { withOutlines } from './plan/file/outlines/put-in.ts';
export type { OutlineKind } from './plan/file/outlines/types.ts';
export { measureMe, scaleFor } from './output/sheet/to-scale.ts';
export { settingOutDrawing } from './output/sheet/setting-out-drawing.ts';
export { cutDrawing } from './output/sheet/cut-drawing.ts';
export { planDrawing, sideDrawing } from './output/sheet/drawing.ts';
export { type LetterPictures, letterPictures } from './output/sheet/letter-pictures.ts';
export type * from './frame/types.ts';
export type * from './frame/cuts/types.ts';
export type * from './frame/layout/types.ts';
export type * from './frame/shop/types.ts';
export type * from './frame/strength/types.ts';
export type * from './frame/work/types.ts';

// advice: What to do.
export { cheaperHeadline, optionHeadline, placeHeadline, triedHeadline } from './advice/words/cure-headlines.ts';
export { worstFirst } from './load/verdict/worst-first.ts';
export { drawHeadline, heatHeadline } from './advice/words/yard-headlines.ts';
export { worthMoving, type LadderStep } from './advice/cheaper-first/step.ts';
export { addedWords, roleWords } from './advice/site/advice-words.ts';
export { countingWords, standsUnder, titleOf } from './advice/site/words.ts';
export { payoffMap } from './advice/site/payoff-map.ts';
export type { LivingScreen } from './advice/site/living-screen.ts';
export type { PotMove } from './advice/site/moved-and-covered.ts';
export { type MoreForms, moreForms } from './advice/site/more-forms.ts';
export { lookOver, siteOf } from './advice/site/site.ts';
export { type Sight, type SiteSeen, siteSeen } from './advice/site/sights.ts';
export { type Trial, type TrialScore, createTrial } from './advice/site/scoring/trial.ts';
export type { ClothKind, ClothSize, OptionPlant, SiteOption, SiteRequest, SiteResult } from './advice/site/types.ts';
export { type Answers, withAnswers } from './advice/hand-outs/field-sheet-answers.ts';
export { type Blank, type FieldSheet, type SheetDay, blanksOf, fieldSheet } from './advice/hand-outs/field-sheet.ts';
export type { Hardening } from './advice/place/hardening.ts';
export { type GrownQuestion, grownQuestions } from './advice/year/growth/grown.ts';
export { shareCopy } from './advice/hand-outs/share-copy.ts';
export { type PackChange, withPack } from './advice/hand-outs/pack.ts';
export { cheaperFirst } from './advice/cheaper-first/cheaper-first.ts';
export { placeOf } from './advice/place/place.ts';
export { type BarredGround, barredGround } from './advice/place/barred-ground.ts';
export { type PotThere, potNamed, potThere } from './advice/place/pot-there.ts';
export { winterWarning } from './advice/place/winter.ts';
export { type PotGround, potGround } from './advice/place/ground.ts';
export { stepsWords, wayWords } from './advice/place/way.ts';
export { rootsBriefly } from './advice/place/words.ts';
export type { PlaceResult, PlaceSpot, PotSwap } from './advice/place/types.ts';
export { type Section, type SectionRequest, sectionOf } from './advice/sight/section.ts';
export { doubtOf } from './advice/doubt/doubt.ts';
export { movedBy } from './advice/doubt/words.ts';
export type { DoubtBar, DoubtResult } from './advice/doubt/types.ts';
export type { MarkCheck, MarksTogether, ShadowCure, ShadowMark } from './advice/marks/types.ts';
export { shadowEdge } from './advice/marks/shadow-edge.ts';
export { shadowMarks } from './advice/marks/shadow-marks.ts';
export { compareOptions } from './advice/compare/compare.ts';
export { effectCell } from './advice/compare/words.ts';
export { lessWords } from './advice/words/effect-words.ts';
export type { PlantEffect } from './advice/words/served.ts';
export { heatwaveWords } from './advice/words/stands.ts';
export { hoursWords } from './frame/work/work-words.ts';
export { type HiddenHeights, hiddenHeights } from './advice/sight/hidden-heights.ts';
export type { SightCut } from './advice/sight/sight-cut.ts';
export type { ComparedChoice, ComparedPlant, CompareResult } from './advice/compare/types.ts';
export type { SeenFrom } from './advice/sight/seen.ts';
export { seenWords } from './advice/sight/words.ts';
export { hiddenHeightAt, LEAST_USEFUL, sightLinesOf, TALLEST_SAID } from './advice/sight/hidden-height.ts';
export type { RivalId } from './advice/why/rivals.ts';
export { parseSide } from './advice/why/side.ts';
export { type WhyRequest, type WhyResult, DAMAGE_PARTS } from './advice/why/types.ts';
export { nextStepOf } from './advice/why/next-step.ts';
export { latestDamage, whyBurnt } from './advice/why/why.ts';
export { DAMAGE_SCALE, READING_PROTOCOL } from './advice/review/protocol.ts';
export type {
  Correction,
  DamageNote,
  PairCheck,
  ReadingCheck,
  ReviewResult,
  YearComparison,
} from './advice/review/types.ts';
export { reviewOf } from './advice/review/review.ts';
export { coverWords, frostOpening, frostTable } from './advice/year/frost/words.ts';
export type { Advice } from './advice/year/advice.ts';
export type { SeasonEvent, SeasonResult } from './advice/year/season/types.ts';
export { seasonYearOf } from './advice/year/span.ts';
export { ROUGH_DATES, seasonOf } from './advice/year/season/season.ts';
export { reviewHeadline, seasonHeadline } from './advice/words/year-headlines.ts';
export { yearEntries } from './advice/year/season/entries.ts';
export type { Forecast, Tomorrow, TomorrowTask } from './advice/year/tomorrow/types.ts';
export { tomorrowOf } from './advice/year/tomorrow/tomorrow.ts';
export { dueWords } from './advice/year/tomorrow/words.ts';

// output: Results for people and other programs.
export { GRADE_HATCH } from './output/map/grade-hatch.ts';
export { type Occupied, crownsOf, gradeNumbersAt } from './output/map/grade-numbers.ts';
export { reportHtml } from './output/report/html.ts';
export { reportOf } from './output/report/report-of.ts';
export { seasonCalendar } from './output/calendar/season-calendar.ts';
export { seasonSources, waterAdvice, waterTable } from './output/text/season-text.ts';

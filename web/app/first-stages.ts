/**
 * What drawing, measuring, asking what happened and looking closer at the heat show beyond the first picture, as one
 * file of the built page: the parts have so much in common that apart they would be a good deal larger.
 */
export { DrawingHands } from '../map/YardMap/DrawingHands.tsx';
export { ToolRow } from '../map/controls/ToolRow/index.tsx';
export { DrawCard } from '../panels/draw/index.tsx';
export { Greeting } from '../panels/first/Greeting.tsx';
export { WhyCard } from '../panels/first/WhyCard.tsx';
export { HappenedCard } from '../panels/first/index.tsx';
export { MapChoice } from '../panels/heat/on-map/MapChoice.tsx';
export { MapFindings } from '../panels/heat/on-map/MapFindings.tsx';
export { PlantCard } from '../panels/heat/PlantCard.tsx';
export { ShadowClock } from '../panels/heat/pictures/ShadowClock.tsx';
export { SpotCard } from '../panels/heat/SpotCard.tsx';
export { SunEyePicture } from '../panels/heat/pictures/SunEyePicture.tsx';
export { SurveyCard } from '../panels/survey/index.tsx';
export { SettingsCard } from './SettingsCard/index.tsx';
export { TypedWhen } from './SunBar/TypedWhen.tsx';

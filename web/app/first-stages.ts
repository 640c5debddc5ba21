/**
 * What drawing, measuring and asking what happened show beyond the first picture, as one file of the built page: the parts have
 * so much in common that apart they would be a good deal larger.
 */
export { AskedNumbers } from '../map/AskedNumbers.tsx';
export { ToolRow } from '../map/ToolRow/index.tsx';
export { DrawCard } from '../panels/draw/index.tsx';
export { Greeting } from '../panels/first/Greeting.tsx';
export { HappenedCard } from '../panels/first/index.tsx';
export { WhyCard } from '../panels/first/WhyCard.tsx';
export { FieldSheetCard } from '../panels/sheets/index.tsx';
export { SurveyCard } from '../panels/survey/index.tsx';
export { FilesCard } from './FilesCard/index.tsx';
export { SettingsCard } from './SettingsCard/index.tsx';

/** The cards that open beside the stages, in one part: they have so much in common that apart they would be a good deal larger. */
export { FieldSheetCard } from '../../panels/sheets/index.tsx';
export { HappenedCard } from '../../panels/first/index.tsx';
export { WhyCard } from '../../panels/first/WhyCard.tsx';
export { SurveyCard } from '../../panels/survey/index.tsx';
export { SureCard } from '../../panels/sure/index.tsx';
export { FilesCard } from '../FilesCard/index.tsx';
export { SettingsCard } from '../SettingsCard/index.tsx';

import { isTexts, keptForYard } from '../../state/kept.ts';

/** What is typed so far of the open yard's sheet, by the blank's id. */
export const sheetAnswers = keptForYard<Readonly<Record<string, string>>>('field-sheet', {}, isTexts);

/** The day on which it was filled in: "YYYY-MM-DD", or empty for today. */
export const sheetDay = keptForYard('field-sheet-day', '');

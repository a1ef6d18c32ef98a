export { compareRanks, type Rank, rankOf } from './rank.js';
export { checkScreening, screened, screenRow } from './screen-row.js';
export { type ScreenedSurvey, type SurveyColumns, screenSurvey } from './screen-survey.js';
export type { RowStatus, ScreenedRow, ScreeningMethod, ScreeningOptions, SurveyRow } from './survey-row.js';
export { lessConservative } from './unusual.js';
export { WorstRows } from './worst-rows.js';

/**
 * `hoopwright/survey`: many metal losses at once: safe pressure, growth, which to repair first. Written by `npm run contents`.
 *
 * @module
 */
export {
  compareRanks,
  lessConservative,
  type Rank,
  type RowStatus,
  rankOf,
  type ScreenedRow,
  type ScreenedSurvey,
  type ScreeningMethod,
  type ScreeningOptions,
  type SurveyColumns,
  type SurveyRow,
  screenRow,
  screenSurvey,
  WorstRows,
} from './survey/index.js';

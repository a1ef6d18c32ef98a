import { bandCounter } from '../report/drawing/survey-bands.js';
import { type RankedRow, surveyDrawings, surveyPage } from '../report/survey-page.js';
import type { UnitSystem } from '../report/units.js';
import { rankOf, type ScreenedRow, type SurveyRow, WorstRows } from '../survey/index.js';
import type { NewFile } from './save.js';
import type { AnswerRow } from './survey-output.js';

/** Rows that a picture can hold: those that rank first. */
const DRAWN = 2000;

/** What `--out FOLDER` is told of a survey row by row; it keeps no more than it draws. */
export interface SurveyPictures {
  add(row: AnswerRow, given: SurveyRow | undefined): void;
  files(
    counts: Readonly<Record<ScreenedRow['status'], number>>,
    warnings: readonly string[],
    options: { readonly units: UnitSystem; readonly digits: number | undefined },
  ): NewFile[];
}

/** The files of a folder, before anything is read. */
export function pathsIn(folder: string): { readonly page: string; readonly bands: string; readonly limit: string } {
  const at = folder.replace(/[/\\]+$/u, '');
  return { page: `${at}/survey.html`, bands: `${at}/bands.svg`, limit: `${at}/limit.svg` };
}

/** Counts the bands and keeps the rows that rank first. */
export function surveyPictures(folder: string): SurveyPictures {
  const bands = bandCounter();
  const worst = new WorstRows<RankedRow>(DRAWN);
  return {
    add: ({ line, id, found }, row) => {
      bands.add(found.status, found.safePressure, row?.designPressure ?? Number.NaN);
      if (row !== undefined && found.status !== 'refused')
        worst.add(rankOf(found, row.designPressure), { line, id, row, found });
    },
    files: (counts, warnings, options) => {
      const survey = { counts, bands: bands.counts(), worst: worst.inOrder(), warnings };
      const paths = pathsIn(folder);
      const drawings = surveyDrawings(survey);
      return [
        { path: paths.page, text: () => surveyPage(survey, drawings, options) },
        { path: paths.bands, text: () => `${drawings.bands}\n` },
        { path: paths.limit, text: () => `${drawings.limit}\n` },
      ];
    },
  };
}

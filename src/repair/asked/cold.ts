import { need, type Workbook } from '../job/workbook.js';
import { BOILING_WORDS } from './contents-words.js';
import { spelt } from './hazards.js';

/** What boils when its pressure falls cools the steel far below every day of the year: the resin turns brittle there. */
export function askForCold(work: Workbook): void {
  const { contents, lowestTemperature } = work.case.service;
  if (lowestTemperature !== undefined || !BOILING_WORDS.test(spelt(contents))) return;
  need(
    work,
    'service.lowestTemperature',
    `the contents are called "${contents}", which boil when the line is let down and cool the steel as far as they boil: the coldest that the steel gets`,
    'the process engineer of the line',
  );
}

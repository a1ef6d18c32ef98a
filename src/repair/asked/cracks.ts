import { fromDayToDay } from '../../quantity/clock.js';
import { practice } from '../../rules/index.js';
import type { Cracking, CrackTest } from '../case/case.js';
import { saysNothing } from '../case/says-nothing.js';
import { need, type Workbook } from '../job/workbook.js';
import { CRACK_METHODS, SOUR_WORDS } from './contents-words.js';
import { spelt } from './hazards.js';

/** Cracks under corrosion: no strength method for metal loss holds for them, and no wrap stops them. */
export function askForCracks(work: Workbook): void {
  const { cracking, contents } = work.case.service;
  if (cracking === undefined) {
    need(
      work,
      'service.cracking',
      'sour or stress-corrosion service cracks steel under its corrosion, and no strength method for metal loss holds for cracks: the environment, or none',
      'the corrosion engineer of the line',
    );
  } else if (cracking === 'none') {
    if (!SOUR_WORDS.test(spelt(contents))) return;
    need(
      work,
      'service.cracking',
      `the contents are called "${contents}", which stands for sour service, and the case says that nothing in it cracks steel: state "sour" with its crack test, or call the contents what they are`,
      'the corrosion engineer of the line',
    );
  } else askForCrackTest(work, cracking);
}

function askForCrackTest(work: Workbook, { test }: Cracking): void {
  const { method = '', date = '' }: Partial<CrackTest> = test ?? {};
  if (saysNothing(method)) {
    need(
      work,
      'service.cracking.test',
      'the service cracks steel: a test of the whole area under the wrap that found no crack, with its method and day',
      'the inspector',
    );
  } else if (!CRACK_METHODS.test(spelt(method))) {
    need(
      work,
      'service.cracking.test',
      'the service cracks steel, and the test names no method that finds cracks: magnetic particles, penetrant, eddy current or ultrasound, over the whole area under the wrap',
      'the inspector',
    );
  } else if (isOld(work.case.date, date)) {
    need(
      work,
      'service.cracking.test',
      'the service cracks steel, and the test was made more than three months before the survey, or the case gives no day of the survey (`date`): cracks grow while the line runs, so test again',
      'the inspector',
    );
  }
}

function isOld(survey: string | undefined, test: string): boolean {
  const age = fromDayToDay(test, survey);
  return age === undefined || age > practice.crackTestAge.value;
}

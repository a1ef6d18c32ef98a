import { exactly, roundedUp } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { need, type Workbook } from '../job/workbook.js';
import { coldestEver } from './hottest-and-coldest.js';

/** A cold resin turns brittle and shrinks off the steel: below its qualification nobody has a word about it. */
export function checkLowestTemperature(work: Workbook): void {
  const coldest = coldestEver(work.case);
  const { lowestTemperature } = work.case.laminate;
  if (lowestTemperature === undefined) {
    if (coldest >= practice.coldestUnasked.value) return;
    need(
      work,
      'laminate.lowestTemperature',
      'the steel gets colder than freezing: the lowest temperature that the repair system was qualified at',
      'the maker of the repair system: qualification report',
    );
    return;
  }
  if (coldest >= lowestTemperature) return;
  work.reasons.push({
    text: 'the steel gets colder than the repair system was qualified for: nothing is known of it there',
    found: exactly('coldest steel, in service or on the day', 'temperature', coldest),
    limit: roundedUp('lowest temperature of the qualification', 'temperature', lowestTemperature),
  });
}

import { reaches } from '../../numeric/index.js';
import type { Temperature } from '../../quantity/index.js';
import { exactly, line, roundedUp } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { need, type Workbook, warnOwner } from '../job/workbook.js';
import { coldestEver } from './hottest-and-coldest.js';

/** A cold resin turns brittle and shrinks off the steel: below its qualification nobody has a word about it. */
export function checkLowestTemperature(work: Workbook): void {
  const coldest = coldestEver(work.case);
  if (coldest < practice.coldestUnasked.value) warnOfIce(work, coldest);
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
  if (reaches(coldest, lowestTemperature)) return;
  work.reasons.push({
    text: 'the steel gets colder than the repair system was qualified for: nothing is known of it there',
    found: exactly('coldest steel, in service or on the day', 'temperature', coldest),
    limit: roundedUp('lowest temperature of the qualification', 'temperature', lowestTemperature),
  });
}

/** Ice in a pipe knows no design pressure. */
function warnOfIce(work: Workbook, coldest: Temperature): void {
  warnOwner(
    work,
    line(
      'The steel gets as cold as {0}: water that freezes in the pipe, under the laminate or between its layers bursts either, and no number here holds it. Keep the line dry, running or heated.',
      exactly('coldest steel', 'temperature', coldest),
    ),
  );
}

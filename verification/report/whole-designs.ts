import { hazardLog } from '../hazards/log.js';
import { readSeen } from '../laws/put-back/seen.js';
import { unseen } from '../laws/put-back/unseen.js';
import { readLawsSummary } from '../laws/summary.js';
import { readMutantsSummary } from '../mutants/summary.js';
import { readWholeJobSummary } from '../whole-job/summary.js';
import type { WholeDesignsReport } from './shape.js';

/** What is known about whole designs, from the hazard log and the committed figures of the long runs. */

export function wholeDesignsReport(): WholeDesignsReport {
  return {
    hazards: hazardLog.map(({ part, hazards }) => ({
      part,
      rows: hazards.map(({ could, would, guards, tests }) => ({
        could,
        would,
        guards: guards.length,
        tests: tests.map((test) => test.slice(test.indexOf(': ') + 2)),
      })),
    })),
    laws: readLawsSummary(),
    putBack: {
      noticed: Object.keys(readSeen()).length,
      unseen: unseen.map(({ did, because, shownBy }) => ({ fault: did, because, shownBy })),
    },
    secondRoute: readWholeJobSummary(),
    mutants: readMutantsSummary(),
  };
}

import { alike, type Equivalent, KNOWN, neither, TIE } from './alike.js';

/** Changes of acceptance, record and questions that no design which was made can tell from the original. */

const EMPTY = '["Stryker was here"]';

export const equivalentInRecord: readonly Equivalent[] = [
  ...alike('src/repair/acceptance/lowest-rating.ts', 'no number is above one that is not there', [
    ['lowestRating === undefined', 'false'],
  ]),
  ...alike('src/repair/acceptance/limits-of-test.ts', `${TIE}; either name is true of it`, [
    ['each.value < least.value', 'each.value <= least.value'],
  ]),
  ...alike('src/repair/as-built/against.ts', 'a reason of the acceptance has both numbers or none', [
    ['found === undefined || limit === undefined', 'found === undefined && limit === undefined'],
    ['found === undefined', 'false'],
    ['limit === undefined', 'false'],
  ]),
  ...alike('src/repair/as-built/as-laid.ts', `${KNOWN}: without the strength of its bond no design is made`, [
    ['extent === open', 'false'],
  ]),
  ...alike('src/repair/as-built/batches.ts', `${KNOWN}: a batch of a mix that the job does not have is a fault`, [
    ['mix === undefined', 'false'],
    ['[]', EMPTY],
  ]),
  ...alike('src/repair/as-built/filler-age.ts', 'a word among the batches has neither use nor day', [['[]', EMPTY]]),
  ...neither(
    'src/repair/as-built/filler-age.ts',
    `${KNOWN}: filler that is designed has its step, and every job has a wrap`,
    'filler === undefined',
    'wrap === undefined',
  ),
  ...alike('src/repair/as-built/batches.ts', 'a mix that is planned was asked for: neither word can be "none" there', [
    ["stated === 'none'", 'false'],
    ['longest !== undefined', 'true'],
  ]),
  ...alike(
    'src/repair/as-built/working-time-then.ts',
    'a batch of a mix that the job does not have is a fault before',
    [
      ["filler !== 'none'", 'true'],
      ["planned === 'none'", 'false'],
    ],
  ),
  ...alike('src/repair/acceptance/limits-of-test.ts', 'a design whose line is tested has asked for the lowest rating', [
    ["asked !== 'none'", 'true'],
    ['asked.lowestRating !== undefined', 'true'],
  ]),
  ...alike('src/repair/as-built/rating.ts', 'the stages before went through when the design was made', [
    ["{ text: 'the equations do not reach this thickness' }", '{}'],
    ['lapShearStrength === undefined', 'false'],
  ]),
  ...alike('src/repair/as-built/moisture-cure.ts', `${KNOWN}: every job cures, and rows give one wait for every hour`, [
    ["stepAt(timeline, 'cure')?.duration", "stepAt(timeline, 'cure').duration"],
    ['planned?.known', 'planned.known'],
    ['planned?.known !== true', 'false'],
  ]),
  ...alike('src/repair/as-built/moisture-cure.ts', 'the look-up in the rows throws nothing but its own refusal', [
    ['!isCalculationError(error)', 'false'],
    ['{ if (!isCalculationError(error)) throw error; return undefined; }', '{}'],
  ]),
  ...alike('src/repair/as-built/points.ts', 'two readings that are alike agree', [
    ['leastOverlap <= most', 'leastOverlap < most'],
  ]),
  ...alike('src/repair/as-built/tested-as-laid.ts', `${KNOWN}: the points of the acceptance hold the pressure test`, [
    ['point?.verdict', 'point.verdict'],
  ]),
  ...alike(
    'src/repair/as-built/crack-test.ts',
    `${KNOWN}: what is asked before signing is stated where a design is made`,
    [
      ['cracking === undefined', 'false'],
      ['cracking.test === undefined', 'false'],
      [
        "cracking === undefined || cracking === 'none' || cracking.test === undefined",
        "(cracking === undefined || cracking === 'none') && cracking.test === undefined",
      ],
      ["cracking === undefined || cracking === 'none'", "cracking === undefined && cracking === 'none'"],
    ],
  ),
  ...alike(
    'src/repair/acceptance/day-of-test.ts',
    `${KNOWN}: what leaves no pressure on the day leaves none at the hottest steel, and no design is made`,
    [['shown.reasons.length > 0', 'false']],
  ),
  ...alike('src/repair/as-built/signatures.ts', 'a word among the signatures names no hold point', [['[]', EMPTY]]),
  ...alike('src/repair/as-built/witness.ts', 'a word among the batches has no use', [['[]', EMPTY]]),
  ...alike('src/repair/as-built/rating.ts', TIE, [
    ['each.pressure < least.pressure', 'each.pressure <= least.pressure'],
  ]),
  ...alike(
    'src/repair/as-built/known-keys.ts',
    'only the names are read, not what stands beside the name of a reading',
    [['true', 'false']],
  ),
];

import { type Hazard, shownIn } from '../hazard.js';

const points = 'verification/hazards/shown/as-built.test.ts';
const file = 'verification/hazards/shown/as-built-record.test.ts';
const finished = shownIn(`${points}: the finished repair`);
const comparison = shownIn(`${file}: a comparison`);
const rating = shownIn(`${file}: a rating`);

/** Numbers of a record, by the check that each passes. */
const FIELDS = [
  ['wholeNumber', 'layers'],
  ['positive', 'thickness'],
  ['positive', 'length'],
  ['nonNegative', 'leastOverlap'],
  ['nonNegative', 'survey.leastWall'],
  ['positive', 'survey.axialLength'],
  ['positive', 'survey.circumferentialWidth'],
  ['nonNegative', 'survey.hole'],
  ['nonNegative', 'pressureTest.lowestPressure'],
  ['nonNegative', 'steel.salts[0]'],
  ['positive', 'batches[0].base'],
  ['positive', 'batches[0].hardener'],
  ['nonNegative', 'batches[0].usedWithin'],
  ['nonNegative', 'batches[0].witnessHardness'],
  ['nonNegative', 'line.highestPressure'],
] as const;

/** What somebody saw to be so or not. */
const SEEN = [
  ['yesOrNo', 'seal.heldDry'],
  ['yesOrNo', 'seal.puttyWasFirm'],
  ['yesOrNo', 'seal.bandsWereRemoved'],
  ['yesOrNo', 'fillerWasFirm'],
  ['needed', 'steel.isFreeOfOil'],
  ['needed', 'steel.hasRustBloom'],
  ['needed', 'hardness.hasStopped'],
] as const;

/** What makes a record as a whole worth nothing, and what is rated by it all the same. */
export const asBuiltRecord: readonly Hazard[] = [
  {
    could: 'A hold point has no name under it, or a mark that is none.',
    would: 'Nobody would have looked.',
    guards: ['as-built/signatures.ts: notShown nobody has signed'],
    tests: finished('that nobody signed for', 'that somebody signed with a mark'),
  },
  {
    could: 'One bad hold point is lost among good ones.',
    would: 'The whole would be called good.',
    guards: ['as-built/worst.ts: worst: does not meet', 'as-built/worst.ts: worst: not shown'],
    tests: [...finished('that leaks under test'), ...finished('that nobody signed for')],
  },
  {
    could: 'A record is held against a design that was not made, or its days stand in no order.',
    would: 'A pack that is out of date, or a repair of nothing, would pass.',
    guards: [
      'as-built/as-built.ts: refuse design.verdict',
      'as-built/as-built.ts: refuse must be a day such as 2026-06-30',
    ],
    tests: comparison('with a design that was not made', 'by days that cannot be put in order'),
  },
  {
    could: 'A number of the record is mistyped: nothing, less than nothing, or no number at all.',
    would: 'A measure that nobody can have taken would decide over a hold point.',
    guards: [
      ...FIELDS.map(([call, field]) => `as-built/as-built.ts: ${call} ${field.replace('[0]', '[<index>]')}`),
      'as-built/as-built.ts: atLeast lowestPressure',
    ],
    tests: comparison(
      ...FIELDS.map(([, field]) => `by a number that can never be right: ${field}`),
      'by a number that can never be right: pressureTest.highestPressure',
    ),
  },
  {
    could: 'What was measured stands under a name that nobody knows: a slip of one letter.',
    would: 'Nobody would look at the reading that speaks against the repair.',
    guards: ['as-built/known-keys.ts: refuse'],
    tests: comparison('by a name that nobody knows'),
  },
  {
    could: 'An inspection is recorded without what it found.',
    would: 'It would look as if nothing had been found.',
    guards: ['as-built/as-built.ts: refuse inspection.findings'],
    tests: comparison('by an inspection without its findings'),
  },
  {
    could: 'A record says in words what has to be yes or no: `no` for a seal that wept.',
    would: 'Every word would count as yes.',
    guards: [
      'as-built/yes-or-no.ts: refuse must be true or false',
      'as-built/yes-or-no.ts: needed parameter',
      ...SEEN.map(([call, field]) => `as-built/yes-or-no.ts: ${call} ${field}`),
    ],
    tests: comparison(...SEEN.map(([, field]) => `by a word where somebody saw yes or no: ${field}`)),
  },
  {
    could: 'A repair that is too thin or too short is rated all the same.',
    would: 'A pressure would be stated for a laminate that is soft, unmeasured, or that its bond does not hold.',
    guards: [
      'as-built/rating.ts: unrated no pressure can be stated while these do not meet',
      'as-built/rating.ts: unrated layers, thickness and overlap have to be measured',
      'as-built/rating.ts: unrated refused',
      'as-built/rating.ts: unrated reason',
      'as-built/rating.ts: unrated the bond on this overlap',
      'as-built/rating.ts: unrated beyond',
    ],
    tests: rating(
      'of a repair with something else against it',
      'of a repair that nobody measured',
      'of a repair below the fewest plies',
      'of a repair that is resin on a tenth of a millimetre',
      'of a repair on hardly any overlap',
      'of a repair whose strain the pull uses up',
      'of a repair whose bond does not carry the pull',
      'of a laminate too thick for the equations of a thin one',
    ),
  },
  {
    could:
      'A laminate thinner or shorter than designed is tested at the pressure planned for the whole one, or not at all.',
    would: 'The test would have strained it beyond what it bears, and a pressure would be stated for what it hurt.',
    guards: [
      'as-built/tested-as-laid.ts: unrated no pressure can be stated before its test',
      'as-built/tested-as-laid.ts: unrated no pressure can be stated: the test went to',
      'as-built/tested-as-laid.ts: unrated no pressure can be stated while these do not meet',
    ],
    tests: rating(
      'of a short repair that was tested as if it were whole',
      'of a short repair that was not tested',
      'of a short repair that leaked under test',
    ),
  },
];

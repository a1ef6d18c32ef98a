/** A constant that no test can notice, as the summary names it, and why. */
interface NoWonder {
  readonly of: string;
  readonly constant: string;
  readonly sort: string;
  readonly because: string;
}

const bracket = 'a bracket or a part of a search: the root is the same';
const overflow = 'guards against numbers that no float holds: the result is refused a line later';
const joined = 'two forms meet here to the last digits: either is right at the step';
const bounded = 'held by finite patches from one side and within a fifth from the other: see the derivation of the rim';
const unreached = 'never reached: what comes before refuses or decides it';

const polished = 'a start and the step that polishes it: either alone comes to the root';
const springs = 'held within a hundredth or a tenth by springs in a row, which are no finer';
const march = 'how far and how finely a march goes: its end and its steps change nothing';
const print = 'held by a print of three or four digits, which a change of a thousandth leaves';
const room = 'a hard bound on what a reader may confirm: no value of a rule set comes near it';

/** One reason for constants of some formulas. */
const reasonFor = (
  because: string,
  constants: Readonly<Record<string, readonly string[]>>,
  sort = 'coefficient',
): NoWonder[] =>
  Object.entries(constants).flatMap(([of, texts]) => texts.map((constant) => ({ of, constant, sort, because })));

/** Constants that go unnoticed with a reason. All others have a case, a derivation, a list or a bound. */
export const noWonders: readonly NoWonder[] = [
  { of: 'log-ratio', constant: '2', sort: 'limit', because: joined },
  {
    of: 'cure/gel-conversion',
    constant: '1',
    sort: 'limit',
    because: 'asked once before, of the functionality less 1',
  },
  { of: 'programme', constant: '1e5', sort: 'limit', because: 'ends a march that does not end' },
  {
    of: 'daily-swing',
    constant: '2',
    sort: 'limit',
    because: 'a point inside a panel that lies on one side of the minimum',
  },
  { of: 'daily-swing', constant: '1', sort: 'limit', because: 'a panel may end anywhere: the sum is the same' },
  { of: 'cure/cure-wait-over-swing', constant: '86400', sort: 'default', because: bracket },
  { of: 'api579-shell', constant: '0.9', sort: 'default', because: 'held against 1 only; each formula brings its own' },
  { of: 'pipe/axial-failure-stress', constant: 'Math.PI', sort: 'default', because: unreached },
  { of: 'clock', constant: '1e-6', sort: 'unit', because: 'slack for rounding of a sum of seconds' },
  { of: 'wrap/free-taper', constant: '2', sort: 'limit', because: overflow },
  { of: 'lead-sine', constant: 'Math.PI', sort: 'limit', because: overflow },
  { of: 'laminate/energy-at-rim', constant: '1', sort: 'coefficient', because: bounded },
  ...reasonFor(
    'how a number is written: what is computed does not hang on it, and the tests of the sheet hold it',
    { format: ['4', '1e6', '1e-3', '10', '1', '15', '1e-6'] },
    'unit',
  ),
  ...reasonFor(polished, { 'laminate/thickness-slot': ['2', '3'] }),
  ...reasonFor(springs, {
    'laminate/lap-shear-peak': ['2'],
    'laminate/lap-shear-stress': ['2'],
  }),
  ...reasonFor('held within a hundredth by fixed small steps', { 'kinetic-law': ['43.09'] }),
  ...reasonFor(march, { 'laminate/tapered-end-shear': ['1', '2', '12', '100'] }),
  ...reasonFor(print, { 'mechanics/square-plate-deflection': ['0.00126', '1', '12'], 'wrapped-layers': ['1', '2'] }),
  {
    of: 'laminate/first-ply-failure',
    constant: '1',
    sort: 'coefficient',
    because: 'the ratio of the quadratic criterion, for information and called by no design: not derived',
  },
  ...reasonFor(room, { 'coefficient-table': ['1', '0.05', '0.2'] }, 'rule'),
  { of: 'acceptance/pressure-fall', constant: '1', sort: 'coefficient', because: 'the two sides of a bound of 3e-6' },
  { of: 'acceptance/water-density', constant: '3e-6', sort: 'coefficient', because: 'a bound: its tests leave room' },
  { of: 'clock', constant: '1000', sort: 'unit', because: 'days are whole: a part of a day is the same day' },
  { of: 'joint-offsets', constant: '12', sort: 'coefficient', because: 'a number of places: a part of one is none' },
  {
    of: 'wrap/rolls-along-tape',
    constant: '1',
    sort: 'coefficient',
    because: 'a pass of hoop turns alone: there is no way to share',
  },
];

import { alike, type Equivalent, KNOWN, TIE } from './alike.js';

/** Changes of the pipe's formulas that nothing can tell from the original. */

const QUICK = 'the quick look only spares the full one, which refuses the same and nothing else';
const SLACK = 'a slack for the last digits of a unit: no number that anyone writes lies at its very edge';
const MORE = 'more sub-lengths are looked at than need be, none is passed over that was not';
const DROPPED = 'what is written beyond the end of the list is dropped';
const ABSENT = 'nothing is less than what is not there';
const WEAKEST = 'src/pipe/remaining-strength/weakest-sub-length.ts';
const WHOLE = 'src/pipe/remaining-strength/remaining-strength.ts';

export const equivalentInPipe: readonly Equivalent[] = [
  ...alike('src/pipe/api579/assess-api579.ts', 'a distance that is not there is the same as none', [
    ['distanceToDiscontinuity === undefined', 'false'],
  ]),
  ...alike('src/pipe/api579/assess-api579.ts', 'a distance that is not there reaches no limit', [
    ['free !== undefined', 'true'],
  ]),
  ...alike('src/pipe/b31g/b31g-1991-allowable-length.ts', `${TIE}: infinity`, [['rest > 0', 'rest >= 0']]),
  ...alike('src/pipe/dnv/dnv-axial-compression.ts', `${TIE}: the share of two like numbers is 1`, [
    ['numerator < denominator', 'numerator <= denominator'],
  ]),
  ...alike('src/pipe/pressure-design/mawp-all.ts', 'it only spares a subtraction of nothing', [['tsl === 0', 'false']]),
  ...alike('src/pipe/pressure-design/mawp-all.ts', 'no wall stands behind the last: the loop ends there too', [
    ['row < rows', 'row <= rows'],
  ]),
  ...alike('src/pipe/stress/hoop-stress-all.ts', 'no wall stands behind the last: the loop ends there too', [
    ['row < rows', 'row <= rows'],
  ]),
  ...alike('src/pipe/remaining-strength/assess-across.ts', ABSENT, [['tensileStrength !== undefined', 'true']]),
  ...alike('src/pipe/remaining-strength/assess-across.ts', TIE, [
    ['tensileStrength < flow', 'tensileStrength <= flow'],
  ]),
  ...alike('src/pipe/remaining-strength/assessed-flow-stress.ts', ABSENT, [['tensileStrength !== undefined', 'true']]),
  ...alike(
    'src/pipe/remaining-strength/assess-least-wall.ts',
    'any other method that is named is outside its own limit at the same depth',
    [["method === 'DNV-RP-F101'", 'true']],
  ),
  ...alike(
    'src/pipe/remaining-strength/axial-failure-stress.ts',
    'below a right angle and at half a turn the signs differ',
    [['bisect(fall, Math.PI / 2, Math.PI)?.root', 'bisect(fall, Math.PI / 2, Math.PI).root']],
  ),
  ...alike('src/pipe/remaining-strength/check-profile.ts', SLACK, [
    ['depth > defectDepth * (1 + 1e-9)', 'depth >= defectDepth * (1 + 1e-9)'],
  ]),
  ...alike('src/pipe/remaining-strength/depth-profile.ts', QUICK, [
    ['!(Number.isFinite(position) && position > previous)', 'true'],
    ['Number.isFinite(position) && position > previous', 'false'],
    ['!(Number.isFinite(depth) && depth >= 0 && depth <= 0.8 * t)', 'true'],
    ['Number.isFinite(depth) && depth >= 0 && depth <= 0.8 * t', 'false'],
    ['depth >= 0', 'depth > 0'],
    ['depth <= 0.8 * t', 'depth < 0.8 * t'],
  ]),
  ...alike('src/pipe/remaining-strength/depth-profile.ts', DROPPED, [
    ['i < positions.length', 'i <= positions.length'],
  ]),
  ...alike(WHOLE, `${ABSENT}, and the methods that predict no failure stand last`, [
    ['!result.inside || result.failurePressure === undefined', 'false'],
    [
      '!result.inside || result.failurePressure === undefined',
      '!result.inside && result.failurePressure === undefined',
    ],
    ['result.failurePressure === undefined', 'false'],
    ['least !== undefined && along !== undefined', 'true'],
    ['least !== undefined && along !== undefined', 'least !== undefined || along !== undefined'],
    ['least !== undefined', 'true'],
    ['along !== undefined', 'true'],
  ]),
  ...alike(WHOLE, TIE, [
    ['result.failurePressure < least', 'result.failurePressure <= least'],
    ['along < least', 'along <= least'],
  ]),
  ...alike(WHOLE, `${KNOWN}: the name is that of a method`, [['result?.inside', 'result.inside']]),
  ...alike(
    WHOLE,
    `${KNOWN}: DNV-RP-F101, or without a tensile strength original B31G, is inside its limits wherever a method counts`,
    [["value === 'lowest'", 'false']],
  ),
  ...alike(WHOLE, 'a decision of which nobody takes a record is none', [['recorder === undefined', 'false']]),
  ...alike(WHOLE, 'the calculation itself refuses the same number in the same words', [
    ['input.safetyFactor !== undefined', 'false'],
    ['input.defectWidth !== undefined', 'false'],
  ]),
  ...alike('src/pipe/rupture/critical-through-wall-length.ts', `${TIE}: 50`, [
    ['M >= 4.9', 'M > 4.9'],
    ['over >= 22.9375', 'over > 22.9375'],
  ]),
  ...alike(
    WEAKEST,
    'what is looked at first, and in blocks of what size, spares time: the same sub-lengths are bounded or looked at',
    [
      ['n / FIRST_LOOK', 'n * FIRST_LOOK'],
      ['stride > 1', 'stride <= 1'],
      ['stride > 1', 'true'],
      ['stride > 1', 'false'],
      ['stride > 1', 'stride >= 1'],
      ['i < n', 'false'],
      ['i < n', 'i <= n'],
      ['i < n', 'i >= n'],
      ['j < n', 'false'],
      ['i + stride', 'i - stride'],
      ['search.steepest.length - 1', 'search.steepest.length + 1'],
      ['power <= SMALLEST', 'power < SMALLEST'],
    ],
  ),
  ...alike(WEAKEST, `${MORE}: a look at a point that is not there leaves no least, and the search begins anew`, [
    ['j < n', 'j <= n'],
  ]),
  ...alike(WEAKEST, `${MORE}: a block beyond the end holds no point`, [['last << power >= n', 'last << power > n']]),
  ...alike(WEAKEST, `${MORE}: the cells are wider then, or a length lies in none, and is looked at without a bound`, [
    [
      '(positions[n - 1] as number) - (positions[0] as number)',
      '(positions[n - 1] as number) + (positions[0] as number)',
    ],
    ['CELLS + 2', 'CELLS - 2'],
  ]),
  ...alike(WEAKEST, `${MORE}: the bound is lower, or there is none`, [
    ['(full - lost) * bound >= least * (full * bound - lost)', 'false'],
    ['(full - lost) * bound', '(full - lost) / bound'],
    ['full * bound - lost', 'full * bound + lost'],
  ]),
  ...alike(WEAKEST, TIE, [
    ['(full - lost) * bound >= least * (full * bound - lost)', '(full - lost) * bound > least * (full * bound - lost)'],
    ['share >= least', 'share > least'],
    [
      '(1 - share) * M * (1 - BOUND_SLACK) >= least * (M - share)',
      '(1 - share) * M * (1 - BOUND_SLACK) > least * (M - share)',
    ],
  ]),
  ...alike(
    WEAKEST,
    'what is passed over is weaker by some parts in a billion at most, far below any depth that is read',
    [
      ['(1 - share) * M * (1 - BOUND_SLACK)', '(1 - share) * M / (1 - BOUND_SLACK)'],
      ['1 - BOUND_SLACK', '1 + BOUND_SLACK'],
    ],
  ),
  ...alike(WEAKEST, `${MORE}: the block with the last point is never passed over`, [['n - 2', 'n + 2']]),
  ...alike(WEAKEST, DROPPED, [
    ['i < level.length', 'i <= level.length'],
    ['cell < bounds.length', 'cell <= bounds.length'],
  ]),
];

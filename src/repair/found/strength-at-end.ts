import { decide, heading, step } from '../../formula/index.js';
import { type DepthPoint, type MethodResult, profileAtEndOfLife } from '../../pipe/index.js';
import { type GaugePressure, type Length, type Line, line } from '../../quantity/index.js';
import type { AsFound, Candidate, StrengthOutcome, Unavailable } from '../design/design.js';
import { type Workbook, warn } from '../job/workbook.js';
import { gapThen } from './gaps.js';
import type { GrowthRates } from './growth.js';
import { warnOfChoices } from './less-conservative.js';
import { liesOnBend } from './on-bend.js';
import { strengthWith } from './strength.js';
import { neededFactors, type StrengthFactors, statedFactors } from './strength-factors.js';

type Thinned = Pick<AsFound, 'outsideDiameter' | 'depthAtEndOfLife' | 'lengthAtEndOfLife' | 'widthAtEndOfLife'>;

/** Safe pressure of the thinned pipe at the end of life, by the method the case names or the lowest inside its limits. */
export function strengthAtTheEnd(work: Workbook, found: Thinned, growth: GrowthRates): StrengthOutcome | undefined {
  const { service, repair, assessment } = work.case;
  heading(work.recorder, 'Remaining strength at the end of life');
  if (liesOnBend(work.case)) {
    decide(
      work.recorder,
      'no remaining strength of the bend',
      'the methods for metal loss are those of straight pipe, and the laminate counts on no metal here',
    );
    return undefined;
  }
  const countsOnIt = repair.method === 'substrate sharing load';
  const factors = factorsFor(work, countsOnIt);
  if (factors === undefined) return undefined;
  const loss = {
    outsideDiameter: found.outsideDiameter,
    depth: found.depthAtEndOfLife,
    length: found.lengthAtEndOfLife,
    width: found.widthAtEndOfLife,
    profile: profileThen(work, found, growth),
    toAttachment: attachmentThen(work),
  };
  const { result, refusals } = strengthWith(work, 'remaining strength', loss, factors, assessment?.method);
  if (result === undefined) {
    for (const refusal of refusals) {
      if (countsOnIt || assessment?.method !== undefined) work.notCovered.push(refusal);
      else warn(work, notComputed(refusal));
    }
    return undefined;
  }
  warnOfChoices(work, result);
  return {
    method: result.method,
    safePressure: result.safePressure,
    safetyFactor: result.safetyFactor,
    fitAsItIs: result.safePressure >= service.designPressure,
    methods: result.methods.map(asCandidate),
  };
}

function notComputed({ text, amounts = [] }: Line): Line {
  return line(`The remaining strength of the thinned pipe could not be computed. ${text}`, ...amounts);
}

function factorsFor(work: Workbook, countsOnIt: boolean): StrengthFactors | undefined {
  if (countsOnIt) {
    return neededFactors(
      work,
      'the method "substrate sharing load" counts on the safe pressure of the thinned pipe, which needs the design factor of the line or a safety factor',
    );
  }
  const factors = statedFactors(work);
  if (factors === undefined) {
    warn(
      work,
      'The remaining strength of the thinned pipe was not computed: the case gives neither the design factor of the line nor a safety factor. The thickness does not use it.',
    );
  }
  return factors;
}

/** The loss grows towards it. */
function attachmentThen({ case: repairCase, recorder }: Workbook): Length | undefined {
  const { nearestAttachment: gap } = repairCase.defect;
  return gap === undefined ? undefined : gapThen(repairCase, gap, recorder, 'to the nearest attachment');
}

function profileThen(work: Workbook, found: Thinned, growth: GrowthRates): readonly DepthPoint[] | undefined {
  const { profile, readingError } = work.case.defect;
  if (profile === undefined) return undefined;
  return step(work.recorder, 'pipe/profile-at-end-of-life', profileAtEndOfLife, {
    profile,
    depthRate: growth.depth,
    lengthRate: growth.length,
    life: work.case.repair.life,
    greatestDepth: found.depthAtEndOfLife,
    readingError: readingError === 'none' ? (0 as Length) : readingError,
  }).profile;
}

function asCandidate(tried: MethodResult): Candidate<GaugePressure> | Unavailable {
  return tried.inside
    ? { criterion: tried.method, value: tried.safePressure }
    : { criterion: tried.method, because: { text: tried.because } };
}

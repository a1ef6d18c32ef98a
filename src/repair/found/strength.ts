import { heading, step } from '../../formula/index.js';
import {
  type FlowStressChoice,
  liquidDesignPressure,
  mawp,
  type RemainingStrengthMethod,
  remainingStrength,
} from '../../pipe/index.js';
import type { GaugePressure, Length } from '../../quantity/index.js';
import type { FlowStressRule, StrengthMethod } from '../case/case.js';
import type { AsFound, StrengthOutcome } from '../design/design.js';
import { need, trial, type Workbook, warn } from '../job/workbook.js';
import type { GrowthRates } from './growth.js';

export const METHODS: Readonly<Record<StrengthMethod, RemainingStrengthMethod>> = {
  'original B31G': 'b31g-original',
  'modified B31G': 'modified-b31g',
  'effective area': 'effective-area',
  'DNV-RP-F101': 'dnv-single-defect',
  'API 579-1 Level 1': 'local-metal-loss',
  'API 579-1 Level 2': 'local-metal-loss-profile',
};

export const FLOW_STRESSES: Readonly<Record<FlowStressRule, FlowStressChoice>> = {
  'SMYS + 69 MPa': 'yield plus 69 MPa',
  '1.1 SMYS': '1.1 yield',
  '(SMYS + SMTS) / 2': 'mean of yield and tensile',
};

/** Safe pressure of the thinned pipe at the end of life, by the method the case names or the lowest inside its limits. */
export function assessStrength(
  work: Workbook,
  found: Pick<AsFound, 'outsideDiameter' | 'depthAtEndOfLife' | 'lengthAtEndOfLife'>,
  growth: GrowthRates,
): StrengthOutcome | undefined {
  const { recorder, case: repairCase } = work;
  const { pipe, service, defect, repair, assessment = {} } = repairCase;
  heading(recorder, 'Remaining strength at the end of life');
  const { safetyFactor, designFactor } = assessment;
  const sharing = repair.method === 'substrate sharing load';
  if (safetyFactor === undefined && designFactor === undefined) {
    if (sharing) {
      return need(
        work,
        'assessment.designFactor',
        'the method "substrate sharing load" counts on the safe pressure of the thinned pipe, which needs the design factor of the line or a safety factor',
        'the code of the line',
      );
    }
    warn(
      work,
      'The remaining strength of the thinned pipe was not computed: the case gives neither the design factor of the line nor a safety factor. The thickness does not use it.',
    );
    return undefined;
  }
  const shift = growth.length * repair.life;
  const deepening = growth.depth * repair.life;
  const profile = defect.profile?.map(({ position, depth }, i, all) => ({
    position: (position + (i === 0 ? -shift : i === all.length - 1 ? shift : 0)) as Length,
    // A sound end stays sound, and moves outwards by the length rate; everything between deepens.
    depth: Math.min(
      depth === 0 && (i === 0 || i === all.length - 1) ? 0 : depth + deepening,
      found.depthAtEndOfLife,
    ) as Length,
  }));
  const { result, refusals } = trial(work, 'remaining strength', () =>
    remainingStrength(
      {
        outsideDiameter: found.outsideDiameter,
        wallThickness: pipe.wallThickness,
        defectDepth: found.depthAtEndOfLife,
        defectLength: found.lengthAtEndOfLife,
        yieldStrength: pipe.material.yieldStrength,
        tensileStrength: pipe.material.tensileStrength,
        maximumPressure: soundPressure(work, found.outsideDiameter),
        profile,
        method: assessment.method === undefined ? undefined : METHODS[assessment.method],
        flowStress: assessment.flowStress === undefined ? undefined : FLOW_STRESSES[assessment.flowStress],
        safetyFactor,
        designFactor,
      },
      recorder,
    ),
  );
  if (result === undefined) {
    const [refusal] = refusals;
    const text = refusal?.text ?? 'remaining strength: no method applies';
    if (sharing || assessment.method !== undefined) work.notCovered.push({ text });
    else warn(work, `The remaining strength of the thinned pipe could not be computed. ${text}`);
    return undefined;
  }
  for (const note of result.notes) warn(work, `Remaining strength by ${wordsOf(result.method)}: ${note}.`);
  return {
    method: wordsOf(result.method),
    safePressure: result.safePressure,
    safetyFactor: result.safetyFactor,
    fitAsItIs: result.safePressure >= service.designPressure,
    methods: result.methods.map((candidate) =>
      candidate.inside
        ? { criterion: wordsOf(candidate.method), value: candidate.safePressure as GaugePressure }
        : { criterion: wordsOf(candidate.method), needs: candidate.because },
    ),
  };
}

/** What the sound pipe carries: by its allowable stress where the case gives one, else by the design factor. */
export function soundPressure(work: Workbook, outsideDiameter: Length, safetyFactor?: number): GaugePressure {
  const { pipe, assessment = {} } = work.case;
  const { allowableStress, yieldStrength } = pipe.material;
  const designFactor =
    safetyFactor === undefined ? (assessment.designFactor ?? 1 / (assessment.safetyFactor ?? 1)) : 1 / safetyFactor;
  const { wallThickness } = pipe;
  const ring = { outsideDiameter, wallThickness, jointFactor: 1 };
  return allowableStress === undefined
    ? step(
        work.recorder,
        'pipe/liquid-design-pressure',
        liquidDesignPressure,
        { ...ring, yieldStrength, designFactor },
        'sound pipe',
      )
    : step(work.recorder, 'pipe/mawp', mawp, { ...ring, allowableStress }, 'sound pipe').mawp;
}

function wordsOf(method: RemainingStrengthMethod): StrengthMethod {
  const [words] = Object.entries(METHODS).find(([, formula]) => formula === method) ?? [];
  return words as StrengthMethod;
}

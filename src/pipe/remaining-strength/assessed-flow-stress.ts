import { refuse, step } from '../../formula/index.js';
import type { Stress } from '../../quantity/index.js';
import { flowStressMean } from './flow-stress-mean.js';
import { flowStressMultiple } from './flow-stress-multiple.js';
import { flowStressOffset, flowStressOffsetBeyondRange } from './flow-stress-offset.js';
import type { FlowStressChoice, RemainingStrengthJob } from './remaining-strength-methods.js';

/** The flow stress by a choice; never above the tensile strength, where that is known. */
export function assessedFlowStress(job: RemainingStrengthJob, choice: FlowStressChoice): Stress {
  const { tensileStrength } = job.input;
  const value = byChoice(job, choice);
  if (tensileStrength !== undefined && value > tensileStrength) {
    const constraint = `must be at most the tensile strength, ${tensileStrength} Pa`;
    refuse({ code: 'outside-validity', parameter: 'flow stress', value, unit: 'Pa', constraint, source: 'ASME B31G' });
  }
  return value;
}

function byChoice({ input, recorder }: RemainingStrengthJob, choice: FlowStressChoice): Stress {
  const { yieldStrength, tensileStrength } = input;
  switch (choice) {
    case '1.1 SMYS':
      return step(recorder, 'pipe/flow-stress-multiple', flowStressMultiple, { yieldStrength });
    case 'SMYS + 69 MPa':
      return step(recorder, 'pipe/flow-stress-offset', flowStressOffset, { yieldStrength });
    case '(SMYS + SMTS) / 2':
      return step(recorder, 'pipe/flow-stress-mean', flowStressMean, {
        yieldStrength,
        tensileStrength: known(tensileStrength),
      });
  }
}

function known(tensileStrength: Stress | undefined): Stress {
  const constraint = 'must be given for a flow stress between yield and tensile strength';
  return (
    tensileStrength ??
    refuse({ code: 'outside-validity', parameter: 'tensileStrength', value: 'missing', unit: '', constraint })
  );
}

/** What the choice of the flow stress warns of. */
export function flowStressNotes({ input, flowStress }: RemainingStrengthJob): string[] {
  const beyond = flowStress === 'SMYS + 69 MPa' && flowStressOffsetBeyondRange(input);
  return beyond ? ['SMYS + 69 MPa is meant for yield strengths up to 483 MPa (X70)'] : [];
}

import { formula } from '../formula/index.js';
import type { Angle, Length, Ratio } from '../quantity/index.js';
import { leadSine } from './lead-sine.js';

export interface LeadAngleInput {
  readonly tapeWidth: Length;
  readonly overlap: Ratio;
  readonly meanDiameter: Length;
}

/**
 * Angle between an overlapped helical tape and the hoop direction.
 *
 * $$\sin\psi = \frac{w (1 - o)}{\pi D}$$
 *
 * @param input.tapeWidth w, width of the tape [m], > 0 and w(1 - o) < pi D
 * @param input.overlap o, overlap of neighbouring turns, as a part of the tape width [1], from 0 up to, not
 *   including, 1
 * @param input.meanDiameter D, mean diameter of the layer being laid [m], > 0
 * @returns lead angle psi from the hoop direction [rad]
 * @throws CalculationError `invalid-input`; `no-solution` when w(1 - o) reaches pi D
 * @remarks Exact for a tape that neither stretches nor folds. Each turn moves on by one uncovered width, measured
 *   across the tape.
 * @see Geometry of the unrolled cylinder
 */
export function leadAngle(input: LeadAngleInput): Angle {
  const { tapeWidth: w, overlap: o, meanDiameter: D } = input;
  return Math.asin(leadSine(w, o, D)) as Angle;
}

/** Whether the fibre runs more than 10 deg off the hoop, where a laminate designed by its hoop properties loses 6 % of stiffness. */
export function leadAngleSteep(input: LeadAngleInput): boolean {
  return leadAngle(input) > Math.PI / 18;
}

export const leadAngleFormula = /* @__PURE__ */ formula<LeadAngleInput, Angle>({
  id: 'wrap/lead-angle',
  title: 'Lead angle of a helical tape',
  search: ['spiral angle', 'helix angle', 'pitch'],
  compute: leadAngle,
  equation: { expression: 'asin(s)', where: [{ symbol: 's', kind: 'number', expression: 'w * (1 - o) / (pi * D)' }] },
  inputs: {
    tapeWidth: { symbol: 'w', kind: 'length', name: 'width of the tape', sample: [0.025, 0.3] },
    overlap: {
      symbol: 'o',
      kind: 'ratio',
      name: 'overlap of neighbouring turns, as a part of the tape width',
      sample: [0, 0.8],
    },
    meanDiameter: { symbol: 'D', kind: 'length', name: 'mean diameter of the layer being laid', sample: [0.06, 1.2] },
  },
  output: { symbol: 'psi', kind: 'angle', name: 'lead angle from the hoop direction' },
  sources: [],
  evidence: {
    form: { tag: 'chosen', derived: 'cylinder unrolled flat' },
    leadAngleSteep: { tag: 'chosen', note: 'cos^4 of 10 deg is 0.94' },
  },
  limits: [
    {
      sort: 'note',
      text: 'the tape runs more than 10 deg off the hoop direction; its hoop stiffness is no longer that of the ply',
      beyond: leadAngleSteep,
    },
  ],
});

import { finite, formula, positive, refuse } from '../../formula/index.js';
import type { Angle, Length } from '../../quantity/index.js';
import { sealPractice } from '../practice.js';

export interface PadHalfAngleInput {
  readonly padDiameter: Length;
  readonly outsideDiameter: Length;
}

/**
 * Half of the angle that a pad takes up round the pipe.
 *
 * $$\varphi = \frac{d_p}{D}$$
 *
 * @param input.padDiameter d_p, diameter of the pad, measured along the surface [m], > 0
 * @param input.outsideDiameter D, outside diameter of the pipe [m], > 0
 * @returns half-angle of the pad [rad]
 * @throws CalculationError `invalid-input`; `outside-validity` for a pad that reaches more than half round the pipe
 * @remarks Arc, not chord: a soft pad lies on the surface, and the smaller angle asks for more tension.
 */
export function padHalfAngle(input: PadHalfAngleInput): Angle {
  const { padDiameter: dP, outsideDiameter: D } = input;
  positive(dP, 'padDiameter', 'm');
  positive(D, 'outsideDiameter', 'm');
  const phi = dP / D;
  finite(phi, 'half-angle', 'rad');
  positive(phi, 'half-angle', 'rad');
  if (phi > Math.PI / 2) {
    refuse({
      code: 'outside-validity',
      parameter: 'padDiameter',
      value: dP,
      unit: 'm',
      constraint:
        'must reach at most half round the pipe, {limit}; beyond that the band pulls the pad sideways, and a full-circle seal is needed',
      limit: (D * Math.PI) / 2,
    });
  }
  return phi as Angle;
}

/** Whether the pipe is smaller than those that the trade seals with a band. */
export function padHalfAngleBelowPractice(input: PadHalfAngleInput): boolean {
  return input.outsideDiameter < sealPractice.leastPipeDiameter;
}

export const padHalfAngleFormula = /* @__PURE__ */ formula<PadHalfAngleInput, Angle>({
  id: 'seal/pad-half-angle',
  title: 'Half-angle of a pad on its pipe',
  compute: padHalfAngle,
  equation: { expression: 'd_p / D' },
  inputs: {
    padDiameter: {
      symbol: 'd_p',
      kind: 'length',
      name: 'diameter of the pad, measured along the surface',
      sample: [0.02, 0.15],
    },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter of the pipe', sample: [0.05, 1.2] },
  },
  output: { symbol: 'phi', kind: 'angle', name: 'half-angle of the pad' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'arc over radius' } },
  limits: [
    {
      sort: 'stop',
      text: 'A pad that reaches more than half round the pipe: the band no longer pulls all of it inward.',
    },
    {
      sort: 'note',
      text: 'Common practice: banded seals serve pipe from 50 mm in diameter upward.',
      beyond: padHalfAngleBelowPractice,
    },
  ],
});

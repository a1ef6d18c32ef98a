import { finite, formula, nonNegative, oneOf, positive } from '../../formula/index.js';
import type { Force, GaugePressure, Length } from '../../quantity/index.js';

const choices = ['left out', 'counted'] as const;

/** Whether the end load of the closed pipe is counted as a relief of the hoop line. */
export type EndLoadRelief = (typeof choices)[number];

export interface RelievingForceInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly axialForce: Force;
  readonly endLoad?: EndLoadRelief;
}

/**
 * Axial force that is counted in the hoop line of a laminate which carries everything.
 *
 * $$F = \begin{cases} \frac{\pi}{4} P D^2 + \min(0, F_{ax}) & \text{end load counted} \\ \min(0, F_{ax}) & \text{else}
 *   \end{cases}$$
 *
 * @param input.pressure         P, design pressure [Pa], >= 0
 * @param input.outsideDiameter  D, of the pipe [m], > 0
 * @param input.axialForce    F_ax, stated force along the pipe [N]; a pull above 0, a push below
 * @param input.endLoad          'left out' by default; 'counted' only while the end load is surely there
 * @returns force [N]; a pull, above 0, relieves the hoop line, a push adds to it
 * @throws CalculationError `invalid-input`
 * @remarks A push along the pipe bulges the laminate: it always counts. A stated pull never relieves.
 */
export function relievingForce(input: RelievingForceInput): Force {
  const { pressure: P, outsideDiameter: D, axialForce: Fax, endLoad = 'left out' } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  finite(Fax, 'axialForce', 'N');
  oneOf(endLoad, choices, 'endLoad');
  const relief = endLoad === 'counted' ? (Math.PI / 4) * P * D * D : 0;
  const force = relief + Math.min(0, Fax);
  finite(force, 'relieving force', 'N');
  return force as Force;
}

export const relievingForceFormula = /* @__PURE__ */ formula<RelievingForceInput, Force>({
  id: 'laminate/relieving-force',
  title: 'Axial force that counts in the hoop line',
  compute: relievingForce,
  equation: {
    branches: [
      { when: 'endLoad == "counted"', expression: 'pi / 4 * P * D^2 + min(0 * F_ax, F_ax)' },
      { expression: 'min(0 * F_ax, F_ax)' },
    ],
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'design pressure', sample: [0, 20e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter of the pipe', sample: [0.0213, 1.2] },
    axialForce: { symbol: 'F_ax', kind: 'force', name: 'stated axial force', sample: [-1e6, 1e6] },
    endLoad: {
      symbol: 'endLoad',
      kind: 'choice',
      name: 'relief by the end load',
      choices: ['left out', 'counted'],
      default: 'left out',
    },
  },
  output: { symbol: 'F', kind: 'force', name: 'axial force in the hoop line' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});

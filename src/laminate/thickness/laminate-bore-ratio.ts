import { formula, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface LaminateBoreRatioInput {
  readonly laminateThickness: Length;
  readonly outsideDiameter: Length;
}

/**
 * Hoop stress at the bore of a laminate over the mean hoop stress that thin equations use.
 *
 * $$k = \frac{a^2 + c^2}{a (a + c)}, \qquad a = \frac{D}{2}, \qquad c = \frac{D}{2} + t$$
 *
 * @param input.laminateThickness  t [m], > 0
 * @param input.outsideDiameter    D, of the pipe, which is the bore of the laminate [m], > 0
 * @returns ratio, from 1 for a thin laminate upward
 * @throws CalculationError `invalid-input`
 * @remarks Lame's thick cylinder under internal pressure, isotropic.
 * @see Hearn, Mechanics of Materials 1, as recalled
 */
export function laminateBoreRatio(input: LaminateBoreRatioInput): number {
  const { laminateThickness: t, outsideDiameter: D } = input;
  positive(t, 'laminateThickness', 'm');
  positive(D, 'outsideDiameter', 'm');
  const a = D / 2;
  const c = a + t;
  const ratio = (a * a + c * c) / (a * (a + c));
  positive(ratio, 'stress ratio', '');
  return ratio;
}

/** Whether the laminate is beyond D/12. */
export function laminateBoreRatioBeyondTwelfth(input: LaminateBoreRatioInput): boolean {
  return input.laminateThickness >= input.outsideDiameter / 12;
}

export const laminateBoreRatioFormula = /* @__PURE__ */ formula<LaminateBoreRatioInput, number>({
  id: 'laminate/laminate-bore-ratio',
  title: 'Bore stress over mean stress of the laminate',
  compute: laminateBoreRatio,
  equation: {
    where: [
      { symbol: 'a', kind: 'length', expression: 'D / 2' },
      { symbol: 'c', kind: 'length', expression: 'D / 2 + t' },
    ],
    expression: '(a^2 + c^2) / (a * (a + c))',
  },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0.001, 0.05] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
  },
  output: { symbol: 'k', kind: 'number', name: 'bore stress over mean stress' },
  sources: [{ key: 'hearn', locator: 'thick cylinders' }],
  evidence: { form: { tag: 'recalled', derived: 'two boundary conditions of the thick cylinder' } },
  limits: [
    {
      sort: 'note',
      text: 'beyond a twelfth of the diameter thin equations are 9 % low or more',
      beyond: laminateBoreRatioBeyondTwelfth,
    },
  ],
});

import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure } from '../../quantity/index.js';

export interface ProvenPressureInput {
  readonly testPressure: GaugePressure;
  readonly factor?: number | undefined;
}

/**
 * Operating pressure that a system test bears out: the test of a repair that is good for less than planned goes less high.
 *
 * $$P = P_t / f$$
 *
 * @param input.testPressure P_t, lowest pressure of the test [Pa], >= 0
 * @param input.factor       f, above 0; 1.1 when not given
 * @returns operating pressure [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Only a test that leaked nowhere, and that the laminate bears as it was laid, bears anything out.
 * @see ISO 24817 and ASME PCC-2, system pressure test, as recalled: 1.0 to 1.1
 */
export function provenPressure(input: ProvenPressureInput): GaugePressure {
  const { testPressure: Pt, factor: f = 1.1 } = input;
  nonNegative(Pt, 'testPressure', 'Pa');
  positive(f, 'factor', '');
  const P = Pt / f;
  finite(P, 'proven pressure', 'Pa');
  return P as GaugePressure;
}

/** Whether the test stayed below the pressure that it is to prove. */
export function provenPressureAboveTest(input: ProvenPressureInput): boolean {
  return (input.factor ?? 1.1) < 1;
}

export const provenPressureFormula = /* @__PURE__ */ formula<ProvenPressureInput, GaugePressure>({
  id: 'acceptance/proven-pressure',
  title: 'Pressure that a system test bears out',
  search: ['hydrotest', 'pressure test', 'rating by test', 'divided by 1.1'],
  compute: provenPressure,
  equation: { expression: 'P_t / f' },
  inputs: {
    testPressure: {
      symbol: 'P_t',
      kind: 'gauge pressure',
      name: 'lowest pressure of the test',
      sample: [0, 20e6],
    },
    factor: { symbol: 'f', kind: 'number', name: 'test factor', sample: [1, 1.5], default: 1.1 },
  },
  output: { symbol: 'P', kind: 'gauge pressure', name: 'operating pressure' },
  sources: [
    { key: 'iso-24817', locator: 'system pressure test' },
    { key: 'asme-pcc-2', locator: 'system pressure test' },
  ],
  evidence: {
    form: { tag: 'recalled', derived: 'the test pressure solved for the pressure of operation' },
    factor: { tag: 'recalled', note: '1.0 to 1.1; the code of the line governs' },
  },
  limits: [{ sort: 'note', text: 'The test stays below the operating pressure.', beyond: provenPressureAboveTest }],
});

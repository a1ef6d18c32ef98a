import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure } from '../../quantity/index.js';

export interface TestPressureInput {
  readonly pressure: GaugePressure;
  readonly factor?: number | undefined;
}

/**
 * Pressure of the system test of a repaired line.
 *
 * $$P_t = f P$$
 *
 * @param input.pressure P, operating pressure [Pa], >= 0
 * @param input.factor   f, above 0; 1.1 when not given
 * @returns test pressure [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The code of the line governs. Test only a cured repair, and see that pipe and flanges elsewhere bear it.
 * @see ISO 24817 and ASME PCC-2, system pressure test, as recalled: 1.0 to 1.1
 */
export function testPressure(input: TestPressureInput): GaugePressure {
  const { pressure: P, factor: f = 1.1 } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(f, 'factor', '');
  const Pt = f * P;
  finite(Pt, 'test pressure', 'Pa');
  return Pt as GaugePressure;
}

/** Whether the test stays below the pressure at which the line runs, so that it proves nothing. */
export function testPressureBelowOperation(input: TestPressureInput): boolean {
  return (input.factor ?? 1.1) < 1;
}

export const testPressureFormula = /* @__PURE__ */ formula<TestPressureInput, GaugePressure>({
  id: 'acceptance/test-pressure',
  title: 'Pressure of the system test',
  search: ['hydrotest', 'leak test', 'pressure test', '1.1 times'],
  compute: testPressure,
  equation: { expression: 'f * P' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'operating pressure', sample: [0, 20e6] },
    factor: { symbol: 'f', kind: 'number', name: 'test factor', sample: [1, 1.5], default: 1.1 },
  },
  output: { symbol: 'P_t', kind: 'gauge pressure', name: 'test pressure' },
  sources: [
    { key: 'iso-24817', locator: 'system pressure test' },
    { key: 'asme-pcc-2', locator: 'system pressure test' },
  ],
  evidence: {
    form: { tag: 'recalled' },
    factor: { tag: 'recalled', note: '1.0 to 1.1; the code of the line governs' },
  },
  limits: [{ sort: 'note', text: 'The test stays below the operating pressure.', beyond: testPressureBelowOperation }],
});

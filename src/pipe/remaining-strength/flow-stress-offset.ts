import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Stress } from '../../quantity/index.js';

export interface FlowStressOffsetInput {
  readonly yieldStrength: Stress;
  readonly offset?: Stress;
  readonly highestYield?: Stress;
}

const TEN_KSI = 69e6 as Stress;
const X70 = 483e6 as Stress;

/**
 * Flow stress as yield strength plus 69 MPa (10 ksi): the stress at which a strained ligament gives way.
 *
 * $$S_{flow} = S_y + 69\ \mathrm{MPa}$$
 *
 * @param input.yieldStrength  S_y, specified minimum yield strength [Pa], > 0
 * @param input.offset         dS [Pa], >= 0; 69 MPa by default, 10 ksi being 68.95 MPa
 * @param input.highestYield   yield strength up to which the form is meant [Pa], > 0; 483 MPa (X70) by default; a warning only
 * @returns flow stress [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks For low grades this lies above 1.1 S_y, by 8 per cent at grade B: say which of the two was used. Not above the
 *   tensile strength; for pipe below 120 degC.
 * @see ASME B31G, Level 1; PRCI PR-3-805
 */
export function flowStressOffset(input: FlowStressOffsetInput): Stress {
  const { yieldStrength: S, offset: dS = TEN_KSI, highestYield = X70 } = input;
  positive(S, 'yieldStrength', 'Pa');
  nonNegative(dS, 'offset', 'Pa');
  positive(highestYield, 'highestYield', 'Pa');
  const flow = S + dS;
  finite(flow, 'flow stress', 'Pa');
  return flow as Stress;
}

/** Whether the yield strength is above the one up to which yield plus 69 MPa is meant. */
export function flowStressOffsetBeyondRange({ yieldStrength, highestYield = X70 }: FlowStressOffsetInput): boolean {
  return yieldStrength > highestYield;
}

export const flowStressOffsetFormula = /* @__PURE__ */ formula<FlowStressOffsetInput, Stress>({
  id: 'pipe/flow-stress-offset',
  title: 'Flow stress as yield strength plus 69 MPa',
  search: ['smys', '10 ksi'],
  compute: flowStressOffset,
  equation: { expression: 'S_y + dS' },
  inputs: {
    yieldStrength: { symbol: 'S_y', kind: 'stress', name: 'specified minimum yield strength', sample: [150e6, 700e6] },
    offset: { symbol: 'dS', kind: 'stress', name: 'stress added to yield', sample: [0, 80e6], default: 69e6 },
    highestYield: {
      symbol: 'S_max',
      kind: 'stress',
      name: 'yield strength up to which the form is meant',
      sample: [400e6, 600e6],
      default: 483e6,
    },
  },
  output: { symbol: 'S_flow', kind: 'stress', name: 'flow stress' },
  sources: [
    { key: 'asme-b31g', locator: 'flow stress, Level 1' },
    { key: 'kiefner-vieth-1989', locator: 'flow stress' },
  ],
  evidence: { form: { tag: 'secondary' }, offset: { tag: 'secondary' }, highestYield: { tag: 'recalled' } },
  limits: [
    {
      sort: 'note',
      text: 'Meant for yield strengths up to 483 MPa (X70).',
      beyond: flowStressOffsetBeyondRange,
      source: { key: 'asme-b31g', locator: '1.7, as recalled' },
    },
  ],
});

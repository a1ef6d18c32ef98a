import { formula, positive } from '../formula/index.js';
import type { Area, Length } from '../quantity/index.js';

export interface TapeAreaInput {
  readonly tapeWidth: Length;
  readonly tapeLength: Length;
}

/**
 * Area of a length of tape or sheet.
 *
 * $$A = w L$$
 *
 * @param input.tapeWidth w, width of the tape [m], > 0
 * @param input.tapeLength L, length of the tape [m], > 0
 * @returns area [m2]
 * @throws CalculationError `invalid-input`
 * @see Pipeline Rules of Thumb Handbook, pp. 192 and 227
 */
export function tapeArea(input: TapeAreaInput): Area {
  const { tapeWidth: w, tapeLength: L } = input;
  positive(w, 'tapeWidth', 'm');
  positive(L, 'tapeLength', 'm');
  const A = w * L;
  positive(A, 'tapeArea', 'm2');
  return A as Area;
}

export const tapeAreaFormula = /* @__PURE__ */ formula<TapeAreaInput, Area>({
  id: 'wrap/tape-area',
  title: 'Area of a length of tape',
  search: ['material takeoff', 'square metres'],
  compute: tapeArea,
  equation: { expression: 'w * L' },
  inputs: {
    tapeWidth: { symbol: 'w', kind: 'length', name: 'width of the tape', sample: [0.025, 0.3] },
    tapeLength: { symbol: 'L', kind: 'length', name: 'length of the tape', sample: [0.1, 500] },
  },
  output: { symbol: 'A', kind: 'area', name: 'area of the tape' },
  sources: [{ key: 'rules-of-thumb', locator: 'pp. 192 and 227' }],
  evidence: { form: { tag: 'published' } },
  limits: [],
});

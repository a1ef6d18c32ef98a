import { formula, positive } from '../formula/index.js';
import type { Area, Length } from '../quantity/index.js';

export interface WrappedAreaInput {
  readonly outsideDiameter: Length;
  readonly axialLength: Length;
}

/**
 * Outside surface of a length of pipe, for coating, primer and tape.
 *
 * $$A = \pi D L$$
 *
 * @param input.outsideDiameter D, outside diameter [m], > 0
 * @param input.axialLength L, length along the pipe [m], > 0
 * @returns outside surface [m2]
 * @throws CalculationError `invalid-input`
 * @see Pipeline Rules of Thumb Handbook, p. 227
 */
export function wrappedArea(input: WrappedAreaInput): Area {
  const { outsideDiameter: D, axialLength: L } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(L, 'axialLength', 'm');
  const A = Math.PI * D * L;
  positive(A, 'wrappedArea', 'm2');
  return A as Area;
}

export const wrappedAreaFormula = /* @__PURE__ */ formula<WrappedAreaInput, Area>({
  id: 'wrap/wrapped-area',
  title: 'Outside surface of a pipe',
  search: ['surface area', 'blast area', 'paint area'],
  compute: wrappedArea,
  equation: { expression: 'pi * D * L' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.02, 1.5] },
    axialLength: { symbol: 'L', kind: 'length', name: 'length along the pipe', sample: [0.05, 2000] },
  },
  output: { symbol: 'A', kind: 'area', name: 'outside surface' },
  sources: [{ key: 'rules-of-thumb', locator: 'p. 227' }],
  evidence: { form: { tag: 'published' } },
  limits: [],
});

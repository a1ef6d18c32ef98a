import { finite, formula, nonNegative, positive } from '../formula/index.js';
import type { Force, GaugePressure, Length } from '../quantity/index.js';

export interface EndLoadInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly axialForce?: Force | undefined;
}

/**
 * Force along the pipe that a leak seal does nothing to carry: of the pressure, and of what pulls beside it.
 *
 * $$F_e = \frac{\pi p D^2}{4} + \max(F, 0)$$
 *
 * @param input.pressure p, pressure in the line [Pa], >= 0
 * @param input.outsideDiameter D, outside diameter of the pipe [m], > 0
 * @param input.axialForce F, along the pipe beside that of the pressure, a push below 0 [N]; 0 when not given
 * @returns end load [N]
 * @throws CalculationError `invalid-input`
 * @remarks On the outside diameter, the safe reading once fluid has crept under the pad. Pipe has parted inside a
 *   leak-sealing clamp: the wall that is left must carry this force, or the pipe must be restrained.
 * @see UK Health and Safety Executive, note on leak-sealing repair clamps
 */
export function endLoad(input: EndLoadInput): Force {
  const { pressure: p, outsideDiameter: D, axialForce: F = 0 } = input;
  nonNegative(p, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  finite(F, 'axialForce', 'N');
  const force = (Math.PI * p * D * D) / 4 + Math.max(F, 0);
  finite(force, 'end load', 'N');
  return force as Force;
}

export const endLoadFormula = /* @__PURE__ */ formula<EndLoadInput, Force>({
  id: 'seal/end-load',
  title: 'End load that the seal does not carry',
  search: ['end cap', 'thrust', 'pull-out'],
  compute: endLoad,
  equation: {
    where: [{ symbol: 'F_t', kind: 'force', expression: 'max(F, 0 * F)' }],
    expression: 'pi * p * D^2 / 4 + F_t',
  },
  inputs: {
    pressure: { symbol: 'p', kind: 'gauge pressure', name: 'pressure in the line', sample: [0, 10e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter of the pipe', sample: [0.05, 1.2] },
    axialForce: {
      symbol: 'F',
      kind: 'force',
      name: 'force along the pipe beside that of the pressure',
      sample: [-1e5, 1e5],
      default: 0,
    },
  },
  output: { symbol: 'F_e', kind: 'force', name: 'end load' },
  sources: [{ key: 'hse-leak-sealing-clamps', locator: 'end load and external pressure' }],
  evidence: { form: { tag: 'secondary', derived: 'pressure times the area of the end, and the pull beside it' } },
  limits: [],
});

import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, Length, Modulus, Temperature, ThermalExpansion } from '../../quantity/index.js';

export interface ForceOfHeldLineInput {
  readonly axialForce: Force;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly modulus: Modulus;
  readonly expansion: ThermalExpansion;
  readonly tieInTemperature: Temperature;
  readonly temperature: Temperature;
}

/**
 * Force along a line that is held at its ends, of the stated force and of what keeps heat from lengthening it or cold from
 * shortening it.
 *
 * $$F = F_0 + \pi t (D - t)\,E \alpha (T_1 - T_2)$$
 *
 * @param input.axialForce        F_0, stated, without that of the temperature [N]; a pull above 0
 * @param input.outsideDiameter   D [m], > 0
 * @param input.wallThickness     t, of the sound pipe [m], > 0 and < D/2
 * @param input.modulus           E of the pipe [Pa], > 0
 * @param input.expansion         alpha of the pipe [1/K], >= 0
 * @param input.tieInTemperature  T_1, at which the line was tied in and bore no force of temperature [K], > 0
 * @param input.temperature       T_2, of the steel [K], > 0
 * @returns force [N]; a pull above 0, where the steel is colder than at tie-in
 * @throws CalculationError `invalid-input`
 * @remarks Elastic, held wholly: soil or anchors that give way leave less. The stress of the restrained line of ASME B31.8 on the
 *   metal of the sound pipe.
 * @see ASME B31.8, 833; Pipeline Rules of Thumb Handbook, p. 121
 */
export function forceOfHeldLine(input: ForceOfHeldLineInput): Force {
  const { axialForce: F0, outsideDiameter: D, wallThickness: t, modulus: E, expansion: alpha } = input;
  const { tieInTemperature: T1, temperature: T2 } = input;
  finite(F0, 'axialForce', 'N');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  positive(E, 'modulus', 'Pa');
  nonNegative(alpha, 'expansion', '1/K');
  positive(T1, 'tieInTemperature', 'K');
  positive(T2, 'temperature', 'K');
  const force = F0 + Math.PI * t * (D - t) * E * alpha * (T1 - T2);
  finite(force, 'force', 'N');
  return force as Force;
}

export const forceOfHeldLineFormula = /* @__PURE__ */ formula<ForceOfHeldLineInput, Force>({
  id: 'pipe/force-of-held-line',
  title: 'Force along a line that is held at its ends',
  search: ['thermal end load', 'restrained', 'thermal expansion'],
  compute: forceOfHeldLine,
  equation: { expression: 'F_0 + pi * t * (D - t) * E * alpha * (T_1 - T_2)' },
  inputs: {
    axialForce: { symbol: 'F_0', kind: 'force', name: 'stated force', sample: [-1e5, 1e5] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.001, 0.04] },
    modulus: { symbol: 'E', kind: 'modulus', name: "Young's modulus", sample: [150e9, 220e9] },
    expansion: { symbol: 'alpha', kind: 'thermal expansion', name: 'thermal expansion', sample: [1e-5, 2e-5] },
    tieInTemperature: { symbol: 'T_1', kind: 'temperature', name: 'temperature at tie-in', sample: [250, 320] },
    temperature: { symbol: 'T_2', kind: 'temperature', name: 'temperature of the steel', sample: [250, 450] },
  },
  output: { symbol: 'F', kind: 'force', name: 'force along the line' },
  sources: [
    { key: 'rules-of-thumb', locator: 'p. 121' },
    { key: 'asme-b31-8', locator: '833.3' },
  ],
  evidence: { form: { tag: 'published', derived: 'elastic strain that cancels the free expansion, on the metal' } },
  limits: [],
});

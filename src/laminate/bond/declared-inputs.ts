/** Inputs that the formulas of the bond declare in the same words. */

export const innerModulus = {
  symbol: 'E_i',
  kind: 'modulus',
  name: 'modulus of the inner layer',
  sample: [65e9, 210e9],
} as const;
export const innerThickness = {
  symbol: 't_i',
  kind: 'length',
  name: 'thickness of the inner layer',
  sample: [0.003, 0.02],
} as const;
export const outerModulus = {
  symbol: 'E_o',
  kind: 'modulus',
  name: 'modulus of the outer layer',
  sample: [8e9, 60e9],
} as const;
export const outerThickness = {
  symbol: 't_o',
  kind: 'length',
  name: 'thickness of the outer layer',
  sample: [0.002, 0.03],
} as const;
export const bondShearModulus = {
  symbol: 'G',
  kind: 'modulus',
  name: 'shear modulus of the bond',
  sample: [0.3e9, 1.5e9],
} as const;
export const bondThickness = {
  symbol: 'h',
  kind: 'length',
  name: 'thickness of the bond',
  sample: [0.0001, 0.002],
} as const;
export const overlap = { symbol: 'l', kind: 'length', name: 'length of the bond', sample: [0.02, 0.1] } as const;
export const lineLoad = {
  symbol: 'N',
  kind: 'line load',
  name: 'load that the bond passes',
  sample: [1e4, 1e6],
} as const;
export const innerExpansion = {
  symbol: 'alpha_i',
  kind: 'thermal expansion',
  name: 'expansion of the inner layer',
  sample: [1e-5, 2.4e-5],
} as const;
export const outerExpansion = {
  symbol: 'alpha_o',
  kind: 'thermal expansion',
  name: 'expansion of the outer layer',
  sample: [-1e-6, 3e-5],
} as const;
export const temperatureChange = {
  symbol: 'dT',
  kind: 'temperature difference',
  name: 'change of temperature since the bond set',
  sample: [-60, 60],
} as const;

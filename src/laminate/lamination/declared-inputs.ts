/** Inputs that many formulas of the folder declare in the same words. */

export const alongModulus = {
  symbol: 'E_1',
  kind: 'modulus',
  name: 'modulus along the fibres',
  sample: [8e9, 180e9],
} as const;
export const acrossModulus = {
  symbol: 'E_2',
  kind: 'modulus',
  name: 'modulus across the fibres',
  sample: [4e9, 8e9],
} as const;
export const shearModulus = {
  symbol: 'G_12',
  kind: 'modulus',
  name: 'shear modulus in the plane',
  sample: [1.5e9, 8e9],
} as const;
export const poissonRatio = {
  symbol: 'nu_12',
  kind: 'number',
  name: "Poisson's ratio, along to across",
  sample: [0, 0.4],
} as const;

export const plies = {
  symbol: 'plies',
  kind: 'list',
  name: 'plies from z = -h/2 upward',
  columns: {
    thickness: 'length',
    angle: 'angle',
    alongModulus: 'modulus',
    acrossModulus: 'modulus',
    shearModulus: 'modulus',
    poissonRatio: 'number',
  },
} as const;

export const alongStress = {
  symbol: 'sigma_1',
  kind: 'stress',
  name: 'stress along the fibres',
  sample: [-5e8, 5e8],
} as const;
export const acrossStress = {
  symbol: 'sigma_2',
  kind: 'stress',
  name: 'stress across the fibres',
  sample: [-5e7, 5e7],
} as const;
export const shearStress = {
  symbol: 'tau_12',
  kind: 'stress',
  name: 'shear stress in the plane',
  sample: [-5e7, 5e7],
} as const;
export const alongTension = {
  symbol: 'X_t',
  kind: 'stress',
  name: 'tensile strength along',
  sample: [2e8, 2e9],
} as const;
export const alongCompression = {
  symbol: 'X_c',
  kind: 'stress',
  name: 'compressive strength along',
  sample: [2e8, 2e9],
} as const;
export const acrossTension = {
  symbol: 'Y_t',
  kind: 'stress',
  name: 'tensile strength across',
  sample: [2e7, 8e7],
} as const;
export const acrossCompression = {
  symbol: 'Y_c',
  kind: 'stress',
  name: 'compressive strength across',
  sample: [6e7, 3e8],
} as const;
export const shearStrength = { symbol: 'S', kind: 'stress', name: 'shear strength', sample: [3e7, 1e8] } as const;

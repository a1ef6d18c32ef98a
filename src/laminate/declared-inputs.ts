/** Inputs that the formulas of a laminate over an opening declare in the same words. */

export const laminateThickness = {
  symbol: 't',
  kind: 'length',
  name: 'laminate thickness',
  sample: [0.002, 0.05],
} as const;
export const holeDiameter = { symbol: 'd', kind: 'length', name: 'hole diameter', sample: [0.015, 0.1] } as const;
export const slotWidth = { symbol: 'W', kind: 'length', name: 'width of the slot', sample: [0.015, 0.1] } as const;
export const hoopModulus = {
  symbol: 'E_c',
  kind: 'modulus',
  name: 'hoop modulus of the laminate',
  sample: [8e9, 80e9],
} as const;
export const axialModulus = {
  symbol: 'E_a',
  kind: 'modulus',
  name: 'axial modulus of the laminate',
  sample: [4e9, 40e9],
} as const;
export const poissonRatio = {
  symbol: 'nu_ca',
  kind: 'number',
  name: "Poisson's ratio, hoop to axial",
  sample: [0, 0.4],
} as const;
export const stripModulus = {
  symbol: 'E_p',
  kind: 'modulus',
  name: 'modulus of the strip',
  sample: [4e9, 90e9],
} as const;
export const shearModulus = {
  symbol: 'G',
  kind: 'modulus',
  name: 'shear modulus of the laminate',
  sample: [1e9, 6e9],
} as const;
export const energyReleaseRate = {
  symbol: 'gamma',
  kind: 'energy release rate',
  name: 'energy release rate of the bond',
  sample: [50, 500],
} as const;
export const serviceFactor = { symbol: 'f', kind: 'number', name: 'service factor', sample: [0.1, 1] } as const;
export const edgeFactor = { symbol: 'h', kind: 'number', name: 'edge factor', default: 1, sample: [1, 10] } as const;
export const turningRoot = {
  symbol: 'm',
  kind: 'number',
  name: 'release with a root that turns over that of a clamped one',
  default: 1.4,
  sample: [1, 1.6],
} as const;

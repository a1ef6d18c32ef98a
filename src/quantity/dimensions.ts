import type { Kind } from './quantity.js';

/** Exponents of the base units kilogram, metre, second, kelvin, mole and ampere. An angle, a ratio and a strain have none. */
export interface Dimension {
  readonly kg?: number;
  readonly m?: number;
  readonly s?: number;
  readonly K?: number;
  readonly mol?: number;
  readonly A?: number;
}

/** The base units, in the order in which a unit is written out. */
export const baseUnits = ['kg', 'm', 's', 'K', 'mol', 'A'] as const satisfies readonly (keyof Dimension)[];

/** The dimension of every kind: what the homogeneity test scales by, and what mathjs must find for a result. */
export const dimensions: Readonly<Record<Kind, Dimension>> = {
  length: { m: 1 },
  area: { m: 2 },
  volume: { m: 3 },
  time: { s: 1 },
  mass: { kg: 1 },
  force: { kg: 1, m: 1, s: -2 },
  moment: { kg: 1, m: 2, s: -2 },
  energy: { kg: 1, m: 2, s: -2 },
  'gauge pressure': { kg: 1, m: -1, s: -2 },
  'absolute pressure': { kg: 1, m: -1, s: -2 },
  stress: { kg: 1, m: -1, s: -2 },
  modulus: { kg: 1, m: -1, s: -2 },
  density: { kg: 1, m: -3 },
  'areal weight': { kg: 1, m: -2 },
  'energy release rate': { kg: 1, s: -2 },
  'leak severity': { kg: 1, m: -1 / 2, s: -2 },
  temperature: { K: 1 },
  'temperature difference': { K: 1 },
  'thermal expansion': { K: -1 },
  ratio: {},
  strain: {},
  angle: {},
  'corrosion rate': { m: 1, s: -1 },
  speed: { m: 1, s: -1 },
  acceleration: { m: 1, s: -2 },
  'volume flow': { m: 3, s: -1 },
  'mass flow': { kg: 1, s: -1 },
  'activation energy': { kg: 1, m: 2, s: -2, mol: -1 },
  'rate constant': { s: -1 },
  'molar mass': { kg: 1, mol: -1 },
  'specific energy': { m: 2, s: -2 },
  'specific heat': { m: 2, s: -2, K: -1 },
  conductivity: { kg: -1, m: -3, s: 3, A: 2 },
  'molar heat capacity': { kg: 1, m: 2, s: -2, K: -1, mol: -1 },
  'molar enthalpy': { kg: 1, m: 2, s: -2, mol: -1 },
  'thermal conductivity': { kg: 1, m: 1, s: -3, K: -1 },
  'temperature coefficient': { K: -1 },
  'salt conductance factor': { kg: 2, s: -3, A: -2 },
  'line load': { kg: 1, s: -2 },
  'line moment': { kg: 1, m: 1, s: -2 },
  curvature: { m: -1 },
  'extensional stiffness': { kg: 1, s: -2 },
  'coupling stiffness': { kg: 1, m: 1, s: -2 },
  'bending stiffness': { kg: 1, m: 2, s: -2 },
};

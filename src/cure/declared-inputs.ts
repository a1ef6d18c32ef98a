/**
 * Inputs that many formulas of the room declare in the same words.
 *
 * A declaration names each of them. A bundler drops a constant that is named; what is spread into a literal it keeps.
 */

export const gasConstant = {
  symbol: 'R',
  kind: 'molar heat capacity',
  name: 'molar gas constant',
  sample: [8.314, 8.3145],
  default: 8.31446261815324,
} as const;

export const referenceTemperature = {
  symbol: 'T_ref',
  kind: 'temperature',
  name: 'reference temperature',
  sample: [288.15, 308.15],
} as const;

export const mechanism = {
  symbol: 'mechanism',
  kind: 'choice',
  name: 'cure mechanism',
  choices: ['two-part reaction', 'moisture'],
} as const;

export const testedFrom = {
  symbol: 'T_low',
  kind: 'temperature',
  name: 'lowest tested temperature',
  sample: [273.15, 288.15],
  optional: true,
} as const;

export const testedTo = {
  symbol: 'T_high',
  kind: 'temperature',
  name: 'highest tested temperature',
  sample: [308.15, 333.15],
  optional: true,
} as const;

export const minimumTemperature = {
  symbol: 'T_min',
  kind: 'temperature',
  name: 'minimum cure temperature',
  sample: [273.15, 288.15],
} as const;

export const temperature = { symbol: 'T', kind: 'temperature', name: 'temperature', sample: [278.15, 333.15] } as const;

export const activationEnergy = {
  symbol: 'E',
  kind: 'activation energy',
  name: "maker's activation energy",
  sample: [40e3, 80e3],
  optional: true,
} as const;

export const lowEnergy = {
  symbol: 'E_low',
  kind: 'activation energy',
  name: 'low bound without it',
  sample: [35e3, 45e3],
  default: 40000,
} as const;

export const typicalEnergy = {
  symbol: 'E_typ',
  kind: 'activation energy',
  name: 'typical value without it',
  sample: [45e3, 55e3],
  default: 50000,
} as const;

export const highEnergy = {
  symbol: 'E_high',
  kind: 'activation energy',
  name: 'high bound without it',
  sample: [55e3, 70e3],
  default: 60000,
} as const;

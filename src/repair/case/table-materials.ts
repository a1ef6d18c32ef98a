import type { Fields } from './table-field.js';

/** The cure of a two-part material or of one that cures by moisture. */
export const cure = {
  kind: 'variants',
  by: 'mechanism',
  variants: {
    'two-part reaction': {
      referenceTemperature: { kind: 'temperature', above: 0, usual: [278.15, 373.15] },
      cureTime: { kind: 'time', above: 0, usual: [300, 1.21e6] },
      workingTime: { kind: 'time', above: 0, usual: [60, 28_800] },
      activationEnergy: { kind: 'activation energy', optional: true, above: 0, usual: [35e3, 100e3] },
      testedFrom: { kind: 'temperature', above: 0, usual: [253.15, 353.15] },
      testedTo: { kind: 'temperature', above: 0, usual: [278.15, 423.15] },
      minimumTemperature: { kind: 'temperature', above: 0, usual: [253.15, 353.15] },
    },
    moisture: {
      rows: {
        kind: 'list',
        least: 1,
        row: {
          kind: 'block',
          fields: {
            temperature: { kind: 'temperature', above: 0, usual: [258.15, 333.15] },
            humidity: { kind: 'ratio', from: 0, to: 1, usual: [0.1, 1] },
            cureTime: { kind: 'time', above: 0, usual: [300, 1.21e6] },
            workingTime: { kind: 'time', above: 0, usual: [60, 28_800] },
          },
        },
      },
    },
  },
} as const;

/** What a two-part material that is mixed on site has beside its cure. */
const mixed = {
  parts: {
    kind: 'block',
    fields: {
      base: { kind: 'number', above: 0, usual: [0.05, 1000] },
      hardener: { kind: 'number', above: 0, usual: [0.05, 1000] },
    },
  },
  kitMass: { kind: 'mass', above: 0, usual: [0.02, 50] },
  rate: { kind: 'mass flow', above: 0, usual: [1e-4, 0.1] },
  waste: { kind: 'ratio', optional: true, from: 0, below: 1, usual: [0, 0.4] },
} as const satisfies Fields;

const modulus = { kind: 'modulus', above: 0, usual: [2e9, 250e9] } as const;
const energyReleaseRate = { kind: 'energy release rate', above: 0, usual: [20, 2000] } as const;

/** What a cured material stands. */
export const resists = {
  kind: 'block',
  optional: true,
  needed: 'to sign',
  fields: {
    contents: { kind: 'text' },
    temperature: { kind: 'temperature', above: 0, usual: [233.15, 473.15] },
    statedBy: { kind: 'text' },
  },
} as const;

export const laminate = {
  name: { kind: 'text' },
  hoopModulus: modulus,
  axialModulus: modulus,
  poissonRatio: { kind: 'number', from: 0, below: 1, usual: [0.02, 0.6] },
  shearModulus: { kind: 'modulus', optional: true, needed: 'for numbers', above: 0, usual: [0.5e9, 20e9] },
  plyThickness: { kind: 'length', above: 0, usual: [0.15e-3, 4e-3] },
  qualifiedPlies: { kind: 'count', optional: true, from: 1, usual: [1, 20] },
  // Nothing that a pipe is wrapped with stretches by a fifth: a per cent sign was left out.
  strainToFailure: {
    kind: 'strain',
    optional: true,
    needed: 'for numbers',
    above: 0,
    below: 0.2,
    usual: [0.0015, 0.06],
  },
  qualifiedStrains: {
    kind: 'block',
    optional: true,
    fields: {
      hoop: { kind: 'strain', above: 0, usual: [5e-4, 0.01] },
      axial: { kind: 'strain', above: 0, usual: [2e-4, 0.01] },
    },
  },
  hoopExpansion: { kind: 'thermal expansion', optional: true, needed: 'for numbers', usual: [-3e-6, 80e-6] },
  axialExpansion: { kind: 'thermal expansion', optional: true, needed: 'for numbers', usual: [-3e-6, 80e-6] },
  glassTransition: { kind: 'temperature', optional: true, needed: 'for numbers', above: 0, usual: [313.15, 523.15] },
  wetGlassTransition: { kind: 'temperature', optional: true, above: 0, usual: [303.15, 523.15] },
  heatDistortion: { kind: 'temperature', optional: true, above: 0, usual: [313.15, 523.15] },
  transitionCuredAt: { kind: 'temperature', optional: true, needed: 'to sign', above: 0, usual: [273.15, 423.15] },
  fibre: { kind: 'choice', optional: true, needed: 'to sign', words: ['glass', 'carbon'] },
  isolatingLayer: { kind: 'text', optional: true, needed: 'to sign' },
  lowestTemperature: { kind: 'temperature', optional: true, needed: 'to sign', above: 0, usual: [193.15, 293.15] },
  resists,
  energyReleaseRate: {
    kind: 'energy release rate',
    optional: true,
    needed: 'for numbers',
    above: 0,
    usual: [20, 2000],
  },
  holeTests: {
    kind: 'list',
    optional: true,
    least: 1,
    row: {
      kind: 'block',
      fields: {
        holeDiameter: { kind: 'length', above: 0, usual: [5e-3, 60e-3] },
        laminateThickness: { kind: 'length', above: 0, usual: [1e-3, 40e-3] },
        pressure: { kind: 'gauge pressure', above: 0, usual: [1e5, 100e6] },
      },
    },
  },
  energyReleaseRateOverSeal: {
    kind: 'block',
    optional: true,
    fields: { energyReleaseRate, footprint: { kind: 'length', above: 0, usual: [0.02, 0.5] } },
  },
  atDesignTemperature: {
    kind: 'block',
    optional: true,
    fields: { energyReleaseRate, hoopModulus: modulus, axialModulus: modulus },
  },
  lapShearStrength: { kind: 'stress', optional: true, needed: 'for numbers', above: 0, usual: [2e6, 40e6] },
  longTermStrength: {
    kind: 'block',
    optional: true,
    fields: {
      strength: { kind: 'stress', above: 0, usual: [20e6, 1500e6] },
      test: { kind: 'choice', words: ['1000 h survival', 'design life regression'] },
      testTemperature: { kind: 'temperature', optional: true, above: 0, usual: [253.15, 423.15] },
      second: {
        kind: 'block',
        optional: true,
        fields: {
          testTemperature: { kind: 'temperature', above: 0, usual: [253.15, 423.15] },
          strength: { kind: 'stress', above: 0, usual: [20e6, 1500e6] },
        },
      },
    },
  },
  cure,
} as const satisfies Fields;

const stock = {
  width: { kind: 'length', above: 0, usual: [0.02, 1.6] },
  rollLength: { kind: 'length', above: 0, usual: [1, 300] },
  waste: { kind: 'ratio', optional: true, from: 0, below: 1, usual: [0, 0.4] },
} as const satisfies Fields;

/** Tape or sheet. */
export const wrap = {
  kind: 'variants',
  by: 'form',
  variants: {
    tape: {
      width: stock.width,
      overlap: { kind: 'ratio', from: 0, below: 1, usual: [0, 0.8] },
      rollLength: stock.rollLength,
      waste: stock.waste,
    },
    sheet: {
      width: stock.width,
      rollLength: stock.rollLength,
      finalLap: { kind: 'length', optional: true, from: 0, usual: [0.02, 0.6] },
      waste: stock.waste,
    },
  },
} as const;

/** Fabric wetted out on site. */
export const resin = {
  fabricWeight: { kind: 'areal weight', above: 0, usual: [0.1, 2] },
  fibreMassFraction: { kind: 'ratio', above: 0, below: 1, usual: [0.3, 0.8] },
  parts: mixed.parts,
  kitMass: mixed.kitMass,
  rate: mixed.rate,
  waste: mixed.waste,
} as const satisfies Fields;

/** What the surface is built up with. */
export const filler = {
  name: { kind: 'text' },
  thickness: { kind: 'length', above: 0, usual: [0.1e-3, 0.03] },
  thicknessOverDefect: { kind: 'length', above: 0, usual: [0.5e-3, 0.06] },
  greatestLift: { kind: 'length', optional: true, needed: 'to sign', above: 0, usual: [1e-3, 0.1] },
  density: { kind: 'density', above: 0, usual: [600, 3500] },
  parts: mixed.parts,
  kitMass: mixed.kitMass,
  rate: mixed.rate,
  waste: mixed.waste,
  underWholeWrap: { kind: 'flag', optional: true },
  qualifiedOverFiller: { kind: 'block', optional: true, fields: { energyReleaseRate } },
  cure,
} as const satisfies Fields;

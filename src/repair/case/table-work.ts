import type { Fields } from './table-field.js';
import { cure, resists } from './table-materials.js';

const pipeTemperature = { kind: 'temperature', above: 0, usual: [233.15, 373.15] } as const;
const airTemperature = { kind: 'temperature', above: 0, usual: [233.15, 333.15] } as const;
const humidity = { kind: 'ratio', from: 0, to: 1, usual: [0.05, 1] } as const;
const duration = { kind: 'time', above: 0, usual: [600, 1.3e6] } as const;
const profile = { kind: 'length', above: 0, usual: [15e-6, 200e-6] } as const;
const atmosphere = { kind: 'absolute pressure', above: 0, usual: [6e4, 1.1e5] } as const;
const grade = { kind: 'choice', words: ['St 2', 'St 3', 'SP 11', 'Sa 1', 'Sa 2', 'Sa 2 1/2', 'Sa 3'] } as const;

const underPressure = {
  pressure: { kind: 'gauge pressure', above: 0, usual: [1e3, 3e7] },
  writtenProcedure: { kind: 'text' },
} as const satisfies Fields;

/** The line while people work on it. */
export const line = {
  kind: 'variants',
  by: 'state',
  variants: { 'under pressure': underPressure, 'static head': underPressure, 'empty, dry, isolated, vented': {} },
} as const;

/** The air and the steel on the day of the work. */
export const site = {
  pipeTemperature,
  airTemperature,
  relativeHumidity: humidity,
  instruments: {
    kind: 'block',
    optional: true,
    fields: {
      temperatureError: { kind: 'temperature difference', from: 0, usual: [0.05, 3] },
      humidityError: { kind: 'ratio', from: 0, below: 1, usual: [0.002, 0.1] },
    },
  },
  surface: {
    kind: 'block',
    optional: true,
    fields: {
      grade,
      profile,
      salts: { kind: 'areal weight', optional: true, from: 0, usual: [0, 1e-3] },
      qualified: { kind: 'block', optional: true, fields: { grade, profile } },
    },
  },
  history: {
    kind: 'list',
    optional: true,
    least: 1,
    row: { kind: 'block', fields: { duration, temperature: pipeTemperature } },
  },
  forecast: {
    kind: 'list',
    optional: true,
    least: 1,
    row: {
      kind: 'block',
      fields: { duration, pipeTemperature, airTemperature, relativeHumidity: humidity },
    },
  },
} as const satisfies Fields;

/** A safety factor of the leak seal. */
const factor = { kind: 'number', from: 1, usual: [1.1, 6] } as const;

/** How the leak is held before the wrap. */
export const seal = {
  siteLimit: { kind: 'gauge pressure', from: 0, usual: [0, 5e6] },
  pad: {
    kind: 'block',
    fields: {
      multiple: { kind: 'number', above: 0, usual: [1.5, 30] },
      multipleOf: { kind: 'choice', words: ['area', 'diameter', 'not stated'] },
      margin: { kind: 'length', from: 0, usual: [0.005, 0.2] },
    },
  },
  bands: { kind: 'choice', optional: true, needed: 'for numbers', words: ['removed before the wrap', 'left'] },
  collar: { kind: 'length', optional: true, needed: 'for numbers', none: true, above: 0, usual: [0.02, 0.5] },
  putty: { kind: 'block', fields: { name: { kind: 'text' }, resists, cure } },
  band: {
    kind: 'block',
    fields: {
      width: { kind: 'length', above: 0, usual: [0.008, 0.15] },
      thickness: { kind: 'length', above: 0, usual: [0.3e-3, 6e-3] },
      strength: { kind: 'stress', above: 0, usual: [100e6, 1500e6] },
      factor,
      friction: { kind: 'number', from: 0, usual: [0.05, 0.6] },
      count: { kind: 'count', from: 1, usual: [1, 10] },
      overlap: { kind: 'length', from: 0, usual: [0.01, 0.6] },
      holdingFactor: factor,
    },
  },
  fastener: {
    kind: 'block',
    fields: {
      threadDiameter: { kind: 'length', above: 0, usual: [0.004, 0.03] },
      // No greased thread turns so lightly: a torque by less would leave the band loose.
      nutFactor: { kind: 'number', from: 0.05, usual: [0.1, 0.4] },
      scatter: { kind: 'ratio', from: 0, below: 1, usual: [0.05, 0.5] },
      permittedTension: { kind: 'force', above: 0, usual: [300, 200e3] },
    },
  },
  sheet: {
    kind: 'block',
    fields: {
      across: { kind: 'length', optional: true, needed: 'for numbers', above: 0, usual: [0.02, 0.5] },
      thickness: { kind: 'length', above: 0, usual: [0.1e-3, 8e-3] },
      modulus: { kind: 'modulus', above: 0, usual: [1e9, 220e9] },
      yieldStrength: { kind: 'stress', above: 0, usual: [20e6, 1500e6] },
      poissonRatio: { kind: 'number', from: 0, below: 0.5, usual: [0.2, 0.45] },
      factor,
      support: { kind: 'choice', words: ['clamped', 'simply supported'] },
    },
  },
  pipeFactor: factor,
  fluid: {
    kind: 'variants',
    optional: true,
    by: 'phase',
    variants: {
      liquid: { density: { kind: 'density', above: 0, usual: [400, 2000] } },
      gas: {
        molarMass: { kind: 'molar mass', above: 0, usual: [0.002, 0.2] },
        heatCapacityRatio: { kind: 'number', above: 1, usual: [1.02, 1.67] },
        atmosphere,
      },
    },
  },
} as const satisfies Fields;

/** The people who lay the wrap. */
export const crew = {
  start: { kind: 'clock' },
  crews: { kind: 'count', from: 1, usual: [1, 10] },
  layingSpeed: { kind: 'speed', above: 0, usual: [1e-3, 0.5] },
  soakTime: { kind: 'time', optional: true, from: 0, usual: [0, 1800] },
} as const satisfies Fields;

/** What the repair must show before the line goes back to service. */
export const acceptance = {
  hardnessScale: { kind: 'choice', words: ['Shore D', 'Barcol'] },
  qualifiedHardness: { kind: 'number', above: 0, to: 100, usual: [15, 95] },
  pressureTest: {
    kind: 'block',
    none: true,
    fields: {
      medium: { kind: 'choice', words: ['liquid', 'gas'] },
      liquid: { kind: 'choice', words: ['fresh water', 'other'], optional: true },
      length: { kind: 'length', above: 0, usual: [0.5, 50e3] },
      lowestRating: { kind: 'gauge pressure', optional: true, needed: 'to sign', above: 0, usual: [1e5, 5e7] },
      atmosphere,
    },
  },
} as const satisfies Fields;

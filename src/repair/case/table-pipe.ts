import type { Fields } from './table-field.js';

/** Pressures of pipework. */
export const pressure = { kind: 'gauge pressure', above: 0, usual: [2e4, 3e7] } as const;

/** The pipe as it was built. */
export const pipe = {
  size: { kind: 'text', optional: true },
  outsideDiameter: { kind: 'length', optional: true, above: 0, usual: [0.02, 1.7] },
  circumference: { kind: 'length', optional: true, above: 0, usual: [0.06, 5.4] },
  wallThickness: { kind: 'length', above: 0, usual: [1e-3, 0.06] },
  material: {
    kind: 'block',
    fields: {
      name: { kind: 'text' },
      yieldStrength: { kind: 'stress', above: 0, usual: [100e6, 900e6] },
      tensileStrength: { kind: 'stress', optional: true, above: 0, usual: [200e6, 1100e6] },
      allowableStress: { kind: 'stress', optional: true, above: 0, usual: [30e6, 600e6] },
      modulus: { kind: 'modulus', optional: true, above: 0, usual: [60e9, 220e9] },
      thermalExpansion: { kind: 'thermal expansion', optional: true, from: 0, usual: [5e-6, 30e-6] },
    },
  },
  cathodicProtection: {
    kind: 'block',
    optional: true,
    needed: 'to sign',
    none: true,
    fields: { underWrap: { kind: 'text' } },
  },
} as const satisfies Fields;

/** What the line carries. */
export const service = {
  contents: { kind: 'text' },
  phase: { kind: 'choice', words: ['liquid', 'gas', 'two-phase'] },
  hazards: {
    kind: 'list',
    row: { kind: 'choice', words: ['flammable', 'toxic', 'hot', 'corrosive', 'asphyxiant'] },
  },
  hazardsStatedBy: { kind: 'text', optional: true, needed: 'to sign' },
  safetyCritical: { kind: 'flag' },
  designPressure: pressure,
  designTemperature: { kind: 'temperature', above: 0, usual: [233.15, 473.15] },
  lowestTemperature: { kind: 'temperature', optional: true, needed: 'to sign', above: 0, usual: [213.15, 373.15] },
  surge: {
    kind: 'either',
    optional: true,
    needed: 'to sign',
    shapes: [{ kind: 'choice', words: ['included'] }, pressure],
  },
  cracking: {
    kind: 'block',
    optional: true,
    needed: 'to sign',
    none: true,
    fields: {
      environment: { kind: 'choice', words: ['sour', 'stress corrosion'] },
      test: {
        kind: 'block',
        optional: true,
        needed: 'to sign',
        fields: {
          method: { kind: 'text' },
          // A crack that was found is a defect of kind crack, and no result of this test.
          result: { kind: 'choice', words: ['no crack found'] },
          date: { kind: 'text' },
        },
      },
    },
  },
  recentPressure: { kind: 'block', optional: true, fields: { pressure, date: { kind: 'text' } } },
} as const satisfies Fields;

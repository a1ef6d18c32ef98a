import type { Field, Fields } from './table-field.js';
import { pressure } from './table-pipe.js';

const growth = {
  depth: {
    kind: 'either',
    shapes: [
      // Half a centimetre in a year, in m/s; and five at the rim.
      { kind: 'corrosion rate', from: 0, usual: [0, 1.6e-10] },
      {
        kind: 'block',
        fields: {
          previousWall: { kind: 'length', above: 0, usual: [0.2e-3, 0.06] },
          sincePrevious: { kind: 'time', above: 0, usual: [6e5, 1.3e9] },
          service: { kind: 'time', above: 0, usual: [6e5, 3.2e9] },
        },
      },
    ],
  },
  length: { kind: 'corrosion rate', from: 0, usual: [0, 1.6e-9] },
} as const satisfies Fields;

const cause = {
  kind: 'choice',
  words: ['internal corrosion', 'external corrosion', 'internal erosion', 'mechanical damage', 'unknown'],
} as const satisfies Field;

/** What was found on the pipe. */
export const defect = {
  kind: {
    kind: 'choice',
    words: [
      'metal loss',
      'through-wall hole',
      'through-wall slot',
      'crack',
      'dent',
      'gouge',
      'lamination',
      'bulge',
      'seam defect',
    ],
  },
  cause,
  axialLength: { kind: 'length', above: 0, usual: [1e-3, 5] },
  circumferentialWidth: { kind: 'length', above: 0, usual: [1e-3, 5] },
  remainingWall: { kind: 'length', from: 0, usual: [0, 0.06] },
  readingError: { kind: 'length', none: true, from: 0, usual: [0.01e-3, 2e-3] },
  holeDiameter: { kind: 'length', optional: true, needed: 'for numbers', above: 0, usual: [0.2e-3, 0.2] },
  slot: {
    kind: 'block',
    optional: true,
    needed: 'for numbers',
    fields: {
      axialLength: { kind: 'length', above: 0, usual: [0.2e-3, 1] },
      circumferentialWidth: { kind: 'length', above: 0, usual: [0.2e-3, 1] },
    },
  },
  holeAtEndOfLife: { kind: 'length', optional: true, above: 0, usual: [0.5e-3, 0.5] },
  profile: {
    kind: 'list',
    optional: true,
    least: 2,
    row: {
      kind: 'block',
      fields: {
        position: { kind: 'length', usual: [-20, 20] },
        depth: { kind: 'length', from: 0, usual: [0, 0.06] },
      },
    },
  },
  growth: { kind: 'block', none: true, fields: growth },
  nearestAttachment: { kind: 'length', optional: true, needed: 'to sign', from: 0, usual: [0, 100] },
  neighbours: {
    kind: 'list',
    optional: true,
    needed: 'to sign',
    none: true,
    least: 1,
    row: {
      kind: 'block',
      fields: {
        cause,
        gapAlong: { kind: 'length', from: 0, usual: [0, 5] },
        gapRound: { kind: 'length', from: 0, usual: [0, 3] },
        axialLength: { kind: 'length', above: 0, usual: [1e-3, 5] },
        circumferentialWidth: { kind: 'length', above: 0, usual: [1e-3, 5] },
        // One that leaks is the defect itself.
        remainingWall: { kind: 'length', above: 0, usual: [0.2e-3, 0.06] },
      },
    },
  },
} as const satisfies Fields;

const force = { kind: 'force', none: true, usual: [-5e6, 5e6] } as const;
const moment = { kind: 'moment', none: true, usual: [-1e6, 1e6] } as const;

/** What the line carries beside its pressure. */
export const loads = {
  axialForce: force,
  heldLine: {
    kind: 'block',
    optional: true,
    needed: 'to sign',
    none: true,
    fields: { tieInTemperature: { kind: 'temperature', above: 0, usual: [243.15, 333.15] } },
  },
  bendingMoment: moment,
  torsion: moment,
  shearForce: force,
  externalPressure: { kind: 'gauge pressure', none: true, from: 0, usual: [0, 3e6] },
  soil: {
    kind: 'block',
    none: true,
    fields: {
      cover: { kind: 'length', above: 0, usual: [0.3, 10] },
      density: { kind: 'density', above: 0, usual: [1200, 2400] },
      waterAbove: { kind: 'length', none: true, above: 0, usual: [0.05, 20] },
      traffic: { kind: 'gauge pressure', none: true, above: 0, usual: [1e3, 2e5] },
    },
  },
  freeSpan: { kind: 'length', optional: true, needed: 'to sign', above: 0, usual: [0.5, 60] },
  cycles: {
    kind: 'block',
    none: true,
    fields: {
      number: { kind: 'count', from: 1, usual: [1, 1e8] },
      lowestPressure: { kind: 'gauge pressure', from: 0, usual: [0, 3e7] },
      highestPressure: pressure,
    },
  },
} as const satisfies Fields;

/** How the remaining strength of the pipe is to be judged. */
export const assessment = {
  method: {
    kind: 'choice',
    optional: true,
    words: [
      'original B31G',
      'modified B31G',
      'effective area',
      'DNV-RP-F101',
      'API 579-1 Level 1',
      'API 579-1 Level 2',
    ],
  },
  flowStress: { kind: 'choice', optional: true, words: ['SMYS + 69 MPa', '1.1 SMYS', '(SMYS + SMTS) / 2'] },
  safetyFactor: { kind: 'number', optional: true, needed: 'for numbers', from: 1, usual: [1.1, 4] },
  designFactor: { kind: 'number', optional: true, needed: 'for numbers', above: 0, to: 1, usual: [0.3, 0.9] },
} as const satisfies Fields;

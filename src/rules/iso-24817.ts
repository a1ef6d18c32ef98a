import { frozen } from '../numeric/frozen.js';
import type {
  GaugePressure,
  Length,
  Strain,
  Stress,
  Temperature,
  TemperatureDifference,
  Time,
} from '../quantity/index.js';
import type { Rule } from './rule.js';
import type { DefaultStrainRow, PerformanceRow, RuleSet } from './rule-set.js';

const YEAR = 31_557_600;

const strainsOfClass1: Rule<readonly DefaultStrainRow[]> = {
  value: [
    { life: (2 * YEAR) as Time, hoop: 0.004 as Strain, axial: 0.004 as Strain, softAxial: 0.0025 as Strain },
    { life: (10 * YEAR) as Time, hoop: 0.0032 as Strain, axial: 0.0032 as Strain, softAxial: 0.0016 as Strain },
    { life: (20 * YEAR) as Time, hoop: 0.0025 as Strain, axial: 0.0025 as Strain, softAxial: 0.001 as Strain },
  ],
  clause: '7.5.5, default strains, class 1',
  evidence: { tag: 'recalled', note: 'soft axial column: weak memory' },
};

const strainsOfClass2: Rule<readonly DefaultStrainRow[]> = {
  value: [
    { life: (2 * YEAR) as Time, hoop: 0.0035 as Strain, axial: 0.0035 as Strain, softAxial: 0.0022 as Strain },
    { life: (10 * YEAR) as Time, hoop: 0.003 as Strain, axial: 0.003 as Strain, softAxial: 0.0015 as Strain },
    { life: (20 * YEAR) as Time, hoop: 0.0025 as Strain, axial: 0.0025 as Strain, softAxial: 0.001 as Strain },
  ],
  clause: '7.5.5, default strains, class 2',
  evidence: { tag: 'recalled', note: 'soft axial column: lowest of three recollections' },
};

const strainsOfClass3: Rule<readonly DefaultStrainRow[]> = {
  value: [
    { life: (2 * YEAR) as Time, hoop: 0.003 as Strain, axial: 0.003 as Strain, softAxial: 0.0018 as Strain },
    { life: (10 * YEAR) as Time, hoop: 0.0027 as Strain, axial: 0.0027 as Strain, softAxial: 0.0013 as Strain },
    { life: (20 * YEAR) as Time, hoop: 0.0025 as Strain, axial: 0.0025 as Strain, softAxial: 0.001 as Strain },
  ],
  clause: '7.5.5, default strains, class 3',
  evidence: { tag: 'recalled', note: 'soft axial column: lowest of three recollections' },
};

const designLifeTest: Rule<readonly PerformanceRow[]> = {
  value: [{ life: (20 * YEAR) as Time, factor: 0.67 }],
  clause: '7.5.6',
  evidence: { tag: 'recalled', note: 'the lowest value of the recalled tables, for any life' },
};

/**
 * Rules after ISO 24817:2017, as recalled. No body page was read: where recollections differ the conservative value
 * stands here, and no value may be cited as the standard's own until a licensed reader has confirmed it.
 */
export const iso24817: RuleSet = /* @__PURE__ */ frozen<RuleSet>({
  id: 'ISO 24817',
  edition: '2017',
  heading: 'after ISO 24817:2017, as recalled',
  source: 'iso-24817',

  classes: {
    1: {
      value: {
        service: 'low-hazard utilities: static head, drains, cooling and service water',
        highestPressure: 1e6 as GaugePressure,
        highestTemperature: 313.15 as Temperature,
        mayReachTemperature: true,
        safetyCritical: false,
        gasOrHazard: false,
      },
      clause: 'repair classes',
      evidence: { tag: 'recalled' },
    },
    2: {
      value: {
        service: 'fire water and deluge',
        highestPressure: 2e6 as GaugePressure,
        highestTemperature: 373.15 as Temperature,
        mayReachTemperature: false,
        safetyCritical: true,
        gasOrHazard: false,
      },
      clause: 'repair classes',
      evidence: { tag: 'recalled', note: 'the temperature stays below the limit, the pressure may reach it' },
    },
    3: {
      value: {
        service: 'produced water, hydrocarbons, flammables, gas, and all that exceeds the other classes',
        highestPressure: null,
        highestTemperature: null,
        mayReachTemperature: true,
        safetyCritical: true,
        gasOrHazard: true,
      },
      clause: 'repair classes',
      evidence: { tag: 'recalled' },
    },
  },
  longestLife: { value: (20 * YEAR) as Time, clause: 'design life', evidence: { tag: 'recalled' } },
  throughWallBelow: { value: 0.001 as Length, clause: 'defect types', evidence: { tag: 'recalled' } },

  // The set goes by class and life, not by how often the load acts: both loadings hold the same tables.
  defaultStrains: {
    rare: { 1: strainsOfClass1, 2: strainsOfClass2, 3: strainsOfClass3 },
    continuous: { 1: strainsOfClass1, 2: strainsOfClass2, 3: strainsOfClass3 },
  },
  modulusShare: { value: 0.5, clause: '7.5.5, default strains', evidence: { tag: 'recalled' } },
  leastFailureStrain: { value: 0.01 as Strain, clause: '7.5.5, default strains', evidence: { tag: 'recalled' } },
  temperatureFactor: {
    value: { quadratic: 6e-5, linear: 0.001, constant: 0.7014, unit: 1 as TemperatureDifference },
    clause: '7.5.5, f_T1',
    evidence: { tag: 'recalled', note: 'lower than the other recalled form everywhere from 0 to 62.7 K' },
  },
  mismatch: { value: 'absolute', clause: '7.5.5', evidence: { tag: 'recalled' } },
  cyclic: {
    value: { slope: 2.888, intercept: 7.108, freeCycles: 7000, lastCycles: 1e8 },
    clause: 'cyclic loading, f_c',
    evidence: { tag: 'recalled', note: 'anchors: 1/2 at 7000 cycles and 1/4 at 1e8' },
  },
  temperatureMargin: {
    glassTransition: {
      notLeaking: { value: 20 as TemperatureDifference, clause: '7.5.3', evidence: { tag: 'recalled' } },
      leaking: { value: 30 as TemperatureDifference, clause: '7.5.3', evidence: { tag: 'recalled' } },
    },
    heatDeflection: {
      notLeaking: { value: 15 as TemperatureDifference, clause: '7.5.3', evidence: { tag: 'recalled' } },
      leaking: {
        value: 25 as TemperatureDifference,
        clause: '7.5.3',
        evidence: { tag: 'recalled', note: '20 in other recollections' },
      },
    },
  },

  performance: {
    survivalTest: {
      1: {
        value: [
          { life: (2 * YEAR) as Time, factor: 0.8 },
          { life: (10 * YEAR) as Time, factor: 0.64 },
          { life: (20 * YEAR) as Time, factor: 0.5 },
        ],
        clause: '7.5.6, f_perf, class 1',
        evidence: { tag: 'recalled', note: 'lowest of two recollections and half of the strain ratio' },
      },
      2: {
        value: [
          { life: (2 * YEAR) as Time, factor: 0.67 },
          { life: (10 * YEAR) as Time, factor: 0.58 },
          { life: (20 * YEAR) as Time, factor: 0.5 },
        ],
        clause: '7.5.6, f_perf, class 2',
        evidence: { tag: 'recalled', note: 'lowest of two recollections and half of the strain ratio' },
      },
      3: {
        value: [
          { life: (2 * YEAR) as Time, factor: 0.59 },
          { life: (10 * YEAR) as Time, factor: 0.54 },
          { life: (20 * YEAR) as Time, factor: 0.5 },
        ],
        clause: '7.5.6, f_perf, class 3',
        evidence: { tag: 'recalled', note: 'lowest of two recollections and half of the strain ratio' },
      },
    },
    designLifeTest: { 1: designLifeTest, 2: designLifeTest, 3: designLifeTest },
  },

  leakFactor: {
    1: { value: { firstYear: 0.83, decay: 0.02088 }, clause: '7.5.7, f_leak, class 1', evidence: { tag: 'recalled' } },
    2: { value: { firstYear: 0.75, decay: 0.01856 }, clause: '7.5.7, f_leak, class 2', evidence: { tag: 'recalled' } },
    3: {
      value: { firstYear: 0.333, decay: 0 },
      clause: '7.5.7, f_leak, class 3',
      evidence: { tag: 'recalled', note: 'the conservative one of two recollections' },
    },
  },
  leakFactorOption: {
    1: { value: null, clause: '7.5.7, f_leak, class 1', evidence: { tag: 'recalled' } },
    2: { value: null, clause: '7.5.7, f_leak, class 2', evidence: { tag: 'recalled' } },
    3: {
      value: { firstYear: 0.666, decay: 0.01584 },
      clause: '7.5.7, f_leak, class 3',
      evidence: { tag: 'recalled', note: 'reaches 0.333 at 20 years, as classes 1 and 2 do' },
    },
  },
  leakTemperatureFactor: {
    unknown: 'f_T2; give energy release rate and modulus at the design temperature, from the maker of the system',
    clause: '7.5.7, f_T2',
  },
  hole: {
    leastDiameter: { value: 0.015 as Length, clause: '7.5.7', evidence: { tag: 'recalled' } },
    validity: {
      value: 6,
      clause: '7.5.7',
      evidence: { tag: 'recalled', note: 'which thickness is meant is not known: use the smaller one' },
    },
    aspectRatio: { value: 5, clause: '7.5.7', evidence: { tag: 'recalled' } },
  },

  overlap: {
    geometry: {
      value: { coefficient: 2, divisor: 1 },
      clause: '7.5.8, axial extent',
      evidence: { tag: 'recalled' },
    },
    minimum: { value: 0.05 as Length, clause: '7.5.8, axial extent', evidence: { tag: 'recalled' } },
    hole: { value: { multiple: 4, share: 0.5 }, clause: '7.5.8, axial extent', evidence: { tag: 'recalled' } },
    adhesiveFactor: {
      value: 3,
      clause: '7.5.8, axial extent',
      evidence: { tag: 'recalled', note: '1 in one recollection: the larger is taken' },
    },
    bondStrains: {
      value: { life: (2 * YEAR) as Time, table: strainsOfClass1.value },
      clause: '7.5.8, axial extent, with 7.5.5, class 1, two years',
      evidence: {
        tag: 'chosen',
        note: 'the recollections do not say which strain; the largest of the column, so that a longer life or a higher class never shortens the overlap',
      },
    },
    leastAvailable: {
      value: 0.025 as Length,
      clause: '7.5.8, restricted extent',
      evidence: { tag: 'recalled', note: 'weak memory' },
    },
    taper: { value: 5, clause: '7.5.8, taper', evidence: { tag: 'recalled' } },
  },

  thinLaminateRatio: {
    value: 12,
    clause: 'thin laminate',
    evidence: { tag: 'recalled', note: '6 in one recollection' },
  },
  leastPlies: { value: 2, clause: 'minimum thickness', evidence: { tag: 'practice' } },
  lapShear: {
    required: { value: 5e6 as Stress, clause: 'lap shear strength', evidence: { tag: 'recalled' } },
    withWarning: {
      value: 4e6 as Stress,
      clause: 'lap shear strength',
      evidence: { tag: 'recalled', note: 'value of the other set' },
    },
  },
  components: {
    bend: {
      value: 1.2,
      clause: 'component factors',
      evidence: { tag: 'recalled', note: 'never below the hoop factor of the inside of the bend' },
    },
    flange: { value: 1.1, clause: 'component factors', evidence: { tag: 'recalled' } },
    overlayExponent: { value: 2 / 3, clause: 'component factors', evidence: { tag: 'recalled' } },
  },
  systemTest: {
    factor: {
      value: 1.1,
      clause: 'system pressure test',
      evidence: { tag: 'recalled', note: '1.0 to 1.1; the code of the line governs' },
    },
    hold: { value: 3600 as Time, clause: 'system pressure test', evidence: { tag: 'recalled' } },
  },
  highRisk: {
    si: { value: null, clause: 'the set screens by repair class', evidence: { tag: 'recalled' } },
    us: { value: null, clause: 'the set screens by repair class', evidence: { tag: 'recalled' } },
  },
  inspectionInterval: { unknown: 'interval of re-inspection; the owner of the line sets it', clause: 'inspection' },
});

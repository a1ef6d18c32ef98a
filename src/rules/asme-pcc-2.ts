import { frozen } from '../numeric/frozen.js';
import type {
  GaugePressure,
  LeakSeverity,
  Length,
  Strain,
  Stress,
  Temperature,
  TemperatureDifference,
  Time,
} from '../quantity/index.js';
import type { Rule } from './rule.js';
import type { ClassLimits, DefaultStrainRow, PerformanceRow, RuleSet } from './rule-set.js';

const YEAR = 31_557_600;

const unclassed: Rule<ClassLimits> = {
  value: {
    service: 'any',
    highestPressure: null,
    highestTemperature: null,
    mayReachTemperature: true,
    safetyCritical: true,
    gasOrHazard: true,
  },
  clause: 'the set has no repair classes',
  evidence: { tag: 'recalled' },
};

const rareStrains: Rule<readonly DefaultStrainRow[]> = {
  value: [{ life: (20 * YEAR) as Time, hoop: 0.004 as Strain, axial: 0.004 as Strain, softAxial: 0.0025 as Strain }],
  clause: 'Table 401-3.4.4, rarely occurring',
  evidence: { tag: 'recalled' },
};

const continuousStrains: Rule<readonly DefaultStrainRow[]> = {
  value: [{ life: (20 * YEAR) as Time, hoop: 0.0025 as Strain, axial: 0.0025 as Strain, softAxial: 0.001 as Strain }],
  clause: 'Table 401-3.4.4, continuous',
  evidence: { tag: 'recalled' },
};

const survivalTest: Rule<readonly PerformanceRow[]> = {
  value: [{ life: (20 * YEAR) as Time, factor: 0.5 }],
  clause: '401-3.4, Eq. 11, 1000 h survival',
  evidence: { tag: 'recalled' },
};

const designLifeTest: Rule<readonly PerformanceRow[]> = {
  value: [{ life: (20 * YEAR) as Time, factor: 0.67 }],
  clause: '401-3.4, Eq. 11, design life data',
  evidence: { tag: 'recalled' },
};

const leakFactor: Rule<{ readonly firstYear: number; readonly decay: number }> = {
  value: { firstYear: 0.333, decay: 0 },
  clause: '401-3.4, Eq. 12 to 14',
  evidence: { tag: 'recalled' },
};

const noOption: Rule<null> = { value: null, clause: '401-3.4, Eq. 12 to 14', evidence: { tag: 'recalled' } };

/**
 * Rules after ASME PCC-2 Part 4, as recalled. No body page was read but an excerpt of the first page of Article 401:
 * where recollections differ the conservative value stands here.
 */
export const asmePcc2: RuleSet = /* @__PURE__ */ frozen<RuleSet>({
  id: 'ASME PCC-2',
  edition: 'Part 4',
  heading: 'after ASME PCC-2 Part 4, as recalled',
  source: 'asme-pcc-2',

  classes: { 1: unclassed, 2: unclassed, 3: unclassed },
  longestLife: {
    value: (20 * YEAR) as Time,
    clause: 'design life',
    evidence: { tag: 'chosen', note: 'the strains and the leak factor equal the 20 year columns of ISO 24817' },
  },
  throughWallBelow: { value: 0.001 as Length, clause: '401-3.4', evidence: { tag: 'recalled' } },

  defaultStrains: {
    rare: { 1: rareStrains, 2: rareStrains, 3: rareStrains },
    continuous: { 1: continuousStrains, 2: continuousStrains, 3: continuousStrains },
  },
  modulusShare: { value: 0.5, clause: 'Table 401-3.4.4', evidence: { tag: 'recalled' } },
  leastFailureStrain: { value: 0.01 as Strain, clause: 'Table 401-3.4.4', evidence: { tag: 'recalled' } },
  temperatureFactor: {
    value: { quadratic: 6e-5, linear: 0.001, constant: 0.7014, unit: 1 as TemperatureDifference },
    clause: '401-3.4, Eq. 10',
    evidence: { tag: 'recalled', note: 'the metric line; the printed US line is this one with rounded coefficients' },
  },
  mismatch: {
    value: 'absolute',
    clause: '401-3.4, Eq. 10',
    evidence: { tag: 'practice', note: 'printed signed; the absolute value is the safe reading' },
  },
  cyclic: {
    value: { slope: 2.888, intercept: 7.108, freeCycles: 7000, lastCycles: 1e8 },
    clause: 'cyclic loading',
    evidence: { tag: 'recalled', note: 'anchors: 1/2 at 7000 cycles and 1/4 at 1e8' },
  },
  temperatureMargin: {
    glassTransition: {
      notLeaking: { value: 20 as TemperatureDifference, clause: 'Table 401-3.4.2', evidence: { tag: 'recalled' } },
      leaking: { value: 30 as TemperatureDifference, clause: 'Table 401-3.4.2', evidence: { tag: 'recalled' } },
    },
    heatDeflection: {
      notLeaking: { value: 15 as TemperatureDifference, clause: 'Table 401-3.4.2', evidence: { tag: 'recalled' } },
      leaking: {
        value: 25 as TemperatureDifference,
        clause: 'Table 401-3.4.2',
        evidence: { tag: 'recalled', note: '20 in other recollections' },
      },
    },
  },

  performance: {
    survivalTest: { 1: survivalTest, 2: survivalTest, 3: survivalTest },
    designLifeTest: { 1: designLifeTest, 2: designLifeTest, 3: designLifeTest },
  },

  leakFactor: { 1: leakFactor, 2: leakFactor, 3: leakFactor },
  leakFactorOption: { 1: noOption, 2: noOption, 3: noOption },
  leakTemperatureFactor: {
    unknown: 'temperature factor; give energy release rate and modulus at the design temperature, from the maker',
    clause: '401-3.4, Eq. 12 to 14',
  },
  hole: {
    leastDiameter: {
      value: 0.015 as Length,
      clause: '401-3.4, Eq. 12',
      evidence: { tag: 'chosen', note: 'older editions give no minimum; the one of ISO 24817 is the safe reading' },
    },
    validity: {
      value: 6,
      clause: '401-3.4, Eq. 12',
      evidence: { tag: 'recalled', note: 'which thickness is meant is not known: use the smaller one' },
    },
    aspectRatio: { value: 5, clause: '401-3.4, Eq. 12', evidence: { tag: 'recalled' } },
  },

  overlap: {
    geometry: {
      value: { coefficient: 2.5, divisor: 2 },
      clause: '401-3.4, axial extent',
      evidence: { tag: 'recalled' },
    },
    minimum: { value: 0.05 as Length, clause: '401-3.4, axial extent', evidence: { tag: 'recalled' } },
    hole: { value: null, clause: '401-3.4, axial extent', evidence: { tag: 'recalled' } },
    adhesiveFactor: {
      value: 3,
      clause: '401-3.4, axial extent',
      evidence: { tag: 'recalled', note: '1 in one recollection: the larger is taken' },
    },
    bondStrains: {
      value: { life: (20 * YEAR) as Time, table: rareStrains.value },
      clause: '401-3.4, axial extent, with Table 401-3.4.4, rarely occurring',
      evidence: {
        tag: 'chosen',
        note: 'the largest strain of the column, which is also that of class 1 and two years of ISO 24817',
      },
    },
    leastAvailable: {
      value: 0.025 as Length,
      clause: 'restricted extent',
      evidence: { tag: 'recalled', note: 'weak memory' },
    },
    taper: { value: 5, clause: '401-3.4, taper', evidence: { tag: 'recalled' } },
  },

  thinLaminateRatio: {
    value: 12,
    clause: 'thin laminate',
    evidence: { tag: 'recalled', note: '6 in one recollection' },
  },
  leastPlies: { value: 2, clause: 'minimum thickness', evidence: { tag: 'practice' } },
  lapShear: {
    required: {
      value: 5e6 as Stress,
      clause: 'lap shear strength',
      evidence: { tag: 'recalled', note: 'value of the other set; this set is recalled with 4 MPa' },
    },
    withWarning: { value: 4e6 as Stress, clause: 'lap shear strength', evidence: { tag: 'recalled' } },
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
    hold: {
      value: 3600 as Time,
      clause: 'system pressure test',
      evidence: { tag: 'recalled', note: '30 min in one recollection' },
    },
  },
  // The document rounds its SI values from the US ones: harder for pressure and leaks, easier for heat and cold. Both are kept as given.
  highRisk: {
    si: {
      value: {
        pressure: 1e6 as GaugePressure,
        highestTemperature: 323.15 as Temperature,
        lowestTemperature: 253.15 as Temperature,
        leakSeverity: 160_000 as LeakSeverity,
        holeOverDiameter: 0.25,
      },
      clause: '401-1.1',
      evidence: { tag: 'secondary', note: 'excerpt; root and signs restored from the units' },
    },
    us: {
      value: {
        // 150 psi, 120 degF, 0 degF, 150 psi in^(1/2)
        pressure: ((150 * 44_482_216_152_605) / 6_451_600_000) as GaugePressure,
        highestTemperature: (((120 + 459.67) * 5) / 9) as Temperature,
        lowestTemperature: ((459.67 * 5) / 9) as Temperature,
        leakSeverity: 164_826.524 as LeakSeverity,
        holeOverDiameter: 0.25,
      },
      clause: '401-1.1',
      evidence: { tag: 'secondary', note: 'excerpt; root and signs restored from the units' },
    },
  },
  inspectionInterval: { unknown: 'interval of re-inspection; the owner of the line sets it', clause: 'inspection' },
});

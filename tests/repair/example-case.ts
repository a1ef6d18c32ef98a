import {
  degC,
  type GaugePressure,
  gauge,
  gPerCm3,
  gPerM2,
  hour,
  JPerM2,
  kg,
  kgPerM3,
  kgPerMin,
  kJPerMol,
  kN,
  m,
  minute,
  mm,
  mmPerYear,
  modulus,
  perK,
  ratio,
  strain,
  stress,
  year,
} from '../../src/quantity/index.js';
import type { CureSheet, LineAtWork, RepairCase } from '../../src/repair/index.js';

const cure: CureSheet = {
  mechanism: 'two-part reaction',
  referenceTemperature: degC(23),
  cureTime: hour(24),
  workingTime: minute(40),
  activationEnergy: kJPerMol(55),
  testedFrom: degC(10),
  testedTo: degC(40),
  minimumTemperature: degC(10),
};

/** A part-wall case that needs nothing more; invented data. Tests change one thing at a time. */
export const partWall: RepairCase = {
  title: 'part-wall metal loss',
  basis: 'ISO 24817',
  pipe: {
    outsideDiameter: mm(323.9),
    wallThickness: mm(8.38),
    material: {
      name: 'carbon steel',
      yieldStrength: stress.MPa(241),
      tensileStrength: stress.MPa(414),
      allowableStress: stress.MPa(138),
      modulus: modulus.GPa(207),
      thermalExpansion: perK(12e-6),
    },
  },
  service: {
    contents: 'produced water',
    phase: 'liquid',
    hazards: [],
    safetyCritical: false,
    designPressure: gauge.MPa(4),
    designTemperature: degC(50),
  },
  line: { state: 'empty, dry, isolated, vented' },
  defect: {
    kind: 'metal loss',
    cause: 'external corrosion',
    axialLength: mm(120),
    circumferentialWidth: mm(80),
    remainingWall: mm(5),
    readingError: 'none',
    growth: 'none',
  },
  loads: {
    axialForce: 'none',
    bendingMoment: 'none',
    torsion: 'none',
    shearForce: 'none',
    externalPressure: 'none',
    soil: 'none',
    cycles: 'none',
  },
  fitting: 'none',
  assessment: { designFactor: 0.72 },
  repair: { class: 3, life: year(20) },
  laminate: {
    name: 'glass/epoxy',
    hoopModulus: modulus.GPa(24),
    axialModulus: modulus.GPa(13),
    poissonRatio: 0.12,
    shearModulus: modulus.GPa(3),
    plyThickness: mm(0.8),
    strainToFailure: strain.percent(1.6),
    hoopExpansion: perK(12e-6),
    axialExpansion: perK(20e-6),
    glassTransition: degC(110),
    energyReleaseRate: JPerM2(180),
    lapShearStrength: stress.MPa(8),
    cure,
  },
  wrap: { form: 'tape', width: mm(100), overlap: ratio.percent(50), rollLength: m(10), waste: ratio.percent(10) },
  resin: {
    fabricWeight: gPerM2(800),
    fibreMassFraction: ratio.percent(60),
    parts: { base: 100, hardener: 30 },
    kitMass: kg(2),
    rate: kgPerMin(0.15),
    waste: ratio.percent(15),
  },
  filler: {
    name: 'epoxy filler',
    thickness: mm(2),
    thicknessOverDefect: mm(4),
    density: gPerCm3(1.6),
    parts: { base: 100, hardener: 25 },
    kitMass: kg(1),
    rate: kgPerMin(0.1),
    waste: ratio.percent(10),
    cure: { ...cure, cureTime: hour(4), workingTime: minute(20) },
  },
  site: { pipeTemperature: degC(20), airTemperature: degC(20), relativeHumidity: ratio.percent(60) },
};

/** The line at a pressure while people work on it, by a written procedure; empty where there is none. */
export function atWork(pressure: GaugePressure): LineAtWork {
  if (pressure === 0) return { state: 'empty, dry, isolated, vented' };
  return { state: 'under pressure', pressure, writtenProcedure: 'WP-1' };
}

/** The same pipe with a hole; class 3. */
export const leaking: RepairCase = {
  ...partWall,
  title: 'leak',
  service: { ...partWall.service, designPressure: gauge.MPa(1) },
  defect: {
    ...partWall.defect,
    kind: 'through-wall hole',
    cause: 'internal corrosion',
    holeDiameter: mm(5),
    growth: { depth: mmPerYear(0.05), length: mmPerYear(0.05) },
  },
};

/** The leak held by putty, sheet and band while the line stands at low pressure; invented data. */
export const sealed: RepairCase = {
  ...leaking,
  title: 'sealed leak',
  line: { state: 'static head', pressure: gauge.bar(0.5), writtenProcedure: 'none' },
  seal: {
    siteLimit: gauge.bar(3),
    pad: { multiple: 3, multipleOf: 'not stated', margin: mm(25) },
    putty: { name: 'hand-kneaded putty', cure: { ...cure, cureTime: minute(20), workingTime: minute(8) } },
    band: {
      width: mm(50),
      thickness: mm(1),
      strength: stress.MPa(350),
      factor: 2,
      friction: 0.2,
      count: 1,
      overlap: mm(100),
      holdingFactor: 2,
    },
    fastener: { threadDiameter: mm(8), nutFactor: 0.2, scatter: ratio.percent(25), permittedTension: kN(9) },
    sheet: {
      thickness: mm(0.35),
      modulus: modulus.GPa(193),
      yieldStrength: stress.MPa(205),
      poissonRatio: 0.3,
      factor: 2,
      support: 'simply supported',
    },
    pipeFactor: 3,
    fluid: { phase: 'liquid', density: kgPerM3(1000) },
  },
};

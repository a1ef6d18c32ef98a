import {
  activationEnergy,
  arealWeight,
  corrosionRate,
  density,
  energyReleaseRate,
  force,
  type GaugePressure,
  gauge,
  length,
  mass,
  massFlow,
  modulus,
  ratio,
  strain,
  stress,
  temperature,
  thermalExpansion,
  time,
} from '../../src/quantity/index.js';
import type { CureSheet, LineAtWork, RepairCase } from '../../src/repair/index.js';

const cure: CureSheet = {
  mechanism: 'two-part reaction',
  referenceTemperature: temperature.degC(23),
  cureTime: time.hour(24),
  workingTime: time.minute(40),
  activationEnergy: activationEnergy.kJPerMol(55),
  testedFrom: temperature.degC(10),
  testedTo: temperature.degC(40),
  minimumTemperature: temperature.degC(10),
};

/** A part-wall case that needs nothing more; invented data. Tests change one thing at a time. */
export const partWall: RepairCase = {
  title: 'part-wall metal loss',
  basis: 'ISO 24817',
  pipe: {
    outsideDiameter: length.mm(323.9),
    wallThickness: length.mm(8.38),
    material: {
      name: 'carbon steel',
      yieldStrength: stress.MPa(241),
      tensileStrength: stress.MPa(414),
      allowableStress: stress.MPa(138),
      modulus: modulus.GPa(207),
      thermalExpansion: thermalExpansion.perK(12e-6),
    },
  },
  service: {
    contents: 'produced water',
    phase: 'liquid',
    hazards: [],
    hazardsStatedBy: 'process engineer, by an analysis of the water',
    safetyCritical: false,
    designPressure: gauge.MPa(4),
    designTemperature: temperature.degC(50),
    surge: 'included',
    cracking: 'none',
  },
  line: { state: 'empty, dry, isolated, vented' },
  defect: {
    kind: 'metal loss',
    cause: 'external corrosion',
    axialLength: length.mm(120),
    circumferentialWidth: length.mm(80),
    remainingWall: length.mm(5),
    readingError: 'none',
    growth: 'none',
    nearestAttachment: length.m(20),
    neighbours: 'none',
  },
  loads: {
    axialForce: 'none',
    heldLine: 'none',
    bendingMoment: 'none',
    torsion: 'none',
    shearForce: 'none',
    externalPressure: 'none',
    soil: 'none',
    cycles: 'none',
  },
  fitting: 'none',
  assessment: { designFactor: 0.72 },
  repair: { class: 3, life: time.year(20) },
  laminate: {
    name: 'glass/epoxy',
    hoopModulus: modulus.GPa(24),
    axialModulus: modulus.GPa(13),
    poissonRatio: 0.12,
    shearModulus: modulus.GPa(3),
    plyThickness: length.mm(0.8),
    strainToFailure: strain.percent(1.6),
    hoopExpansion: thermalExpansion.perK(12e-6),
    axialExpansion: thermalExpansion.perK(20e-6),
    glassTransition: temperature.degC(110),
    transitionCuredAt: temperature.degC(10),
    fibre: 'glass',
    resists: { contents: 'produced water', temperature: temperature.degC(80), statedBy: 'table of the maker' },
    energyReleaseRate: energyReleaseRate.JPerM2(180),
    lapShearStrength: stress.MPa(8),
    cure,
  },
  wrap: {
    form: 'tape',
    width: length.mm(100),
    overlap: ratio.percent(50),
    rollLength: length.m(10),
    waste: ratio.percent(10),
  },
  resin: {
    fabricWeight: arealWeight.gPerM2(800),
    fibreMassFraction: ratio.percent(60),
    parts: { base: 100, hardener: 30 },
    kitMass: mass.kg(2),
    rate: massFlow.kgPerMin(0.15),
    waste: ratio.percent(15),
  },
  filler: {
    name: 'epoxy filler',
    thickness: length.mm(2),
    thicknessOverDefect: length.mm(4),
    greatestLift: length.mm(20),
    density: density.gPerCm3(1.6),
    parts: { base: 100, hardener: 25 },
    kitMass: mass.kg(1),
    rate: massFlow.kgPerMin(0.1),
    waste: ratio.percent(10),
    cure: { ...cure, cureTime: time.hour(4), workingTime: time.minute(20) },
  },
  site: {
    pipeTemperature: temperature.degC(20),
    airTemperature: temperature.degC(20),
    relativeHumidity: ratio.percent(60),
  },
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
    holeDiameter: length.mm(5),
    growth: { depth: corrosionRate.mmPerYear(0.05), length: corrosionRate.mmPerYear(0.05) },
  },
};

/** The leak held by putty, sheet and band while the line stands at low pressure; invented data. */
export const sealed: RepairCase = {
  ...leaking,
  title: 'sealed leak',
  line: { state: 'static head', pressure: gauge.bar(0.5), writtenProcedure: 'none' },
  seal: {
    siteLimit: gauge.bar(3),
    pad: { multiple: 3, multipleOf: 'not stated', margin: length.mm(25) },
    bands: 'removed before the wrap',
    collar: 'none',
    putty: {
      name: 'hand-kneaded putty',
      resists: { contents: 'produced water', temperature: temperature.degC(80), statedBy: 'sheet of the putty' },
      cure: { ...cure, cureTime: time.minute(20), workingTime: time.minute(8) },
    },
    band: {
      width: length.mm(50),
      thickness: length.mm(1),
      strength: stress.MPa(350),
      factor: 2,
      friction: 0.2,
      count: 1,
      overlap: length.mm(100),
      holdingFactor: 2,
    },
    fastener: {
      threadDiameter: length.mm(8),
      nutFactor: 0.2,
      scatter: ratio.percent(25),
      permittedTension: force.kN(9),
    },
    sheet: {
      across: length.mm(55),
      thickness: length.mm(0.35),
      modulus: modulus.GPa(193),
      yieldStrength: stress.MPa(205),
      poissonRatio: 0.3,
      factor: 2,
      support: 'simply supported',
    },
    pipeFactor: 3,
    fluid: { phase: 'liquid', density: density.kgPerM3(1000) },
  },
};

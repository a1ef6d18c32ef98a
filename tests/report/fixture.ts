import { createRecorder, decide, heading, step } from '../../src/formula/index.js';
import { arrheniusShift } from '../../src/mechanics/index.js';
import { b31gFailurePressure, hoopStress } from '../../src/pipe/index.js';
import {
  degC,
  g,
  gauge,
  gPerCm3,
  gPerM2,
  hour,
  JPerM2,
  kg,
  kgPerMin,
  kJPerMol,
  L,
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
import type { CureSheet, RepairCase } from '../../src/repair/case/case.js';
import type { RepairDesign } from '../../src/repair/design/design.js';

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

/** An invented case, for the look of the sheet; no number here says how a repair comes out. */
export const inventedCase: RepairCase = {
  title: 'Brine return line, thinned below the support',
  reference: 'Line BR-07, work order 11-204 (invented)',
  date: '2026-05-02',
  basis: 'ISO 24817',
  pipe: {
    outsideDiameter: mm(323.9),
    wallThickness: mm(8.38),
    size: 'NPS 12',
    material: {
      name: 'API 5L grade B',
      yieldStrength: stress.MPa(241),
      modulus: modulus.GPa(207),
      thermalExpansion: perK(12e-6),
    },
  },
  service: {
    contents: 'brine',
    phase: 'liquid',
    hazards: ['corrosive'],
    safetyCritical: false,
    designPressure: gauge.bar(10),
    designTemperature: degC(40),
  },
  defect: {
    kind: 'metal loss',
    cause: 'external corrosion',
    axialLength: mm(120),
    circumferentialWidth: mm(80),
    remainingWall: mm(4.1),
    profile: [
      { position: mm(0), depth: mm(0) },
      { position: mm(60), depth: mm(4.28) },
      { position: mm(120), depth: mm(0) },
    ],
    growth: { depth: mmPerYear(0.05), length: mmPerYear(0.1) },
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
  repair: { class: 2, life: year(10) },
  laminate: {
    name: 'glass and epoxy, invented',
    hoopModulus: modulus.GPa(24),
    axialModulus: modulus.GPa(12),
    poissonRatio: 0.12,
    plyThickness: mm(0.8),
    strainToFailure: strain.percent(1.6),
    energyReleaseRate: JPerM2(180),
    cure,
  },
  wrap: { form: 'tape', width: mm(100), overlap: ratio.percent(50), rollLength: m(10), waste: ratio.percent(10) },
  resin: {
    fabricWeight: gPerM2(800),
    fibreMassFraction: ratio.percent(60),
    parts: { base: 100, hardener: 30 },
    kitMass: kg(2),
    rate: kgPerMin(0.15),
  },
  filler: {
    name: 'epoxy filler, invented',
    thickness: mm(2),
    thicknessOverDefect: mm(6),
    density: gPerCm3(1.6),
    parts: { base: 100, hardener: 25 },
    kitMass: kg(1),
    rate: kgPerMin(0.1),
    cure,
  },
  site: {
    pipeTemperature: degC(18),
    airTemperature: degC(16),
    relativeHumidity: ratio.percent(65),
    history: [
      { duration: hour(6), temperature: degC(18) },
      { duration: hour(18), temperature: degC(12) },
    ],
  },
  lookedUp: [
    {
      name: 'yield strength',
      kind: 'stress',
      value: stress.MPa(241),
      tag: 'secondary',
      because: 'API 5L 44th, grade B',
    },
  ],
};

/** A record made by real calls, with a part, a decision and a purpose. */
function inventedRecord() {
  const recorder = createRecorder();
  heading(recorder, 'Pipe as found');
  const pipe = { pressure: gauge.bar(10), outsideDiameter: mm(323.9), wallThickness: mm(8.38) };
  step(recorder, 'pipe/hoop-stress', hoopStress, pipe, 'the stress in the sound pipe');
  step(
    recorder,
    'pipe/b31g-original',
    b31gFailurePressure,
    {
      outsideDiameter: mm(323.9),
      wallThickness: mm(8.38),
      defectDepth: mm(4.28),
      defectLength: mm(120),
      flowStress: stress.MPa(265.1),
    },
    'the pressure that the thinned pipe fails at',
  );
  decide(recorder, 'the laminate alone is to carry the pressure', 'the case names no method');
  heading(recorder, 'Cure');
  step(recorder, 'mechanics/arrhenius-shift', arrheniusShift, {
    activationEnergy: kJPerMol(55),
    referenceTemperature: degC(23),
    temperature: degC(12),
  });
  return recorder.entries;
}

/** A design with every part filled in. */
export function inventedDesign(): RepairDesign {
  return {
    verdict: 'designed',
    reasons: [],
    missing: [],
    case: inventedCase,
    options: { record: true },
    libraryVersion: '0.0.0-test',
    ruleSet: 'after ISO 24817:2017, as recalled',
    found: {
      outsideDiameter: mm(323.9),
      hoopStressSound: stress.MPa(19.33),
      wallAtEndOfLife: mm(3.6),
      depthAtEndOfLife: mm(4.78),
      lengthAtEndOfLife: mm(122),
      throughWall: false,
      strength: {
        method: 'original B31G',
        safePressure: gauge.MPa(1),
        safetyFactor: 1.39,
        fitAsItIs: true,
        methods: [
          { criterion: 'original B31G', value: gauge.MPa(5.1) },
          { criterion: 'DNV-RP-F101', needs: 'the tensile strength' },
        ],
      },
    },
    laminate: {
      method: 'substrate ignored',
      hoopStrain: strain.percent(0.27),
      axialStrain: strain.percent(0.16),
      thickness: {
        candidates: [
          { criterion: 'hoop strain', value: mm(2.5) },
          { criterion: 'axial strain', value: mm(3.94) },
        ],
        governing: 'axial strain',
        value: mm(3.94),
      },
      alternatives: [
        { criterion: 'substrate yielded', value: mm(1.25) },
        { criterion: 'long-term strength', needs: 'the long-term strength of the laminate' },
      ],
      plies: 5,
      laidThickness: mm(4),
      wrappedDiameter: mm(327.9),
      resistance: {
        candidates: [{ criterion: 'axial strain', value: gauge.MPa(1.015) }],
        governing: 'axial strain',
        value: gauge.MPa(1.015),
      },
    },
    extent: {
      overlap: {
        candidates: [
          { criterion: 'two root D t', value: mm(104.2) },
          { criterion: 'least 50 mm', value: mm(50) },
        ],
        governing: 'two root D t',
        value: mm(104.2),
      },
      taper: mm(20),
      defectLength: mm(122),
      totalLength: mm(368.4),
    },
    wrap: {
      form: 'tape',
      layersPerPass: 2,
      passes: 3,
      layers: 6,
      fullCountLength: mm(329),
      overallLength: mm(420),
      tapeLength: m(28.5),
      rolls: 3,
      leftOnLastRoll: m(1.5),
    },
    mixes: [
      {
        material: 'epoxy filler, invented',
        use: 'filler',
        volume: L(0.25),
        mass: g(440),
        batches: 1,
        batchMass: g(440),
        base: g(352),
        hardener: g(88),
        limitedBy: 'job',
        kits: 1,
      },
    ],
    cures: [{ material: 'glass and epoxy, invented', wait: hour(51.4), workingTime: minute(54) }],
    assumed: [
      {
        amount: { name: 'yield strength', kind: 'stress', value: stress.MPa(241) },
        tag: 'secondary',
        because: 'API 5L 44th, grade B',
      },
      {
        amount: { name: 'tape waste', kind: 'ratio', value: ratio.percent(10) },
        tag: 'practice',
        because: 'the case gives none',
      },
      {
        amount: { name: 'thickness method', word: 'substrate ignored' },
        tag: 'chosen',
        because: 'it needs neither the remaining wall nor the pressure during application',
      },
    ],
    rules: [
      { name: 'allowable hoop strain, class 2, 10 years', clause: '7.5.5, table', tag: 'recalled' },
      { name: 'overlap factor', clause: '7.5.8', tag: 'recalled', derived: 'beam on an elastic foundation' },
    ],
    warnings: [{ text: 'The temperature of the cure leaves the tested span.', clause: 'cure sheet' }],
    cautions: ['This design is to be checked by a competent person under the local code.'],
    record: inventedRecord(),
  };
}

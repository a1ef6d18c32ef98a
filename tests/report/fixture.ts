import { createRecorder, decide, heading, step } from '../../src/formula/index.js';
import { arrheniusShift } from '../../src/mechanics/index.js';
import { b31gOriginal, hoopStress } from '../../src/pipe/index.js';
import {
  activationEnergy,
  arealWeight,
  corrosionRate,
  density,
  energyReleaseRate,
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
  volume,
} from '../../src/quantity/index.js';
import type { CureSheet, RepairCase } from '../../src/repair/case/case.js';
import type { Designed } from '../../src/repair/design/design.js';

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

/** An invented case, for the look of the sheet; no number here says how a repair comes out. */
export const inventedCase: RepairCase = {
  title: 'Brine return line, thinned below the support',
  reference: 'Line BR-07, work order 11-204 (invented)',
  date: '2026-05-02',
  basis: 'ISO 24817',
  pipe: {
    outsideDiameter: length.mm(323.9),
    wallThickness: length.mm(8.38),
    size: 'NPS 12',
    material: {
      name: 'API 5L grade B',
      yieldStrength: stress.MPa(241),
      modulus: modulus.GPa(207),
      thermalExpansion: thermalExpansion.perK(12e-6),
    },
  },
  service: {
    contents: 'brine',
    phase: 'liquid',
    hazards: ['corrosive'],
    safetyCritical: false,
    designPressure: gauge.bar(10),
    designTemperature: temperature.degC(40),
  },
  line: { state: 'empty, dry, isolated, vented' },
  defect: {
    kind: 'metal loss',
    cause: 'external corrosion',
    axialLength: length.mm(120),
    circumferentialWidth: length.mm(80),
    remainingWall: length.mm(4.1),
    readingError: length.mm(0.2),
    profile: [
      { position: length.mm(0), depth: length.mm(0) },
      { position: length.mm(60), depth: length.mm(4.28) },
      { position: length.mm(120), depth: length.mm(0) },
    ],
    growth: { depth: corrosionRate.mmPerYear(0.05), length: corrosionRate.mmPerYear(0.1) },
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
  repair: { class: 2, life: time.year(10) },
  laminate: {
    name: 'glass and epoxy, invented',
    hoopModulus: modulus.GPa(24),
    axialModulus: modulus.GPa(12),
    poissonRatio: 0.12,
    plyThickness: length.mm(0.8),
    strainToFailure: strain.percent(1.6),
    energyReleaseRate: energyReleaseRate.JPerM2(180),
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
  },
  filler: {
    name: 'epoxy filler, invented',
    thickness: length.mm(2),
    thicknessOverDefect: length.mm(6),
    density: density.gPerCm3(1.6),
    parts: { base: 100, hardener: 25 },
    kitMass: mass.kg(1),
    rate: massFlow.kgPerMin(0.1),
    cure,
  },
  site: {
    pipeTemperature: temperature.degC(18),
    airTemperature: temperature.degC(16),
    relativeHumidity: ratio.percent(65),
    history: [
      { duration: time.hour(6), temperature: temperature.degC(18) },
      { duration: time.hour(18), temperature: temperature.degC(12) },
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
  const pipe = { pressure: gauge.bar(10), outsideDiameter: length.mm(323.9), wallThickness: length.mm(8.38) };
  step(recorder, 'pipe/hoop-stress', hoopStress, pipe, 'the stress in the sound pipe');
  step(
    recorder,
    'pipe/b31g-original',
    b31gOriginal,
    {
      outsideDiameter: length.mm(323.9),
      wallThickness: length.mm(8.38),
      defectDepth: length.mm(4.28),
      defectLength: length.mm(120),
      flowStress: stress.MPa(265.1),
    },
    'the pressure that the thinned pipe fails at',
  );
  decide(recorder, 'the laminate alone is to carry the pressure', 'the case names no method');
  heading(recorder, 'Cure');
  step(recorder, 'mechanics/arrhenius-shift', arrheniusShift, {
    activationEnergy: activationEnergy.kJPerMol(55),
    referenceTemperature: temperature.degC(23),
    temperature: temperature.degC(12),
  });
  return recorder.entries;
}

/** A design with every part filled in. */
export function inventedDesign(): Designed {
  return {
    verdict: 'designed',
    reasons: [],
    missing: [],
    case: inventedCase,
    options: { record: true },
    libraryVersion: '0.0.0-test',
    ruleSet: 'after ISO 24817:2017, as recalled',
    found: {
      outsideDiameter: length.mm(323.9),
      hoopStressSound: stress.MPa(19.33),
      wallToday: length.mm(5),
      wallAtEndOfLife: length.mm(3.6),
      depthAtEndOfLife: length.mm(4.78),
      lengthAtEndOfLife: length.mm(122),
      widthAtEndOfLife: length.mm(62),
      throughWall: false,
      strength: {
        method: 'original B31G',
        safePressure: gauge.MPa(1),
        safetyFactor: 1.39,
        fitAsItIs: true,
        methods: [
          { criterion: 'original B31G', value: gauge.MPa(5.1) },
          { criterion: 'DNV-RP-F101', because: { text: 'needs the tensile strength' } },
        ],
      },
    },
    line: { state: 'empty, dry, isolated, vented', pressure: gauge.bar(0) },
    seal: 'none',
    laminate: {
      method: 'substrate ignored',
      hoopStrain: strain.percent(0.27),
      axialStrain: strain.percent(0.16),
      thickness: {
        candidates: [
          { criterion: 'hoop strain, substrate ignored', value: length.mm(2.5) },
          { criterion: 'axial strain, substrate ignored', value: length.mm(3.94) },
        ],
        governing: 'axial strain, substrate ignored',
        value: length.mm(3.94),
      },
      alternatives: [
        { criterion: 'substrate yielded', value: length.mm(1.25) },
        { criterion: 'long-term strength', needs: { text: 'the long-term strength of the laminate' } },
      ],
      leastPlies: 2,
      plies: 5,
      laidThickness: length.mm(4),
      wrappedDiameter: length.mm(327.9),
      resistance: {
        candidates: [{ criterion: 'axial strain, substrate ignored', value: gauge.MPa(1.015) }],
        governing: 'axial strain, substrate ignored',
        value: gauge.MPa(1.015),
      },
    },
    extent: {
      meanThickness: length.mm(4),
      overlap: {
        candidates: [
          { criterion: 'geometry', value: length.mm(104.2) },
          { criterion: 'minimum', value: length.mm(50) },
        ],
        governing: 'geometry',
        value: length.mm(104.2),
      },
      taper: length.mm(20),
      defectLength: length.mm(122),
      totalLength: length.mm(368.4),
    },
    wrap: {
      form: 'tape',
      layersPerPass: 2,
      passes: 3,
      layers: 6,
      fullCountLength: length.mm(329),
      overallLength: length.mm(420),
      tapeLength: length.m(28.5),
      rolls: 3,
      leftOnLastRoll: length.m(1.5),
    },
    cures: {
      putty: 'none',
      filler: 'none',
      laminate: {
        material: 'glass and epoxy, invented',
        workingTime: time.minute(54),
        law: { sort: 'same at every hour', wait: time.hour(51.4) },
      },
    },
    mixes: {
      filler: {
        material: 'epoxy filler, invented',
        volume: volume.L(0.25),
        mass: mass.g(440),
        batches: 1,
        batchMass: mass.g(440),
        base: mass.g(352),
        hardener: mass.g(88),
        limitedBy: 'job',
        kits: 1,
      },
      laminateResin: 'none',
    },
    rolls: {
      start: length.mm(-210),
      end: length.mm(210),
      beforeDefect: length.mm(149),
      stagger: length.mm(0),
      passes: [{ pass: 1, direction: 'forward', from: length.mm(-210), to: length.mm(210), tapeLength: length.m(9.5) }],
      rolls: [{ roll: 1, length: length.m(9.5), endsInPass: 1, endsAt: length.mm(210) }],
      charge: 'batch',
      chargeLength: length.m(3),
    },
    site: {
      decision: 'wait',
      weather: 'wait',
      steel: 'go',
      reasons: [],
      holdTime: { known: true, time: time.hour(51.4) },
      requiredGrade: 'Sa 2 1/2',
      requiredProfile: length.mm(0.06),
      surfaceFrom: 'class',
    },
    acceptance: {
      missing: [],
      leastThickness: length.mm(3.94),
      leastOverlap: length.mm(104.2),
      highestWrinkle: length.mm(0.8),
      needsSecondMethod: true,
      inspection: [],
      pressureTest: { medium: 'none', pressure: gauge.bar(11), resistance: gauge.bar(12), hold: time.hour(1) },
    },
    timeline: {
      steps: [
        {
          id: 'cure',
          sort: 'hold point',
          after: [],
          takes: { cure: 'laminate' },
          startsAt: time.hour(0),
          endsAt: time.hour(51.4),
          duration: { known: true, time: time.hour(51.4) },
          slack: time.hour(0),
          critical: true,
        },
      ],
      earliestReturn: { known: true, time: time.hour(51.4) },
    },
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

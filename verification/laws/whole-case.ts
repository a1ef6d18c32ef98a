import {
  arealWeight,
  corrosionRate,
  density,
  energyReleaseRate,
  force,
  gauge,
  type Length,
  length,
  modulus,
  moment,
  ratio,
  speed,
  strain,
  stress,
  temperature,
  time,
} from '../../src/quantity/index.js';
import type { CureSheet, RepairCase, ThicknessMethod } from '../../src/repair/index.js';
import { partWall, sealed } from '../../tests/repair/example-case.js';
import type { Random } from '../oracles/random.js';

/** Random whole cases: every field that a law bears on is drawn, over spans in which a design is often made. */

const between = (random: Random, low: number, high: number): number => low + (high - low) * random();
const oneOf = <T>(random: Random, choices: readonly T[]): T => choices[Math.floor(random() * choices.length)] as T;
const often = (random: Random, share: number): boolean => random() < share;

const METHODS: readonly (ThicknessMethod | undefined)[] = [
  undefined,
  'substrate ignored',
  'substrate sharing load',
  'substrate yielded',
  'long-term strength',
];
const PIPES = [
  [60.3, 3.91],
  [114.3, 6.02],
  [168.3, 7.11],
  [219.1, 8.18],
  [323.9, 8.38],
  [508, 12.7],
] as const;

/** This version designs for none of these; they are drawn so that a worse case of one is seen too. */
const OTHER_KINDS = ['through-wall slot', 'crack', 'dent', 'gouge', 'lamination', 'bulge', 'seam defect'] as const;
const FITTINGS = ['bend', 'tee', 'reducer', 'flange', 'nozzle', 'weld'] as const;

/** A pipe, and a defect that lies on it. */
function pipeAndDefect(random: Random, leaks: boolean): Pick<RepairCase, 'pipe' | 'defect'> {
  const [outside, wall] = oneOf(random, PIPES);
  const yieldStrength = between(random, 200, 450);
  const axial = between(random, 10, 1.5 * outside);
  const width = between(random, 10, 1.2 * outside);
  const left = between(random, leaks ? 0.3 : 0.25, 0.95) * wall;
  const rate = (most: number) => corrosionRate.mmPerYear(between(random, 0, most));
  const grows = often(random, 0.5);
  return {
    pipe: {
      outsideDiameter: length.mm(outside),
      wallThickness: length.mm(wall),
      cathodicProtection: 'none',
      material: {
        name: 'carbon steel',
        yieldStrength: stress.MPa(yieldStrength),
        tensileStrength: stress.MPa(yieldStrength * between(random, 1.2, 1.6)),
        allowableStress: stress.MPa(yieldStrength * between(random, 0.45, 0.65)),
        modulus: partWall.pipe.material.modulus,
        thermalExpansion: partWall.pipe.material.thermalExpansion,
      },
    },
    defect: {
      kind: leaks ? 'through-wall hole' : often(random, 0.98) ? 'metal loss' : oneOf(random, OTHER_KINDS),
      nearestAttachment: length.m(between(random, 0.4, 10)),
      cause: leaks
        ? 'internal corrosion'
        : oneOf(random, ['external corrosion', 'external corrosion', 'internal corrosion']),
      axialLength: length.mm(axial),
      circumferentialWidth: length.mm(width),
      remainingWall: length.mm(left),
      readingError: often(random, 0.5) ? 'none' : length.mm(between(random, 0, 0.1 * wall)),
      growth: grows || leaks ? { depth: rate(leaks ? 0.05 : 0.2), length: rate(0.5) } : 'none',
      ...(leaks ? { holeDiameter: length.mm(Math.min(axial, width, between(random, 1, 12))) } : {}),
    },
  };
}

function loadsOf(random: Random, pressure: number, outside: number): RepairCase['loads'] {
  const some = (share: number, value: () => number) => (often(random, share) ? value() : undefined);
  const axial = some(0.3, () => between(random, -1, 1) * 100e3 * (outside / 0.2));
  const bending = some(0.12, () => between(random, 0, 1) * 5e3 * (outside / 0.2) ** 2);
  const torsion = some(0.06, () => between(random, 0, 1) * 2e3 * (outside / 0.2) ** 2);
  const shear = some(0.06, () => between(random, 0, 1) * 10e3);
  return {
    axialForce: axial === undefined ? 'none' : force.N(axial),
    bendingMoment: bending === undefined ? 'none' : moment.Nm(bending),
    torsion: torsion === undefined ? 'none' : moment.Nm(torsion),
    shearForce: shear === undefined ? 'none' : force.N(shear),
    externalPressure: often(random, 0.88) ? 'none' : gauge.bar(between(random, 0, 1)),
    soil: often(random, 0.9)
      ? 'none'
      : {
          cover: length.m(between(random, 0.6, 3)),
          density: density.kgPerM3(between(random, 1600, 2200)),
          waterAbove: often(random, 0.5) ? 'none' : length.m(between(random, 0.1, 2)),
          traffic: often(random, 0.5) ? 'none' : gauge.kPa(between(random, 5, 40)),
        },
    ...(often(random, 0.03) ? {} : { freeSpan: length.m(between(random, 2, 12)) }),
    cycles: often(random, 0.75)
      ? 'none'
      : {
          number: Math.round(10 ** between(random, 2, 7)),
          lowestPressure: gauge.Pa(pressure * between(random, 0, 0.6)),
          highestPressure: gauge.Pa(pressure * between(random, 0.7, 1)),
        },
  };
}

function cureOf(random: Random, base: CureSheet): CureSheet {
  if (base.mechanism !== 'two-part reaction' || often(random, 0.15)) {
    return {
      mechanism: 'moisture',
      rows: [
        {
          temperature: temperature.degC(10),
          humidity: ratio.percent(30),
          cureTime: time.hour(8),
          workingTime: time.minute(30),
        },
        {
          temperature: temperature.degC(25),
          humidity: ratio.percent(60),
          cureTime: time.hour(4),
          workingTime: time.minute(15),
        },
        {
          temperature: temperature.degC(40),
          humidity: ratio.percent(95),
          cureTime: time.hour(2),
          workingTime: time.minute(8),
        },
      ],
    };
  }
  const sheet = {
    ...base,
    cureTime: time.hour(between(random, 4, 48)),
    workingTime: time.minute(between(random, 15, 90)),
  };
  if (often(random, 0.7)) return sheet;
  const { activationEnergy: _, ...without } = sheet;
  return without;
}

/** The steel over the hours of the work, no hotter than at its start, and long enough for most cures. */
function hoursOf(random: Random, steel: number): RepairCase['site']['history'] {
  return [
    { duration: time.hour(between(random, 4, 24)), temperature: temperature.degC(steel) },
    { duration: time.hour(400), temperature: temperature.degC(Math.max(11, steel - between(random, 0, 8))) },
  ];
}

/** One case. Most of those that are drawn are designed. */
export function wholeCase(random: Random): RepairCase {
  const leaks = often(random, 0.4);
  const isSealed = leaks && often(random, 0.5);
  const { pipe, defect } = pipeAndDefect(random, leaks);
  const outside = pipe.outsideDiameter as Length;
  const hold = (2 * pipe.wallThickness * (pipe.material.allowableStress ?? 0)) / outside;
  const pressure = leaks ? between(random, 0.05, 1.5) * 1e6 : Math.min(10e6, hold) * between(random, 0.1, 0.9);
  const repairClass = oneOf(random, [3, 3, 2, 1] as const);
  const highest = repairClass === 1 ? 1e6 : repairClass === 2 ? 2e6 : Number.POSITIVE_INFINITY;
  const designPressure = gauge.Pa(Math.min(pressure, highest));
  const steel = between(random, 12, 32);
  const designTemperature = between(random, steel, repairClass === 1 ? 40 : 65);
  const method = leaks ? undefined : oneOf(random, METHODS);
  const axialShare = between(random, 0.3, 1);
  const round = between(random, 15, 60);
  const [laminate, filler] = [partWall.laminate, partWall.filler];
  if (filler === 'none') throw new Error('the example has a filler');
  const tape = often(random, 0.55);
  const humidity = ratio.percent(between(random, 35, 75));
  const mixed = often(random, 0.8);
  const live = often(random, 0.25) && !isSealed;
  const ply = between(random, 0.3, 1.2);
  // A loss from outside is filled up.
  const hollow = defect.cause === 'external corrosion' ? pipe.wallThickness - defect.remainingWall : 0;
  return {
    title: 'drawn',
    basis: oneOf(random, ['ISO 24817', 'ASME PCC-2'] as const),
    pipe,
    defect,
    service: {
      ...partWall.service,
      phase:
        !leaks && repairClass === 3 && often(random, 0.1) ? oneOf(random, ['gas', 'two-phase'] as const) : 'liquid',
      safetyCritical: repairClass !== 1 && often(random, 0.2),
      hazards: repairClass === 3 && often(random, 0.2) ? ['corrosive'] : [],
      designPressure,
      designTemperature: temperature.degC(designTemperature),
    },
    line: isSealed
      ? ({ ...sealed.line, pressure: gauge.bar(between(random, 0, 0.5)) } as RepairCase['line'])
      : live && !leaks
        ? {
            state: 'under pressure',
            pressure: gauge.Pa(designPressure * between(random, 0.05, 0.5)),
            writtenProcedure: 'WP-1',
          }
        : partWall.line,
    loads: loadsOf(random, designPressure, outside),
    fitting: often(random, 0.98) ? 'none' : oneOf(random, FITTINGS),
    assessment: { designFactor: oneOf(random, [0.5, 0.6, 0.72]) },
    repair: {
      class: repairClass,
      life: time.year(between(random, 2, 20)),
      ...(method === undefined ? {} : { method }),
      ...(often(random, 0.2) ? { loading: 'rare' as const } : {}),
      ...(leaks && often(random, 0.2) ? { leakFactorByFormula: true } : {}),
    },
    laminate: {
      ...laminate,
      // Stiffer than glass makes one.
      ...(round > 45 ? { fibre: 'carbon' as const, isolatingLayer: 'one ply of glass' } : {}),
      hoopModulus: modulus.GPa(round),
      axialModulus: modulus.GPa(round * axialShare),
      strainToFailure: strain.percent(between(random, 1.05, 2)),
      glassTransition: temperature.degC(between(random, 90, 150)),
      energyReleaseRate: energyReleaseRate.JPerM2(between(random, 80, 400)),
      energyReleaseRateOverSeal: {
        energyReleaseRate: energyReleaseRate.JPerM2(between(random, 80, 300)),
        footprint: length.mm(500),
      },
      lapShearStrength: stress.MPa(between(random, 5, 12)),
      plyThickness: length.mm(ply),
      longTermStrength: {
        strength: stress.MPa(between(random, 80, 250)),
        test: oneOf(random, ['1000 h survival', 'design life regression'] as const),
        testTemperature: temperature.degC(between(random, 66, 90)),
      },
      cure: cureOf(random, laminate.cure),
    },
    wrap: tape
      ? {
          form: 'tape',
          width: length.mm(between(random, 0.2, 0.45) * 1000 * Math.min(0.6, outside)),
          overlap: ratio.percent(oneOf(random, [50, 50, 55, 67])),
          rollLength: length.m(between(random, 5, 40)),
          waste: ratio.percent(between(random, 5, 20)),
        }
      : {
          form: 'sheet',
          width: length.mm(between(random, 150, 1200)),
          rollLength: length.m(between(random, 20, 100)),
          waste: ratio.percent(between(random, 5, 20)),
        },
    resin: mixed ? fabricOf(ply) : 'none',
    filler:
      often(random, 0.85) || leaks || hollow > 0
        ? {
            ...filler,
            thicknessOverDefect: atLeast(filler.thicknessOverDefect, hollow),
            cure: cureOf(random, filler.cure),
          }
        : 'none',
    ...(often(random, 0.4)
      ? { crew: { layingSpeed: speed.mPerMin(between(random, 2, 12)), crews: oneOf(random, [1, 2]), start: '07:00' } }
      : {}),
    site: {
      ...(often(random, 0.3) ? { history: hoursOf(random, steel) } : {}),
      pipeTemperature: temperature.degC(steel),
      airTemperature: temperature.degC(steel + between(random, -2, 1)),
      relativeHumidity: humidity,
    },
    ...(isSealed ? { seal: sealed.seal } : {}),
  } as RepairCase;
}

const atLeast = (thickness: number, depth: number): Length => Math.max(thickness, depth) as Length;

/** The fabric that makes a ply of so many millimetres: three fifths of 1.7 g/cm3. */
function fabricOf(ply: number): RepairCase['resin'] {
  const { resin } = partWall;
  return resin === 'none' ? resin : { ...resin, fabricWeight: arealWeight.kgPerM2(0.6 * 1.7 * ply) };
}

import { gauge, type Length, speed, temperature, time } from '../../src/quantity/index.js';
import type { RepairCase, ThicknessMethod } from '../../src/repair/index.js';
import { partWall } from '../../tests/repair/example-case.js';
import type { Random } from '../oracles/random.js';
import { acceptanceOf } from './drawn/acceptance.js';
import { dayOf } from './drawn/day.js';
import { between, often, oneOf } from './drawn/draw.js';
import { lineOf, recentOf, sealOf } from './drawn/line-and-seal.js';
import { loadsOf } from './drawn/loads.js';
import { fabricOf, fillerOf, laminateOf, stockOf } from './drawn/materials.js';
import { pipeAndDefect } from './drawn/pipe-and-defect.js';

/** Random whole cases: every field that a law bears on is drawn, over spans in which a design is often made. */

const METHODS: readonly (ThicknessMethod | undefined)[] = [
  undefined,
  'substrate ignored',
  'substrate sharing load',
  'substrate yielded',
  'long-term strength',
];

const FITTINGS = ['bend', 'tee', 'reducer', 'flange', 'nozzle', 'weld'] as const;

/** Few are covered: they are drawn so that a worse case of one is seen too. */
function fittingOf(random: Random, outside: Length): RepairCase['fitting'] {
  if (often(random, 0.98)) return 'none';
  const kind = oneOf(random, FITTINGS);
  return kind === 'bend' ? { kind, bendRadius: (outside * 3) as Length } : { kind };
}

function assessmentOf(random: Random): RepairCase['assessment'] {
  const designFactor = oneOf(random, [0.5, 0.6, 0.72]);
  if (often(random, 0.8)) return { designFactor };
  return {
    designFactor,
    safetyFactor: between(random, 1.2, 2),
    flowStress: oneOf(random, ['1.1 SMYS', 'SMYS + 69 MPa'] as const),
  };
}

function serviceOf(
  random: Random,
  leaks: boolean,
  repairClass: 1 | 2 | 3,
  designPressure: RepairCase['service']['designPressure'],
): RepairCase['service'] {
  const isGas = !leaks && repairClass === 3 && often(random, 0.1);
  return {
    ...partWall.service,
    phase: isGas ? oneOf(random, ['gas', 'two-phase'] as const) : 'liquid',
    safetyCritical: repairClass !== 1 && often(random, 0.2),
    hazards: repairClass === 3 && often(random, 0.2) ? ['corrosive'] : [],
    designPressure,
    surge: often(random, 0.85) ? 'included' : gauge.Pa(designPressure * between(random, 0.9, 1.3)),
    ...recentOf(random, designPressure),
  };
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
  const coldest = often(random, 0.8) ? undefined : between(random, -10, steel);
  const method = leaks ? undefined : oneOf(random, METHODS);
  const ply = between(random, 0.3, 1.2);
  // A loss from outside is filled up.
  const hollow = defect.cause === 'external corrosion' ? pipe.wallThickness - defect.remainingWall : 0;
  const service = serviceOf(random, leaks, repairClass, designPressure);
  const line = lineOf(random, leaks, isSealed, designPressure);
  return {
    title: 'drawn',
    date: '2026-03-12',
    basis: oneOf(random, ['ISO 24817', 'ASME PCC-2'] as const),
    pipe,
    defect,
    service: {
      ...service,
      designTemperature: temperature.degC(designTemperature),
      ...(coldest === undefined ? {} : { lowestTemperature: temperature.degC(coldest) }),
    },
    line,
    loads: loadsOf(random, designPressure, outside),
    fitting: fittingOf(random, outside),
    assessment: assessmentOf(random),
    repair: {
      class: repairClass,
      life: time.year(between(random, 2, 20)),
      ...(method === undefined ? {} : { method }),
      ...(often(random, 0.2) ? { loading: 'rare' as const } : {}),
      ...(leaks && often(random, 0.2) ? { leakFactorByFormula: true } : {}),
    },
    laminate: laminateOf(random, ply, between(random, -30, -5)),
    wrap: stockOf(random, outside),
    resin: often(random, 0.8) ? fabricOf(ply) : 'none',
    filler: often(random, 0.85) || leaks || hollow > 0 ? fillerOf(random, hollow, partWall.laminate.name) : 'none',
    ...(often(random, 0.5)
      ? { crew: { layingSpeed: speed.mPerMin(between(random, 2, 12)), crews: oneOf(random, [1, 2]), start: '07:00' } }
      : {}),
    site: dayOf(random, steel),
    ...(isSealed ? { seal: sealOf(random, line.state === 'under pressure') } : {}),
    ...(often(random, 0.7) ? { acceptance: acceptanceOf(random, designPressure) } : {}),
  };
}

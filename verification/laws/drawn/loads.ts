import { density, force, gauge, length, moment } from '../../../src/quantity/index.js';
import type { RepairCase } from '../../../src/repair/index.js';
import type { Random } from '../../oracles/random.js';
import { between, often } from './draw.js';

export function loadsOf(random: Random, pressure: number, outside: number): RepairCase['loads'] {
  const some = (share: number, value: () => number) => (often(random, share) ? value() : undefined);
  const axial = some(0.3, () => between(random, -1, 1) * 150e3 * (outside / 0.2));
  const bending = some(0.12, () => between(random, 0, 1) * 5e3 * (outside / 0.2) ** 2);
  const torsion = some(0.06, () => between(random, 0, 1) * 2e3 * (outside / 0.2) ** 2);
  const shear = some(0.06, () => between(random, 0, 1) * 10e3);
  return {
    axialForce: axial === undefined ? 'none' : force.N(axial),
    heldLine: 'none',
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

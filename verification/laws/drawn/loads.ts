import { force, gauge, moment } from '../../../src/quantity/index.js';
import type { RepairCase } from '../../../src/repair/index.js';
import type { Random } from '../../oracles/random.js';
import { between, often } from './draw.js';

export function loadsOf(random: Random, pressure: number, outside: number): RepairCase['loads'] {
  const some = (share: number, value: () => number) => (often(random, share) ? value() : undefined);
  const axial = some(0.3, () => between(random, -1, 1) * 150e3 * (outside / 0.2));
  // What this version does not design for is drawn now and then.
  const bending = some(0.02, () => between(random, 0, 1) * 5e3 * (outside / 0.2) ** 2);
  const torsion = some(0.02, () => between(random, 0, 1) * 2e3 * (outside / 0.2) ** 2);
  const shear = some(0.02, () => between(random, 0, 1) * 10e3);
  return {
    axialForce: axial === undefined ? 'none' : force.N(axial),
    bendingMoment: bending === undefined ? 'none' : moment.Nm(bending),
    torsion: torsion === undefined ? 'none' : moment.Nm(torsion),
    shearForce: shear === undefined ? 'none' : force.N(shear),
    externalPressure: often(random, 0.98) ? 'none' : gauge.bar(between(random, 0, 1)),
    soil: 'none',
    cycles: often(random, 0.75)
      ? 'none'
      : {
          number: Math.round(10 ** between(random, 2, 7)),
          lowestPressure: gauge.Pa(pressure * between(random, 0, 0.6)),
          highestPressure: gauge.Pa(pressure * between(random, 0.7, 1)),
        },
  };
}

import {
  arealWeight,
  energyReleaseRate,
  type Length,
  length,
  modulus,
  ratio,
  strain,
  stress,
  temperature,
} from '../../../src/quantity/index.js';
import type { RepairCase } from '../../../src/repair/index.js';
import { partWall } from '../../../tests/repair/example-case.js';
import type { Random } from '../../oracles/random.js';
import { cureOf } from './cure.js';
import { between, often, oneOf } from './draw.js';

/** Laminate, wrap, resin and filler. */

/** One laminate; a few lose stiffness at the design temperature, more of it along the pipe. */
export function laminateOf(random: Random, ply: number, lowest: number): RepairCase['laminate'] {
  const axialShare = between(random, 0.3, 1);
  const round = between(random, 15, 60);
  const { laminate } = partWall;
  const drawnStrength = between(random, 80, 250);
  const testedAt = often(random, 0.8) ? between(random, 66, 90) : between(random, 20, 66);
  const breaksAt = between(random, 1.05, 2);
  // What a laminate holds for years it holds for a minute too, and a softer one breaks sooner: 60 per cent of 15 GPa by 1.05 per cent.
  const strength = Math.min(drawnStrength, 6 * round * breaksAt);
  return {
    ...laminate,
    // Stiffer than glass makes one.
    ...(round > 45 ? { fibre: 'carbon' as const, isolatingLayer: 'one ply of glass' } : {}),
    hoopModulus: modulus.GPa(round),
    axialModulus: modulus.GPa(round * axialShare),
    strainToFailure: strain.percent(breaksAt),
    glassTransition: temperature.degC(between(random, 90, 150)),
    energyReleaseRate: energyReleaseRate.JPerM2(between(random, 80, 400)),
    energyReleaseRateOverSeal: {
      energyReleaseRate: energyReleaseRate.JPerM2(between(random, 80, 300)),
      footprint: length.mm(often(random, 0.8) ? 500 : between(random, 40, 100)),
    },
    lapShearStrength: stress.MPa(between(random, 5, 12)),
    plyThickness: length.mm(ply),
    lowestTemperature: temperature.degC(lowest),
    longTermStrength: {
      strength: stress.MPa(strength),
      test: oneOf(random, ['1000 h survival', 'design life regression'] as const),
      testTemperature: temperature.degC(testedAt),
    },
    ...(often(random, 0.2)
      ? {
          atDesignTemperature: {
            energyReleaseRate: energyReleaseRate.JPerM2(between(random, 60, 300)),
            hoopModulus: modulus.GPa(round * between(random, 0.8, 1)),
            axialModulus: modulus.GPa(round * axialShare * between(random, 0.5, 1)),
          },
        }
      : {}),
    cure: cureOf(random, laminate.cure),
  };
}

/** Tape of a twelfth to a quarter of the pipe, now and then too wide for it; or sheet. */
export function stockOf(random: Random, outside: number): RepairCase['wrap'] {
  if (often(random, 0.55)) {
    const share = often(random, 0.9) ? between(random, 0.2, 0.45) * 0.6 : between(random, 0.3, 2);
    return {
      form: 'tape',
      width: length.mm(share * 1000 * Math.min(1, outside)),
      overlap: ratio.percent(oneOf(random, [50, 50, 55, 67])),
      rollLength: length.m(between(random, 5, 40)),
      waste: ratio.percent(between(random, 5, 20)),
    };
  }
  return {
    form: 'sheet',
    width: length.mm(between(random, 150, 1200)),
    rollLength: length.m(between(random, 20, 100)),
    waste: ratio.percent(between(random, 5, 20)),
  };
}

/** Filler at least as deep as the hollow; now and then thick, and now and then called as the laminate is. */
export function fillerOf(random: Random, hollow: number, called: string): RepairCase['filler'] {
  const { filler } = partWall;
  if (filler === 'none') throw new Error('the example has a filler');
  const thick = often(random, 0.75) ? filler.thicknessOverDefect : length.mm(between(random, 4, 12));
  return {
    ...filler,
    name: often(random, 0.1) ? called : filler.name,
    thicknessOverDefect: Math.max(thick, hollow) as Length,
    cure: cureOf(random, filler.cure),
  };
}

/** The fabric that makes a ply of so many millimetres: three fifths of 1.7 g/cm3. */
export function fabricOf(ply: number): RepairCase['resin'] {
  const { resin } = partWall;
  return resin === 'none' ? resin : { ...resin, fabricWeight: arealWeight.kgPerM2(0.6 * 1.7 * ply) };
}

import { askerOf, cyclesOf, temperatureLimit } from './allowable-strain.js';
import type { Bond } from './bond.js';
import { energyFromTests, testsSuffice } from './energy-from-tests.js';
import type { Unbonded } from './leak.js';
import type { Found } from './pipe-as-found.js';
import type { Job } from './read-job.js';
import { worstOverMean } from './rim.js';
import { leakFactor, temperatureFactor } from './rules.js';
import { plyOnPipe } from './tape-moduli.js';

/** Of the bond to prepared pipe: as stated, or by the tests of the maker. */
function energyOnPipe(laminate: Job['laminate']): number | undefined {
  const { energyReleaseRate, holeTests, shearModulus: shear, hoopModulus, axialModulus } = laminate;
  if (energyReleaseRate !== undefined || holeTests === undefined) return energyReleaseRate;
  if (shear === undefined || !testsSuffice(laminate)) return undefined;
  const poisson = laminate.poissonRatio;
  return energyFromTests({ hoopModulus, axialModulus, poisson, shear }, holeTests);
}

/** The energy release rate that counts, and whether it holds the worst place of the rim; undefined where none is given. */
export function energyOver(
  { laminate, filler }: Job,
  where: Unbonded,
): { readonly energy: number; readonly holdsRim: boolean; readonly onPipe: boolean } | undefined {
  const plain = energyOnPipe(laminate);
  if (filler?.underWholeWrap === true) {
    const energy = filler.qualifiedOverFiller?.energyReleaseRate;
    return energy === undefined ? undefined : { energy, holdsRim: where.under !== 'seal', onPipe: false };
  }
  // Found over a seal it counts for a footprint at most as large; beyond that, and for a ring, only where it is the lower one.
  const sealed = where.under === 'seal' ? laminate.energyReleaseRateOverSeal : undefined;
  const fits = sealed !== undefined && !where.ring && where.diameter <= sealed.footprint;
  const holdsRim = where.under !== 'seal' || fits;
  if (sealed !== undefined && (fits || sealed.energyReleaseRate < (plain ?? 0))) {
    // Beyond its footprint it says nothing of a rim as large.
    return { energy: sealed.energyReleaseRate, holdsRim, onPipe: true };
  }
  return plain === undefined ? undefined : { energy: plain, holdsRim, onPipe: true };
}

/** The bond over the leak. */
export function bondOf(job: Job, found: Found, where: Unbonded, leaking: boolean, at?: number): Bond | undefined {
  const { laminate, service } = job;
  const limit = temperatureLimit(job, leaking);
  const over = energyOver(job, where);
  if (limit === undefined || laminate.shearModulus === undefined || over === undefined) return undefined;
  const warm = laminate.atDesignTemperature;
  const service0 = leakFactor(askerOf(job), job.repair.leakFactorByFormula === true) * cyclesOf(job);
  const common = { poisson: laminate.poissonRatio, shear: laminate.shearModulus };
  // The ply as it lies, at the moduli of the bond's own qualification.
  const { hoop: hoopModulus, axial: axialModulus } = plyOnPipe(job, found.outsideDiameter, laminate);
  // By mechanics the resistance goes with the root of modulus and energy; else the factor of the strain stands for it.
  // Held against the larger of the energies that were found, so that neither is raised by it.
  const known = warm !== undefined && over.onPipe;
  const heat = known
    ? Math.min(
        1,
        Math.sqrt(
          (warm.energyReleaseRate * Math.sqrt(warm.hoopModulus * warm.axialModulus)) /
            (Math.max(energyOnPipe(laminate) ?? 0, over.energy) *
              Math.sqrt(laminate.hoopModulus * laminate.axialModulus)),
        ),
      )
    : temperatureFactor(job, limit - Math.max(at ?? service.designTemperature, job.site.pipeTemperature));
  // An energy that was found over a seal as large has the worst place of its rim in it.
  const worst = over.holdsRim ? 1 : worstOverMean({ ...common, hoopModulus, axialModulus });
  return {
    ...common,
    energy: over.energy,
    energyOfPlate: over.energy / Math.max(1, worst),
    factor: service0 * heat,
    hoopModulus,
    axialModulus,
  };
}

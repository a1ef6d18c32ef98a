import type { Designed } from '../../../src/repair/index.js';
import { pressureOf, reaches } from './stated.js';

/** The laminate over a leak begins at the rim of all that it cannot bond to, and nothing under that holds for it. */
export function leak(design: Designed): string | undefined {
  const { case: stated, found, laminate, extent, seal } = design;
  if (!found.throughWall) return undefined;
  const { footprint } = laminate;
  if (footprint === undefined || found.designHole === undefined) return 'a leak has no footprint';
  const D = stated.pipe.outsideDiameter as number;
  const asked = seal === 'none' ? undefined : stated.seal;
  const across = asked?.sheet.across ?? 0;
  const collar = asked?.collar === undefined || asked.collar === 'none' ? 0 : asked.collar;
  const pad = seal === 'none' ? 0 : seal.padDiameter;
  const size = Math.max(found.designHole, pad, across, collar);
  if (!reaches(footprint.diameter, size)) return 'the leak is taken smaller than what lies on it';
  const bands = asked?.bands === 'left' ? asked.band.count * asked.band.width : 0;
  if (!reaches(footprint.length, Math.max(size, bands))) return 'bands that stay are longer than the unbonded length';
  if (!reaches(extent.defectLength, Math.max(size, bands, found.lengthAtEndOfLife)))
    return 'the overlap begins inside what lies on the leak';
  if (
    asked !== undefined &&
    footprint.bonded === 'beside it' &&
    (bands > 0 || Math.max(pad, across, collar) > (Math.PI * D) / 2)
  )
    return 'a laminate that is bonded nowhere round the pipe counts as bonded beside the seal';
  return energy(design, size);
}

/** Share of the release rate that a leak may use up, at most: by rule set, class and what the case asks. */
function mostShare({ basis, repair }: Designed['case']): number {
  if (basis === 'ASME PCC-2') return 0.333;
  if (repair.class !== 3) return repair.class === 1 ? 0.83 : 0.75;
  return repair.leakFactorByFormula === true ? 0.666 : 0.333;
}

/**
 * What a round plate or a ring releases, with the stiffer of the two moduli: the least that it can be, against the tougher
 * of the bonds that count.
 */
function energy({ case: stated, laminate }: Designed, size: number): string | undefined {
  const { hoopModulus, axialModulus, poissonRatio, shearModulus = 0, energyReleaseRate = 0 } = stated.laminate;
  const { energyReleaseRateOverSeal: over } = stated.laminate;
  const { footprint, laidThickness: t } = laminate;
  if (footprint === undefined) return undefined;
  const D = stated.pipe.outsideDiameter as number;
  const stiff = Math.max(hoopModulus, axialModulus);
  const isSeal = footprint.under === 'seal';
  const fits = isSeal && over !== undefined && footprint.bonded === 'beside it' && size <= over.footprint;
  const tough = fits ? Math.max(energyReleaseRate, over.energyReleaseRate) : energyReleaseRate;
  const bent = ((1 - poissonRatio ** 2) / stiff) * ((3 * size ** 4) / (512 * t ** 3) + size / Math.PI);
  const asPlate = bent + (3 * size * size) / (64 * shearModulus * t);
  const asRing = (1.55 * D * D) / (8 * hoopModulus * t) + (Math.PI * size) / (4 * hoopModulus);
  const least = Math.min(
    footprint.bonded === 'beside it' ? asPlate : Number.POSITIVE_INFINITY,
    isSeal ? asRing : Number.POSITIVE_INFINITY,
  );
  return reaches(mostShare(stated) * Math.sqrt(tough / least) * (1 + 1e-6), pressureOf(stated))
    ? undefined
    : 'the leak releases more energy than the bond takes';
}

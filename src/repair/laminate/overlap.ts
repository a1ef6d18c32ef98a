import { decide, step } from '../../formula/index.js';
import {
  defaultStrains,
  overlapFromAdhesive,
  overlapFromGeometry,
  overlapFromHole,
  overlapFromHoleBeyondShare,
} from '../../laminate/index.js';
import type { Length, Strain, Stress } from '../../quantity/index.js';
import type { AsFound } from '../design/design.js';
import { use, type Workbook } from '../job/workbook.js';

/** By the geometry of the pipe: the length over which a ring load dies away (ISO 24817, 7.5.8). */
export function overlapOfGeometry(work: Workbook, { outsideDiameter }: AsFound): Length {
  const { coefficient, divisor } = use(work, 'overlap from the geometry', work.rules.overlap.geometry);
  const { wallThickness } = work.case.pipe;
  const surface = { outsideDiameter, wallThickness, coefficient, divisor };
  return step(work.recorder, 'laminate/overlap-from-geometry', overlapFromGeometry, surface);
}

/** By the bond, which carries the end load of the laminate into the pipe (ISO 24817, 7.5.8; PCC-2, axial extent). */
export function overlapOfBond(work: Workbook, laminateThickness: Length, lapShearStrength: Stress): Length {
  const { recorder, rules, case: repairCase } = work;
  const { axialModulus } = repairCase.laminate;
  const factor = use(work, 'factor on the overlap of the bond', rules.overlap.adhesiveFactor);
  const axialStrain = strainOfBond(work);
  const bond = { axialModulus, axialStrain, laminateThickness, lapShearStrength, factor };
  return step(recorder, 'laminate/overlap-from-adhesive', overlapFromAdhesive, bond);
}

/** A laminate that may strain less for its life, class, temperature or cycles pulls on the bond no less. */
function strainOfBond(work: Workbook): Strain {
  const { recorder, rules, case: repairCase } = work;
  const { hoopModulus, axialModulus, strainToFailure } = repairCase.laminate;
  const { table, life } = use(work, 'strain that the bond has to follow', rules.overlap.bondStrains);
  decide(
    recorder,
    'the bond has to follow the largest default strain of the column',
    'so that a longer life or a higher class never shortens the overlap',
  );
  const largest = step(
    recorder,
    'laminate/default-strains',
    defaultStrains,
    {
      table,
      designLife: life,
      hoopModulus,
      axialModulus,
      failureStrain: strainToFailure as Strain,
      modulusShare: use(work, 'share of the axial modulus', rules.modulusShare),
      leastFailureStrain: use(work, 'least strain to failure', rules.leastFailureStrain),
    },
    'for the bond',
  );
  return largest.axial;
}

/** Four hole diameters, where the hole is small enough for that rule; a larger one goes by the geometry (ISO 24817, 7.5.8). */
export function overlapOfHole(work: Workbook, found: AsFound): Length | undefined {
  const { hole: rule } = work.rules.overlap;
  const { designHole: holeDiameter, outsideDiameter } = found;
  if (holeDiameter === undefined || rule.value === null) return undefined;
  const { multiple, share } = rule.value;
  const hole = { holeDiameter, outsideDiameter, wallThickness: work.case.pipe.wallThickness, multiple, share };
  if (overlapFromHoleBeyondShare(hole)) {
    decide(
      work.recorder,
      'overlap of the hole left out',
      'the hole is larger than that rule covers; the geometry of the pipe governs',
    );
    return undefined;
  }
  use(work, 'overlap from the hole', rule);
  return step(work.recorder, 'laminate/overlap-from-hole', overlapFromHole, hole);
}

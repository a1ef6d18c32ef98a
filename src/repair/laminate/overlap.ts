import { decide, step } from '../../formula/index.js';
import {
  overlapFromAdhesive,
  overlapFromGeometry,
  overlapFromHole,
  overlapFromHoleBeyondShare,
} from '../../laminate/index.js';
import { exactly, type Length, line, type Stress } from '../../quantity/index.js';
import type { AsFound } from '../design/design.js';
import { use, type Workbook } from '../job/workbook.js';
import type { Strains } from '../limits/strains.js';

/** By the geometry of the pipe: the length over which a ring load dies away (ISO 24817, 7.5.8). */
export function overlapOfGeometry(work: Workbook, { outsideDiameter }: AsFound): Length {
  const { coefficient, divisor } = use(work, 'overlap from the geometry', work.rules.overlap.geometry);
  const { wallThickness } = work.case.pipe;
  const surface = { outsideDiameter, wallThickness, coefficient, divisor };
  return step(work.recorder, 'laminate/overlap-from-geometry', overlapFromGeometry, surface);
}

/** By the bond, which carries the end load of the laminate into the pipe (ISO 24817, 7.5.8; PCC-2, axial extent). */
export function overlapOfBond(
  work: Workbook,
  { axialDefault: axialStrain }: Strains,
  laminateThickness: Length,
  lapShearStrength: Stress,
): Length {
  const { recorder, rules, case: repairCase } = work;
  const { axialModulus } = repairCase.laminate;
  const factor = use(work, 'factor on the overlap of the bond', rules.overlap.adhesiveFactor);
  const bond = { axialModulus, axialStrain, laminateThickness, lapShearStrength, factor };
  const overlap = step(recorder, 'laminate/overlap-from-adhesive', overlapFromAdhesive, bond);
  const other = rules.overlap.adhesiveFactorOption.value;
  const compared = { axialModulus, axialStrain, laminateThickness, lapShearStrength, factor: other };
  const purpose = 'with the factor of another edition, for comparison';
  step(recorder, 'laminate/overlap-from-adhesive', overlapFromAdhesive, compared, purpose);
  decide(
    recorder,
    'the bond has to follow the default axial strain, before temperature and cycles',
    'a laminate that may strain less for its own sake pulls on the bond no less',
  );
  decide(
    recorder,
    line('bond overlap with factor {0}', exactly('factor', 'number', factor)),
    line('the recollections differ: another edition has {0}', exactly('factor', 'number', other)),
  );
  return overlap;
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

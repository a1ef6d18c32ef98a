import { decide, heading, step } from '../../formula/index.js';
import {
  axialExtent,
  governingOverlap,
  overlapFromAdhesive,
  overlapFromGeometry,
  overlapFromHole,
  taperLength,
} from '../../laminate/index.js';
import type { Length } from '../../quantity/index.js';
import type { AsFound, ExtentDesign, LaminateDesign } from '../design/design.js';
import { type Open, open } from '../job/stage.js';
import { use, type Workbook } from '../job/workbook.js';
import type { Strains } from '../limits/strains.js';

/** How far along the pipe the laminate reaches: every candidate for the overlap, the taper, the total. */
export function planExtent(
  work: Workbook,
  {
    found,
    strains,
    laminate: { laidThickness: laminateThickness },
  }: { found: AsFound; strains: Strains; laminate: LaminateDesign },
): ExtentDesign | Open {
  const { recorder, rules, case: repairCase } = work;
  const { pipe, laminate } = repairCase;
  heading(recorder, 'Axial extent');
  const { coefficient, divisor } = use(work, 'overlap from the geometry', rules.overlap.geometry);
  const surface = { outsideDiameter: found.outsideDiameter, wallThickness: pipe.wallThickness };
  const geometry = step(recorder, 'laminate/overlap-from-geometry', overlapFromGeometry, {
    ...surface,
    coefficient,
    divisor,
  });
  const minimum = use(work, 'least overlap', rules.overlap.minimum);
  const { lapShearStrength } = laminate;
  if (lapShearStrength === undefined) return open;
  const factor = use(work, 'factor on the overlap of the bond', rules.overlap.adhesiveFactor);
  const bond = {
    axialModulus: laminate.axialModulus,
    axialStrain: strains.axialDefault,
    laminateThickness,
    lapShearStrength,
  };
  const adhesive = step(recorder, 'laminate/overlap-from-adhesive', overlapFromAdhesive, { ...bond, factor });
  const other = rules.overlap.adhesiveFactorOption.value;
  step(
    recorder,
    'laminate/overlap-from-adhesive',
    overlapFromAdhesive,
    { ...bond, factor: other },
    'with the factor of another edition, for comparison',
  );
  decide(
    recorder,
    'the bond has to follow the default axial strain, before temperature and cycles',
    'a laminate that may strain less for its own sake pulls on the bond no less',
  );
  decide(recorder, `bond overlap with factor ${factor}`, `the recollections differ: another edition has ${other}`);
  const hole = overlapOfHole(work, found);
  const governing = step(recorder, 'laminate/governing-overlap', governingOverlap, {
    geometry,
    adhesive,
    minimum,
    ...(hole === undefined ? {} : { hole }),
  });
  const taper = step(recorder, 'laminate/taper-length', taperLength, {
    laminateThickness,
    ratio: use(work, 'taper', rules.overlap.taper),
  });
  const defectLength = Math.max(found.lengthAtEndOfLife, found.designHole ?? 0) as Length;
  const totalLength = step(recorder, 'laminate/axial-extent', axialExtent, {
    overlap: governing.overlap,
    defectLength,
    taperLength: taper,
  });
  return {
    overlap: {
      candidates: [
        { criterion: 'geometry', value: geometry },
        { criterion: 'minimum', value: minimum },
        { criterion: 'adhesive', value: adhesive },
        ...(hole === undefined ? [] : [{ criterion: 'hole', value: hole }]),
      ],
      governing: governing.governing,
      value: governing.overlap,
    },
    taper,
    defectLength,
    totalLength,
  };
}

/** Four hole diameters, where the hole is small enough for that rule; a larger one goes by the geometry. */
function overlapOfHole(work: Workbook, found: AsFound): Length | undefined {
  const { hole: rule } = work.rules.overlap;
  const { designHole: holeDiameter, outsideDiameter } = found;
  if (holeDiameter === undefined || rule.value === null) return undefined;
  const { wallThickness } = work.case.pipe;
  const { multiple, share } = rule.value;
  if (holeDiameter >= share * Math.sqrt(outsideDiameter * wallThickness)) {
    decide(
      work.recorder,
      'overlap of the hole left out',
      'the hole is larger than that rule covers; the geometry of the pipe governs',
    );
    return undefined;
  }
  use(work, 'overlap from the hole', rule);
  return step(work.recorder, 'laminate/overlap-from-hole', overlapFromHole, {
    holeDiameter,
    outsideDiameter,
    wallThickness,
    multiple,
    share,
  });
}

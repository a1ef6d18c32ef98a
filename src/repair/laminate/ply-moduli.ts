import { decide, step } from '../../formula/index.js';
import { minorPoissonRatio, offAxisModulus } from '../../laminate/index.js';
import { type Angle, exactly, type Length, type Modulus, roundedUp } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { leadAngle } from '../../wrap/index.js';
import type { TapeStock } from '../case/case.js';
import { need, type Workbook } from '../job/workbook.js';

/** Moduli of the laminate round and along the pipe. */
export interface PlyModuli {
  readonly hoop: Modulus;
  readonly axial: Modulus;
}

/**
 * The moduli that a ply has as it lies on the pipe: a sheet lies square, a tape at its lead angle. None where the tape runs
 * too steeply, or where the shear modulus is missing.
 */
export function pliesAsLaid(work: Workbook, outsideDiameter: Length, ply: PlyModuli): PlyModuli | undefined {
  const { wrap, laminate } = work.case;
  if (wrap.form !== 'tape') return ply;
  const angle = leadOf(work, wrap, outsideDiameter);
  const shearModulus =
    laminate.shearModulus ??
    need(
      work,
      'laminate.shearModulus',
      'a tape runs off the hoop direction, and how much stiffness that costs rests on the shear modulus',
      'the maker of the repair system: shear tests',
    );
  if (angle === undefined || shearModulus === undefined) return undefined;
  decide(
    work.recorder,
    'the moduli at the lead angle of the tape on the bare pipe, free to shear',
    'it is steepest there; that passes of the other hand keep a ply from shearing is not counted',
  );
  const { poissonRatio } = laminate;
  const minor = { hoopModulus: ply.hoop, axialModulus: ply.axial, poissonRatio };
  const hoop = step(
    work.recorder,
    'laminate/off-axis-modulus',
    offAxisModulus,
    { alongModulus: ply.hoop, acrossModulus: ply.axial, shearModulus, poissonRatio, angle },
    'round the pipe',
  );
  const axial = step(
    work.recorder,
    'laminate/off-axis-modulus',
    offAxisModulus,
    {
      alongModulus: ply.axial,
      acrossModulus: ply.hoop,
      shearModulus,
      poissonRatio: step(work.recorder, 'laminate/minor-poisson-ratio', minorPoissonRatio, minor),
      angle,
    },
    'along the pipe',
  );
  // A ply that is stiff in shear gains off its axis: that is not counted.
  return { hoop: Math.min(hoop, ply.hoop) as Modulus, axial: Math.min(axial, ply.axial) as Modulus };
}

/** The lead angle, up to which the laminate is one that is stiff round the pipe. */
function leadOf(work: Workbook, { width: tapeWidth, overlap }: TapeStock, meanDiameter: Length): Angle | undefined {
  const angle = step(work.recorder, 'wrap/lead-angle', leadAngle, { tapeWidth, overlap, meanDiameter });
  const { steepestTape } = practice;
  if (angle <= steepestTape.value) return angle;
  work.notCovered.push({
    text: 'the tape is too wide for this pipe: it runs so steeply that the laminate is no longer one of the hoop direction; take a narrower tape',
    found: roundedUp('lead angle of the tape', 'angle', angle),
    limit: exactly(steepestTape.name, steepestTape.kind, steepestTape.value),
  });
  return undefined;
}

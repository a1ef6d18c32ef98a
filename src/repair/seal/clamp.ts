import { step } from '../../formula/index.js';
import { circumference } from '../../pipe/index.js';
import type { GaugePressure } from '../../quantity/index.js';
import { exactly, line } from '../../quantity/index.js';
import {
  backingSheet,
  backingSheetOutsidePractice,
  bandLength,
  bandTension,
  leakForce,
  sealPractice,
} from '../../seal/index.js';
import type { Seal } from '../case/case.js';
import type { AsFound } from '../design/design.js';
import type { SealDesign } from '../design/design-work.js';
import { type Workbook, warnCrew } from '../job/workbook.js';
import { type Fastened, tighten } from './fastener.js';
import type { PadPart } from './pad.js';

/** What holds the pad; a line without pressure needs no tension. */
export interface Clamp extends Pick<SealDesign, 'forceOnPad' | 'forceOnHole' | 'forming' | 'bandLength'> {
  readonly fastened: Fastened | 'none';
}

/** The force of the leak on the pad, and sheet, band and fastener against it. */
export function clampPad(
  work: Workbook,
  seal: Seal,
  { outsideDiameter }: AsFound,
  pad: PadPart,
  pressure: GaugePressure,
): Clamp {
  const { recorder } = work;
  const { band, sheet } = seal;
  const force = step(recorder, 'seal/leak-force', leakForce, {
    pressure,
    holeArea: pad.holeArea,
    padArea: pad.padArea,
  });
  const tensionAtPad = step(recorder, 'seal/band-tension', bandTension, {
    force: force.onPad,
    halfAngle: pad.halfAngle,
    factor: band.holdingFactor,
    bands: pad.bands,
  });
  const bent = {
    thickness: sheet.thickness,
    modulus: sheet.modulus,
    yieldStrength: sheet.yieldStrength,
    diameter: outsideDiameter,
  };
  const { forming } = step(recorder, 'seal/backing-sheet', backingSheet, bent);
  if (backingSheetOutsidePractice(bent)) {
    const [thinnest, thickest] = sealPractice.sheetThickness;
    warnCrew(
      work,
      'seal',
      line(
        'The backing sheet is thinner or thicker than the trade uses ({0} to {1} of stainless steel).',
        exactly('thinnest sheet thickness', 'length', thinnest),
        exactly('thickest sheet thickness', 'length', thickest),
      ),
    );
  }
  const length = step(recorder, 'seal/band-length', bandLength, {
    circumference: step(recorder, 'pipe/circumference', circumference, { outsideDiameter }),
    buildUp: sheet.thickness,
    bandThickness: band.thickness,
    overlap: band.overlap,
  });
  return {
    forceOnPad: force.onPad,
    forceOnHole: force.onHole,
    forming,
    bandLength: length,
    fastened: tensionAtPad === 0 ? 'none' : tighten(work, seal, outsideDiameter, tensionAtPad),
  };
}

import { step } from '../../formula/index.js';
import { reaches } from '../../numeric/index.js';
import type { Angle, Area, Length } from '../../quantity/index.js';
import { exactly, line, roundedUp } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import {
  bandsOverPad,
  bandsOverPadLiesBeside,
  circleArea,
  padHalfAngle,
  padHalfAngleBelowPractice,
  padSize,
  padSizeBelowPractice,
  sealPractice,
} from '../../seal/index.js';
import type { Seal } from '../case/case.js';
import type { AsFound } from '../design/design.js';
import type { SealDesign } from '../design/design-work.js';
import { type Workbook, warnCrew } from '../job/workbook.js';

/** The pad, with what both the clamping and its limits rest on. */
export type PadPart = Pick<SealDesign, 'padDiameter' | 'padGovernedBy'> & {
  readonly halfAngle: Angle;
  readonly padArea: Area;
  readonly holeArea: Area;
  /** Bands that press on it, of those that lie side by side. */
  readonly bands: number;
};

/** How large the pad of putty is, and what the leak acts on. */
export function sizePad(work: Workbook, seal: Seal, found: AsFound, holeDiameter: Length): PadPart {
  const { recorder } = work;
  const { multiple, multipleOf, margin } = seal.pad;
  const input = { holeDiameter, multiple, multipleOf, margin };
  const pad = step(recorder, 'seal/pad-size', padSize, input);
  if (padSizeBelowPractice(input))
    warnCrew(
      work,
      'seal',
      line(
        'The pad is smaller than the trade makes it: {0} times the size of the hole and {1} beyond it on every side.',
        exactly('pad over hole', 'number', sealPractice.padMultiple),
        roundedUp('pad beyond the hole', 'length', sealPractice.padMargin),
      ),
    );
  const least = { holeDiameter, multiple: 1, multipleOf, margin: practice.leastPadMargin.value };
  // No step of the sheet: it would say of this least pad that the trade makes a larger one.
  const landing = padSize(least);
  if (!reaches(pad.diameter, landing.diameter))
    work.reasons.push({
      text: 'the pad of the leak seal lies on too little steel beside the hole to close it: take a larger pad',
      found: exactly('pad', 'length', pad.diameter),
      limit: roundedUp('least pad', 'length', landing.diameter),
    });
  const half = { padDiameter: pad.diameter, outsideDiameter: found.outsideDiameter };
  if (padHalfAngleBelowPractice(half)) {
    const smallest = exactly('least pipe', 'length', sealPractice.leastPipeDiameter);
    warnCrew(work, 'seal', line('The pipe is smaller than banded seals are used on ({0}).', smallest));
  }
  const { across } = seal.sheet;
  if (across !== undefined && !reaches(across, pad.diameter))
    work.reasons.push({
      text: 'the sheet is smaller than the pad, and the putty would squeeze out beside it: take a larger sheet',
      found: exactly('sheet across', 'length', across),
      limit: roundedUp('pad', 'length', pad.diameter),
    });
  const { count: bands, width: bandWidth } = seal.band;
  const overPad = { bands, bandWidth, padDiameter: pad.diameter };
  if (bandsOverPadLiesBeside(overPad))
    warnCrew(
      work,
      'seal',
      line(
        'The bands are wider than the pad of {0}: what lies beside it holds nothing and does not count.',
        exactly('pad', 'length', pad.diameter),
      ),
    );
  return {
    padDiameter: pad.diameter,
    padGovernedBy: pad.governing,
    halfAngle: step(recorder, 'seal/pad-half-angle', padHalfAngle, half),
    holeArea: step(recorder, 'seal/circle-area', circleArea, { diameter: holeDiameter }, 'hole'),
    bands: step(recorder, 'seal/bands-over-pad', bandsOverPad, overPad),
    padArea: step(recorder, 'seal/circle-area', circleArea, { diameter: pad.diameter }, 'pad'),
  };
}

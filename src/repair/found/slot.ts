import { decide, heading, step } from '../../formula/index.js';
import { designHoleDiameter } from '../../laminate/index.js';
import {
  axialLossPressure,
  damageSafetyFactor,
  defectLengthAtEndOfLife,
  defectWidthAtEndOfLife,
  flowStressMultiple,
  throughWallArcStress,
  throughWallSlotPressure,
} from '../../pipe/index.js';
import { exactly, type GaugePressure, type Length, roundedDown } from '../../quantity/index.js';
import type { Slot } from '../case/case.js';
import type { AsFound } from '../design/design.js';
import { type Open, open } from '../job/stage.js';
import { need, use, type Workbook } from '../job/workbook.js';
import { forceAlong } from './external-force.js';
import type { GrowthRates } from './growth.js';
import { neededFactors } from './strength-factors.js';

type Thinned = Pick<AsFound, 'outsideDiameter' | 'wallAtEndOfLife' | 'lengthAtEndOfLife' | 'widthAtEndOfLife'>;

/**
 * The slot at the end of life, and the one that the laminate is designed for: no extent of it counts less than the least
 * hole (ISO 24817, 7.5.7).
 */
export function slotAtTheEnd(
  work: Workbook,
  found: Thinned,
  growth: GrowthRates,
): { readonly atEndOfLife: Slot; readonly toDesignFor: Slot } | undefined {
  const { slot } = work.case.defect;
  if (slot === undefined)
    return need(
      work,
      'defect.slot',
      'the repair is designed for a slot: the extents of its opening along and round the pipe',
      'the inspector at the pipe',
    );
  const atEndOfLife = slotThen(work, found, growth, slot);
  return {
    atEndOfLife,
    toDesignFor: {
      axialLength: counting(work, atEndOfLife.axialLength, 'slot along the pipe'),
      circumferentialWidth: counting(work, atEndOfLife.circumferentialWidth, 'slot round the pipe'),
    },
  };
}

/** A slot grows at its rim; where the wall round it is used up, the whole defect has opened. */
function slotThen(work: Workbook, found: Thinned, growth: GrowthRates, slot: Slot): Slot {
  const { recorder } = work;
  const leastWall = use(work, 'least wall that counts as a wall', work.rules.throughWallBelow);
  if (found.wallAtEndOfLife < leastWall) {
    decide(
      recorder,
      'the whole defect counts as the slot',
      'the wall round it is used up within the life of the repair',
    );
    return { axialLength: found.lengthAtEndOfLife, circumferentialWidth: found.widthAtEndOfLife };
  }
  const { life } = work.case.repair;
  const along = { defectLength: slot.axialLength, rate: growth.length, life };
  const round = {
    defectWidth: slot.circumferentialWidth,
    rate: growth.length,
    life,
    outsideDiameter: found.outsideDiameter,
  };
  return {
    axialLength: step(
      recorder,
      'pipe/defect-length-at-end-of-life',
      defectLengthAtEndOfLife,
      along,
      'slot along the pipe at the end of life',
    ),
    circumferentialWidth: step(
      recorder,
      'pipe/defect-width-at-end-of-life',
      defectWidthAtEndOfLife,
      round,
      'slot round the pipe at the end of life',
    ),
  };
}

function counting(work: Workbook, holeDiameter: Length, purpose: string): Length {
  const leastDiameter = use(work, 'least hole diameter to design for', work.rules.hole.leastDiameter);
  return step(
    work.recorder,
    'laminate/design-hole-diameter',
    designHoleDiameter,
    { holeDiameter, leastDiameter },
    purpose,
  );
}

/**
 * The laminate bridges a slot; it is not designed to hold a pipe that tears on at it. So the metal beside it has to stand
 * the design pressure by itself, with the whole thinned length and width counted as cut.
 */
export function checkMetalBesideSlot(work: Workbook, found: Thinned): 'checked' | Open {
  const { recorder, case: repairCase } = work;
  heading(recorder, 'Metal beside the slot');
  const factors = neededFactors(
    work,
    'the metal beside the slot has to hold the design pressure by itself, and how much of its strength it may use rests on the design factor of the line or a safety factor',
  );
  if (factors === undefined) return open;
  const { designFactor = 1, safetyFactor = 1 } = factors;
  const factor = step(recorder, 'pipe/damage-safety-factor', damageSafetyFactor, { designFactor, safetyFactor });
  const { wallThickness, material } = repairCase.pipe;
  const flowStress = step(recorder, 'pipe/flow-stress-multiple', flowStressMultiple, {
    yieldStrength: material.yieldStrength,
  });
  const round = step(recorder, 'pipe/through-wall-slot-pressure', throughWallSlotPressure, {
    outsideDiameter: found.outsideDiameter,
    wallThickness,
    flowStress,
    defectLength: found.lengthAtEndOfLife,
    safetyFactor: factor,
  });
  refuseBelowDesign(work, round, 'at the ends of the slot the pipe would tear on along itself at the design pressure');
  const cut = { outsideDiameter: found.outsideDiameter, cutWidth: found.widthAtEndOfLife, flowStress };
  const failureStress = step(recorder, 'pipe/through-wall-arc-stress', throughWallArcStress, cut);
  const along =
    failureStress === 0
      ? (0 as GaugePressure)
      : step(recorder, 'pipe/axial-loss-pressure', axialLossPressure, {
          failureStress,
          safetyFactor: factor,
          outsideDiameter: found.outsideDiameter,
          wallThickness,
          axialForce: forceAlong(
            work,
            found.outsideDiameter,
            0 as GaugePressure,
            'stated force past the slot, a push as a pull',
          ),
        });
  refuseBelowDesign(work, along, 'past the slot the pipe would part under its end load and the stated force');
  return 'checked';
}

function refuseBelowDesign(work: Workbook, pressure: GaugePressure, what: string): void {
  const { designPressure } = work.case.service;
  if (pressure >= designPressure) return;
  work.reasons.push({
    text: `${what}: a laminate over a slot bridges it and holds no pipe together; cut the piece out, or have it clamped`,
    found: exactly('design pressure', 'gauge pressure', designPressure),
    limit: roundedDown('pressure that the metal beside the slot stands', 'gauge pressure', pressure),
  });
}

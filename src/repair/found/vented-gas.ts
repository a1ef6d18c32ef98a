import { step } from '../../formula/index.js';
import { line, roundedDown } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { pipeUnderBand } from '../../seal/index.js';
import type { AsFound } from '../design/design.js';
import { type Workbook, warnCrew } from '../job/workbook.js';
import { pipeModulus } from './pipe-modulus.js';

/**
 * Gas creeps under the wrap until it is at the pressure of the line. When the line is let down faster than it escapes, that
 * pressure stands outside the thin wall, which is then a ring under outside pressure.
 */
export function checkVentedGas(
  work: Workbook,
  { outsideDiameter, wallAtEndOfLife: wallThickness }: Pick<AsFound, 'outsideDiameter' | 'wallAtEndOfLife'>,
): void {
  const { service, pipe } = work.case;
  if (service.phase === 'liquid' || wallThickness === 0) return;
  const ring = step(work.recorder, 'seal/pipe-under-band', pipeUnderBand, {
    outsideDiameter,
    wallThickness,
    modulus: pipeModulus(work),
    poissonRatio: practice.poissonRatioOfSteel.value,
    yieldStrength: pipe.material.yieldStrength,
    factor: practice.leastSafetyFactor.value,
  });
  if (ring.pressure >= service.designPressure) return;
  warnCrew(
    work,
    'return',
    line(
      'Let the gas down slowly, now and every time: what has crept under the wrap pushes on the thin wall from outside, which bears {0}.',
      roundedDown('pressure from outside', 'gauge pressure', ring.pressure),
    ),
  );
}

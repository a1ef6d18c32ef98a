import { step } from '../../formula/index.js';
import type { Length, Mass, Time } from '../../quantity/index.js';
import { massAlongLength } from '../../resin/index.js';
import { practice } from '../../rules/index.js';
import { longestCharge } from '../../wrap/index.js';
import { trial, type Workbook } from '../job/workbook.js';

/**
 * The resin that this crew has laid with its tape or sheet before it gels; absent where no crew is stated, or where mixing
 * and soaking leave it no time: whether a charge fits is then seen when it is laid out.
 */
export function massLaidInTime(work: Workbook, mass: Mass, length: Length, allowedTime: Time): Mass | undefined {
  const { recorder, case: repairCase } = work;
  const { crew } = repairCase;
  if (crew === undefined) return undefined;
  const part = trial(work, 'tape or sheet of one batch', () =>
    step(
      recorder,
      'wrap/longest-charge',
      longestCharge,
      {
        workingTime: allowedTime,
        mixingTime: practice.mixingTime.value,
        soakTime: crew.soakTime ?? (0 as Time),
        layingSpeed: crew.layingSpeed,
        // No charge is divided between crews.
        crews: 1,
      },
      'one batch',
    ),
  ).result;
  if (part === undefined) return undefined;
  return step(recorder, 'resin/mass-along-length', massAlongLength, { mass, length, part });
}

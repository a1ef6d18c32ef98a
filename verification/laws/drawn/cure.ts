import { ratio, temperature, time } from '../../../src/quantity/index.js';
import type { CureSheet } from '../../../src/repair/index.js';
import type { Random } from '../../oracles/random.js';
import { between, often } from './draw.js';

export function cureOf(random: Random, base: CureSheet): CureSheet {
  if (base.mechanism !== 'two-part reaction' || often(random, 0.15)) {
    return {
      mechanism: 'moisture',
      rows: [
        {
          temperature: temperature.degC(10),
          humidity: ratio.percent(30),
          cureTime: time.hour(8),
          workingTime: time.minute(30),
        },
        {
          temperature: temperature.degC(25),
          humidity: ratio.percent(60),
          cureTime: time.hour(4),
          workingTime: time.minute(15),
        },
        {
          temperature: temperature.degC(40),
          humidity: ratio.percent(95),
          cureTime: time.hour(2),
          workingTime: time.minute(8),
        },
      ],
    };
  }
  const sheet = {
    ...base,
    cureTime: time.hour(between(random, 4, 48)),
    workingTime: time.minute(between(random, 15, 90)),
  };
  if (often(random, 0.7)) return sheet;
  const { activationEnergy: _, ...without } = sheet;
  return without;
}

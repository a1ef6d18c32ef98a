import { absolute, type GaugePressure, length } from '../../../src/quantity/index.js';
import type { RepairCase } from '../../../src/repair/index.js';
import type { Random } from '../../oracles/random.js';
import { between, often, oneOf } from './draw.js';

/** What has to be shown before the line goes back: hardness, and mostly a test, now and then on fittings that are too weak. */
export function acceptanceOf(random: Random, designPressure: GaugePressure): NonNullable<RepairCase['acceptance']> {
  return {
    hardnessScale: 'Shore D',
    qualifiedHardness: 80,
    pressureTest: often(random, 0.2)
      ? 'none'
      : {
          medium: often(random, 0.9) ? 'liquid' : 'gas',
          liquid: oneOf(random, ['fresh water', 'fresh water', 'other'] as const),
          length: length.m(between(random, 5, 60)),
          lowestRating: (designPressure * (often(random, 0.9) ? 2 : between(random, 1, 1.6))) as GaugePressure,
          atmosphere: absolute.bar(1.013),
        },
  };
}

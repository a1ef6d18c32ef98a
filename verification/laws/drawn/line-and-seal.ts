import { type GaugePressure, gauge, length } from '../../../src/quantity/index.js';
import type { RepairCase } from '../../../src/repair/index.js';
import { partWall, sealed } from '../../../tests/repair/example-case.js';
import type { Random } from '../../oracles/random.js';
import { between, often, oneOf } from './draw.js';

/** The line while people work on it. Most are empty or low; some stand near what their wall carries, and some above it. */

type Line = RepairCase['line'];

export function lineOf(random: Random, leaks: boolean, isSealed: boolean, designPressure: GaugePressure): Line {
  if (isSealed) {
    if (often(random, 0.5))
      return { ...sealed.line, pressure: Math.min(designPressure, gauge.bar(between(random, 0, 0.5))) } as Line;
    return underPressure(random, Math.min(designPressure, gauge.bar(between(random, 0.2, 9))) as GaugePressure);
  }
  if (leaks)
    return often(random, 0.93)
      ? partWall.line
      : underPressure(random, (designPressure * between(random, 0.1, 1)) as GaugePressure);
  if (often(random, 0.7)) return partWall.line;
  return underPressure(
    random,
    (designPressure * (often(random, 0.7) ? between(random, 0.05, 0.5) : between(random, 0.5, 1))) as GaugePressure,
  );
}

function underPressure(random: Random, pressure: GaugePressure): Line {
  return { state: 'under pressure', pressure, writtenProcedure: often(random, 0.9) ? 'WP-1' : 'none' };
}

/** What was carried lately, by a gauge and a day. */
export function recentOf(random: Random, designPressure: GaugePressure): Partial<RepairCase['service']> {
  if (often(random, 0.85)) return {};
  return {
    recentPressure: {
      pressure: (designPressure * between(random, 0.3, 1)) as GaugePressure,
      date: oneOf(random, ['2026-02-20', '2026-02-20', '2025-06-01']),
    },
  };
}

/** The seal of a leak: bands, collar and sheet of some size. */
export function sealOf(random: Random, underPump: boolean): NonNullable<RepairCase['seal']> {
  const { seal } = sealed;
  if (seal === undefined) throw new Error('the example has a seal');
  return {
    ...seal,
    siteLimit: gauge.bar(underPump ? between(random, 2, 12) : 3),
    bands: often(random, underPump ? 0.9 : 0.25) ? 'left' : 'removed before the wrap',
    pipeFactor: between(random, 1.25, 3),
    collar: often(random, 0.6) ? 'none' : length.mm(between(random, 20, 120)),
    sheet: {
      ...seal.sheet,
      across: length.mm(often(random, 0.5) ? 65 : between(random, 50, 120)),
      thickness: length.mm(underPump ? between(random, 0.6, 1.2) : 0.35),
    },
  };
}

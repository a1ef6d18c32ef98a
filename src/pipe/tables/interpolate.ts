import { refuse, type SourceTag, weakest } from '../../formula/index.js';
import type { Temperature } from '../../quantity/index.js';

/** One entry of a table over temperature. */
export interface TemperaturePoint {
  readonly temperature: Temperature;
  readonly value: number;
  readonly tag: SourceTag;
}

/**
 * The value at a temperature, on a straight line between the two entries beside it. An entry itself comes back unchanged.
 *
 * @param points by rising temperature
 * @param advice what would pass, as a sentence part that follows "must be from ... to ... K"
 * @throws CalculationError `outside-validity` outside the first and the last entry: a table is never extended
 */
export function interpolate(
  points: readonly TemperaturePoint[],
  temperature: Temperature,
  advice: string,
  source: string,
): { readonly value: number; readonly tag: SourceTag } {
  const above = points.findIndex((point) => temperature <= point.temperature);
  const [low, high] = [points[above - 1], points[above]];
  if (high !== undefined && temperature === high.temperature) return { value: high.value, tag: high.tag };
  if (low === undefined || high === undefined) {
    const [first, last] = [points[0]?.temperature, points.at(-1)?.temperature];
    refuse({
      code: Number.isFinite(temperature) ? 'outside-validity' : 'invalid-input',
      parameter: 'temperature',
      value: temperature,
      unit: 'K',
      constraint: `must be from ${first} to ${last} K${advice}`,
      source,
    });
  }
  const share = (temperature - low.temperature) / (high.temperature - low.temperature);
  return { value: low.value + (high.value - low.value) * share, tag: weakest([low.tag, high.tag]) };
}

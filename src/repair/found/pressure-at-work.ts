import type { GaugePressure } from '../../quantity/index.js';
import type { LineAtWork } from '../case/case.js';

/** Pressure in the line while people work on it: none in an empty one. */
export function pressureAtWork(line: LineAtWork): GaugePressure {
  return line.state === 'empty, dry, isolated, vented' ? (0 as GaugePressure) : line.pressure;
}

import { refuse, within } from '../../formula/index.js';

/** The scale that an indenter reads; both run from 0 to 100. */
export type HardnessScale = 'Shore D' | 'Barcol';

/** What the indenter meets: the resin alone, or fibres and resin in turn, which scatter more. */
export type IndentedMaterial = 'homogeneous' | 'reinforced';

/** Refuses too few readings and readings off the scale. */
export function checkReadings(readings: readonly number[], least: number): void {
  if (!Array.isArray(readings) || readings.length < least) {
    refuse({
      code: 'invalid-input',
      parameter: 'readings',
      value: Array.isArray(readings) ? `${readings.length} readings` : readings,
      unit: '',
      constraint: `must hold at least ${least} readings`,
    });
  }
  readings.forEach((reading, index) => {
    within(reading, 0, 100, `readings[${index}]`, '');
  });
}

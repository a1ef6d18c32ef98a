import { positive, refuse } from '../../formula/index.js';
import type { Stress } from '../../quantity/index.js';
import { allFinite } from './ply.js';

/** Strengths of a ply, all above 0. */
export interface PlyStrengths {
  readonly alongTension: Stress;
  readonly alongCompression: Stress;
  readonly acrossTension: Stress;
  readonly acrossCompression: Stress;
  readonly shearStrength: Stress;
}

/** Stresses of a ply in its own axes, of either sign. */
export interface PlyStress {
  readonly alongStress: Stress;
  readonly acrossStress: Stress;
  readonly shearStress: Stress;
}

export function checkStrengths(input: PlyStrengths, prefix = ''): void {
  positive(input.alongTension, `${prefix}alongTension`, 'Pa');
  positive(input.alongCompression, `${prefix}alongCompression`, 'Pa');
  positive(input.acrossTension, `${prefix}acrossTension`, 'Pa');
  positive(input.acrossCompression, `${prefix}acrossCompression`, 'Pa');
  positive(input.shearStrength, `${prefix}shearStrength`, 'Pa');
}

/** A ply without stress never fails, and has no ratio. */
export function checkStress({ alongStress, acrossStress, shearStress }: PlyStress): void {
  allFinite([alongStress], 'alongStress', 'Pa');
  allFinite([acrossStress], 'acrossStress', 'Pa');
  allFinite([shearStress], 'shearStress', 'Pa');
  if (alongStress === 0 && acrossStress === 0 && shearStress === 0)
    refuse({
      code: 'invalid-input',
      parameter: 'alongStress',
      value: 0,
      unit: 'Pa',
      constraint: 'must not be 0 with both others: a ply without stress has no strength ratio',
    });
}

/** Share of its limit that a stress or strain takes, by its sign. */
export function shareOf(value: number, tension: number, compression: number): number {
  return value >= 0 ? value / tension : -value / compression;
}

import { oneOf, within } from '../../formula/index.js';

/** How the edge of a hole holds the plate over it; nobody can be sure that it clamps. */
export type PlateSupport = 'clamped' | 'simply supported';

export const plateSupports = ['clamped', 'simply supported'] as const satisfies readonly PlateSupport[];

/**
 * Highest bending stress of a circular plate under pressure, in p (a/t)^2: at a clamped edge, or in the middle of a free one.
 *
 * @param support how its edge is held
 * @param poissonRatio of the plate, 0 to 0.5
 * @returns factor on p (a/t)^2, with a the radius of the plate
 */
export function plateStressFactor(support: PlateSupport, poissonRatio: number): number {
  oneOf(support, plateSupports, 'support');
  within(poissonRatio, 0, 0.5, 'poissonRatio', '');
  return support === 'clamped' ? 0.75 : (3 * (3 + poissonRatio)) / 8;
}

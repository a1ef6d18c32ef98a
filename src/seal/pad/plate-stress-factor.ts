import { oneOf, within } from '../../formula/index.js';

/** How the edge of a hole holds the plate over it; nobody can be sure that it clamps. */
export type PlateSupport = 'clamped' | 'simply supported';

export const plateSupports = ['clamped', 'simply supported'] as const satisfies readonly PlateSupport[];

/** Highest bending stress of a circular plate under pressure, in p (a/t)^2: at a clamped edge, or in the middle of a free one. */
export function plateStressFactor(support: PlateSupport, poissonRatio: number): number {
  oneOf(support, plateSupports, 'support');
  within(poissonRatio, 0, 0.5, 'poissonRatio', '');
  return support === 'clamped' ? 0.75 : (3 * (3 + poissonRatio)) / 8;
}

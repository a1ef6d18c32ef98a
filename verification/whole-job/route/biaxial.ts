import { rootOfIncreasing } from './root.js';

/** Pipe and laminate that share load in both directions. */
export interface Layers {
  readonly pipeModulus: number;
  readonly pipePoisson: number;
  readonly pipeWall: number;
  readonly hoopModulus: number;
  readonly axialModulus: number;
  readonly poisson: number;
  readonly allowableStress: number;
  readonly hoopStrain: number;
  readonly axialStrain: number;
  /** Circle of the laminate over that of the pipe: the force along the pipe is shared by both circles. */
  readonly circles: number;
}

/** How far the worst of stresses and strains lies under its limit: 1 at the limit, less below it. */
export function usage(layers: Layers, thickness: number, hoopLoad: number, axialLoad: number): number {
  const { pipeModulus: Es, pipePoisson: nu, pipeWall: ts, hoopModulus: Ec, axialModulus: Ea, poisson } = layers;
  const steel = Es / (1 - nu * nu);
  const laminate = 1 / (1 - (poisson * poisson * Ea) / Ec);
  const a = steel * ts + laminate * Ec * thickness;
  const b = steel * nu * ts + laminate * poisson * Ea * thickness;
  const c = steel * nu * ts + laminate * poisson * Ea * thickness * layers.circles;
  const d = steel * ts + laminate * Ea * thickness * layers.circles;
  const determinant = a * d - b * c;
  const hoop = (hoopLoad * d - axialLoad * b) / determinant;
  const axial = (axialLoad * a - hoopLoad * c) / determinant;
  return Math.max(
    (steel * Math.abs(hoop + nu * axial)) / layers.allowableStress,
    (steel * Math.abs(axial + nu * hoop)) / layers.allowableStress,
    // A laminate that the other direction draws together is not strained.
    hoop / layers.hoopStrain,
    axial / layers.axialStrain,
  );
}

/** The smallest thickness that keeps stresses and strains. */
export function thicknessBiaxial(layers: Layers, hoopLoad: number, axialLoad: number): number {
  if (usage(layers, 0, hoopLoad, axialLoad) <= 1) return 0;
  return rootOfIncreasing((t) => 1 - usage(layers, t, hoopLoad, axialLoad), 1e-3) ?? Number.NaN;
}

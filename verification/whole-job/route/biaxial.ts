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
}

/** How far the worst of stresses and strains lies under its limit: 1 at the limit, less below it. */
export function usage(layers: Layers, thickness: number, hoopLoad: number, axialLoad: number): number {
  const { pipeModulus: Es, pipePoisson: nu, pipeWall: ts, hoopModulus: Ec, axialModulus: Ea, poisson } = layers;
  const steel = Es / (1 - nu * nu);
  const laminate = 1 / (1 - (poisson * poisson * Ea) / Ec);
  const a = steel * ts + laminate * Ec * thickness;
  const b = steel * nu * ts + laminate * poisson * Ea * thickness;
  const c = steel * ts + laminate * Ea * thickness;
  const determinant = a * c - b * b;
  const hoop = (hoopLoad * c - axialLoad * b) / determinant;
  const axial = (axialLoad * a - hoopLoad * b) / determinant;
  return Math.max(
    (steel * Math.abs(hoop + nu * axial)) / layers.allowableStress,
    (steel * Math.abs(axial + nu * hoop)) / layers.allowableStress,
    Math.abs(hoop) / layers.hoopStrain,
    Math.abs(axial) / layers.axialStrain,
  );
}

/** The smallest thickness that keeps stresses and strains. */
export function thicknessBiaxial(layers: Layers, hoopLoad: number, axialLoad: number): number {
  if (usage(layers, 0, hoopLoad, axialLoad) <= 1) return 0;
  return rootOfIncreasing((t) => 1 - usage(layers, t, hoopLoad, axialLoad), 1e-3) ?? Number.NaN;
}

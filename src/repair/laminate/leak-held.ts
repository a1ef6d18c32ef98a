import type { EnergyReleaseRate, Length, Modulus } from '../../quantity/index.js';
import type { Slot } from '../case/case.js';
import type { Footprint } from '../design/design.js';

/** Bond, moduli and factor behind the resistance over the hole, or over the seal on it. */
export interface LeakResistance {
  /** As a plate over a round hole: of the hole or of the unbonded circle. */
  readonly asPlate: boolean;
  /** As strip or ring over a bare slot. */
  readonly overSlot: Slot | undefined;
  /** As a ring that is bonded nowhere: over a seal only, since a bare hole goes by the equation of the rule set. */
  readonly asRing: boolean;
  readonly under: Footprint['under'];
  readonly outsideDiameter: Length;
  readonly holeDiameter: Length;
  readonly unbondedLength: Length;
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
  readonly shearModulus: Modulus;
  readonly energyReleaseRate: EnergyReleaseRate;
  /** What of it counts in the equation of the plate. */
  readonly energyOfPlate: EnergyReleaseRate;
  /** Of the rim of the plate, for a laminate that is soft through its thickness. */
  readonly edgeFactor: number;
  readonly serviceFactor: number;
}

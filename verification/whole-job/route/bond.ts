/** What the bond over it is made of. */
export interface Bond {
  readonly energy: number;
  /** What of it the plate over a seal may release by the mean of its rim, since the worst place of the rim releases more. */
  readonly energyOfPlate: number;
  readonly factor: number;
  readonly hoopModulus: number;
  readonly axialModulus: number;
  readonly poisson: number;
  readonly shear: number;
}

import type { Force, GaugePressure, Length, MassFlow, Moment, Speed, Stress, VolumeFlow } from '../quantity/index.js';
import type { SealLimit } from '../seal/index.js';

/** How the leak is held before the wrap. */
export interface SealDesign {
  readonly padDiameter: Length;
  readonly padGovernedBy: 'area' | 'diameter' | 'margin';
  /** On the wetted pad: the safe reading. */
  readonly forceOnPad: Force;
  readonly forceOnHole: Force;
  /** Tension at the fastener that holds the pad, and the torque whose low end of scatter still gives it. */
  readonly fastenerTension?: Force;
  readonly torque?: Moment;
  /** At the high end of the scatter. */
  readonly strapStress?: Stress;
  readonly contactPressure?: GaugePressure;
  /** Whether the sheet must be rolled to the pipe's radius first, or it springs. */
  readonly forming: 'elastic' | 'pre-roll';
  readonly bandLength: Length;
  /** The highest line pressure at which the seal may be attempted, and what sets it. */
  readonly highestPressure: GaugePressure;
  readonly limitedBy: SealLimit;
  /** Force along the pipe that the seal does not carry. */
  readonly endLoadNotCarried: Force;
  readonly jet?: JetDesign;
}

/** What leaves through the open hole. */
export interface JetDesign {
  readonly reaction: Force;
  readonly speed?: Speed;
  readonly volumeFlow?: VolumeFlow;
  readonly massFlow?: MassFlow;
  readonly regime?: string;
}

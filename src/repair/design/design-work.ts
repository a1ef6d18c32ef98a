import type {
  Amount,
  Energy,
  Force,
  GaugePressure,
  Length,
  Line,
  Mass,
  MassFlow,
  Moment,
  Ratio,
  Speed,
  Stress,
  Temperature,
  TemperatureDifference,
  Time,
  Volume,
  VolumeFlow,
} from '../../quantity/index.js';
import type { SealLimit } from '../../seal/index.js';
import type { GateDecision } from '../../site/index.js';
import type { LineAtWork, PreparationGrade } from '../case/case.js';
import type { MissingInput } from '../job/missing-input.js';
import type { Duration } from '../timeline/duration.js';
import type { LineLimit } from './criteria.js';

/** The line while people work on it, and the highest pressure at which they may. */
export interface LineDesign {
  readonly state: LineAtWork['state'];
  /** 0 where the line is empty. */
  readonly pressure: GaugePressure;
  /** Absent where the line is empty, and nothing rests on its wall; and where the seal that has to hold it is not worked out. */
  readonly highestPressure?: GaugePressure;
  readonly limitedBy?: LineLimit;
}

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

/** One check of the site: what it says, by which number, and what would change it. */
export interface SiteReason {
  readonly check: string;
  readonly decision: GateDecision;
  readonly found?: Amount;
  readonly limit?: Amount;
  readonly because: Line;
  readonly change: Line;
}

/** Whether work may start at the pipe, as read and forecast. It never changes the verdict: the crew reads again. */
export interface SiteDesign {
  /** The harder one of weather and steel. */
  readonly decision: GateDecision;
  readonly weather: GateDecision;
  readonly steel: GateDecision;
  readonly reasons: readonly SiteReason[];
  readonly dewPoint?: Temperature;
  /** With the errors of the instruments against the crew. */
  readonly highestDewPoint?: Temperature;
  readonly margin?: TemperatureDifference;
  /** What the thermometer on the steel has to show. */
  readonly steelNeeded?: Temperature;
  readonly humidityAtSteel?: Ratio;
  readonly isFrost?: boolean;
  /** How long the climate has to hold: from the gate to the end of the last cure. */
  readonly holdTime: Duration;
  /** The earliest hour, from the start of the job as the case gives it, from which every check of the weather holds. */
  readonly earliestStart?: Time;
  /** What the steel has to show, and where that comes from. */
  readonly requiredGrade: PreparationGrade;
  readonly requiredProfile: Length;
  readonly surfaceFrom: 'qualification' | 'class' | 'leak';
}

/** One pass of the tape, or one band of a layer of sheet: positions are from the centre of the defect, positive in the direction of the first pass. */
export interface PassDesign {
  /** The layer, where sheet is laid layer by layer in bands. */
  readonly pass: number;
  readonly direction: 'forward' | 'back';
  readonly from: Length;
  readonly to: Length;
  readonly tapeLength: Length;
  /** Only of a band of a layer: where it begins from the start of the wrap, and how wide it is cut. */
  readonly begins?: Length;
  readonly width?: Length;
}

/** One roll, or one band of sheet: where it ends, and how long it takes. */
export interface RollDesign {
  readonly roll: number;
  readonly length: Length;
  /** The pass, or the band, in which it ends, and how far along the pipe. */
  readonly endsInPass: number;
  readonly endsAt: Length;
  readonly time?: Time;
}

/** How the wrap is laid: from where to where, roll by roll, and whether that fits the working time. */
export interface RollsDesign {
  /** Ends of the wrap from the centre of the defect. */
  readonly start: Length;
  readonly end: Length;
  /** From the start of the wrap to the edge of the defect at the end of life. */
  readonly beforeDefect: Length;
  /** How much farther in each pass starts and ends than the one before it. */
  readonly stagger: Length;
  readonly passes: readonly PassDesign[];
  readonly rolls: readonly RollDesign[];
  /** What has to be laid within one working time. */
  readonly charge: 'roll' | 'band' | 'batch';
  readonly chargeLength: Length;
  readonly workingTime?: Time;
  /** From the first contact of resin and hardener to the last turn: a share of the working time. */
  readonly allowedTime?: Time;
  readonly chargeTime?: Time;
  /** Absent where the crew is not stated. */
  readonly fits?: boolean;
  readonly wrapTime?: Time;
  readonly remedies?: RollRemedies;
}

/** What makes a charge fit its working time; what is absent cannot. */
export interface RollRemedies {
  readonly longestCharge?: Length;
  /** Steel and air that read this or less this give the time. */
  readonly coolerThan?: Temperature;
  /** The first hour of the forecast that is that cool. */
  readonly coolerHour?: Time;
}

/** What the inspector may find, in words with their numbers. */
export interface InspectionLimit {
  readonly feature: string;
  readonly where: string;
  readonly limit: Line;
  readonly beyond: string;
  readonly remedy: string;
  readonly clause: string;
}

/** The hardness that lets the repair be accepted. */
export interface HardnessDesign {
  readonly scale: 'Shore D' | 'Barcol';
  readonly qualified: number;
  readonly leastMean: number;
  readonly leastSingle: number;
  /** Absent where the table of the scale does not reach down to the least mean. */
  readonly readings?: number;
}

/** The pressure test of the finished repair. */
export interface PressureTestDesign {
  readonly medium: 'liquid' | 'gas' | 'none' | 'not stated';
  readonly pressure: GaugePressure;
  /** What the laid laminate resists on the day of the test: a test above it is not made. */
  readonly resistance: GaugePressure;
  readonly hold: Time;
  /** Volume of the closed line: the liquid that fills it. */
  readonly volume?: Volume;
  /** What fills the line; absent where it is no test with liquid. */
  readonly liquid?: 'fresh water' | 'other';
  readonly waterToAdd?: Volume;
  readonly testTemperature?: Temperature;
  /** Of the blocked line at the test pressure, for one kelvin of warming. */
  readonly pressurePerKelvin?: GaugePressure;
  readonly storedEnergy?: Energy;
  readonly tntEquivalent?: Mass;
  /** People stay at least this far away. */
  readonly distance?: Length;
  readonly instead?: string;
}

/** What the repair must show before the line goes back to service. */
export interface AcceptanceDesign {
  readonly hardness?: HardnessDesign;
  /** What nobody stated and nothing is accepted without. */
  readonly missing: readonly MissingInput[];
  readonly leastThickness: Length;
  readonly leastOverlap: Length;
  readonly highestWrinkle: Length;
  /** The laminate is too thick for the tap test alone. */
  readonly needsSecondMethod: boolean;
  readonly inspection: readonly InspectionLimit[];
  readonly pressureTest: PressureTestDesign;
}

import type {
  Amount,
  Area,
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
import type { CureLaw } from '../timeline/cure-law.js';
import type { Duration } from '../timeline/duration.js';
import type { LineLimit } from './criteria.js';

/** The line while people work on it, and the highest pressure at which they may. */
export interface LineDesign {
  /** How the line stands while people work on it, as the case states it. */
  readonly state: LineAtWork['state'];
  /** 0 where the line is empty. */
  readonly pressure: GaugePressure;
  /** Absent where the line is empty, and nothing rests on its wall; and where the seal that has to hold it is not worked out. */
  readonly highestPressure?: GaugePressure;
  /** What sets the highest pressure; absent where that is. */
  readonly limitedBy?: LineLimit;
}

/** How the leak is held before the wrap. */
export interface SealDesign {
  /** Diameter of the pad of putty over the opening. */
  readonly padDiameter: Length;
  /** What makes the pad so large: the multiple of the opening, by area or by diameter, or the margin beside it. */
  readonly padGovernedBy: 'area' | 'diameter' | 'margin';
  /** On the wetted pad: the safe reading. */
  readonly forceOnPad: Force;
  /** On the area of the opening alone, where nothing has crept under the pad. */
  readonly forceOnHole: Force;
  /** Tension at the fastener that holds the pad; absent where nothing pushes on it. */
  readonly fastenerTension?: Force;
  /** Torque whose low end of scatter still gives that tension. */
  readonly torque?: Moment;
  /** At the high end of the scatter. */
  readonly strapStress?: Stress;
  /** Of the band on the pipe, at the high end of the scatter. */
  readonly contactPressure?: GaugePressure;
  /** Whether the sheet must be rolled to the pipe's radius first, or it springs. */
  readonly forming: 'elastic' | 'pre-roll';
  /** Of one band: round pipe and sheet, with the lap of its ends. */
  readonly bandLength: Length;
  /** The highest line pressure at which the seal may be attempted, and what sets it. */
  readonly highestPressure: GaugePressure;
  /** What sets that pressure. */
  readonly limitedBy: SealLimit;
  /** Force along the pipe that the seal does not carry. */
  readonly endLoadNotCarried: Force;
  /** Absent where the line is empty or the case does not describe the fluid. */
  readonly jet?: JetDesign;
}

/** What leaves through the open hole. */
export interface JetDesign {
  /** Force of the jet back on the pipe, and on a hand or a pad held into it. */
  readonly reaction: Force;
  /** Of a liquid where it leaves the hole. */
  readonly speed?: Speed;
  /** Of a liquid. */
  readonly volumeFlow?: VolumeFlow;
  /** Of a gas. */
  readonly massFlow?: MassFlow;
  /** Of a gas: `choked` or `unchoked`. */
  readonly regime?: string;
}

/** One check of the site: what it says, by which number, and what would change it. */
export interface SiteReason {
  /** What is looked at. */
  readonly check: string;
  /** What the check says by itself. */
  readonly decision: GateDecision;
  /** What was read, foreseen or recorded, where it is a number. */
  readonly found?: Amount;
  /** What it is held to, where that is a number. */
  readonly limit?: Amount;
  /** Why it says so. */
  readonly because: Line;
  /** What would turn it to go; for a check that passes, when to look again. */
  readonly change: Line;
}

/** Whether work may start at the pipe, as read and forecast. It never changes the verdict: the crew reads again. */
export interface SiteDesign {
  /** The harder one of weather and steel. */
  readonly decision: GateDecision;
  /** By air and steel as read and forecast. */
  readonly weather: GateDecision;
  /** By grade, profile and salts of the prepared steel. */
  readonly steel: GateDecision;
  /** Every check of both. */
  readonly reasons: readonly SiteReason[];
  /** Of the air at the hour of the gate; absent where the readings cannot be judged. */
  readonly dewPoint?: Temperature;
  /** With the errors of the instruments against the crew. */
  readonly highestDewPoint?: Temperature;
  /** How far the steel is above that point, its own error taken off; at or below 0 it may be wet. */
  readonly margin?: TemperatureDifference;
  /** What the thermometer on the steel has to show. */
  readonly steelNeeded?: Temperature;
  /** Relative humidity in the film of air on the steel; above 1 the steel is wet. */
  readonly humidityAtSteel?: Ratio;
  /** Whether frost would form, not dew. */
  readonly isFrost?: boolean;
  /** How long the climate has to hold: from the gate to the end of the last cure. */
  readonly holdTime: Duration;
  /** The earliest hour, from the start of the job as the case gives it, from which every check of the weather holds. */
  readonly earliestStart?: Time;
  /** What the steel has to show, and where that comes from. */
  readonly requiredGrade: PreparationGrade;
  /** Roughness that the steel has to have, at least. */
  readonly requiredProfile: Length;
  /** What asks for grade and profile: the qualification; where none is stated the class, or in class 1 the leak. */
  readonly surfaceFrom: 'qualification' | 'class' | 'leak';
}

/** What is mixed for one use, and in which batches. */
export interface MixDesign {
  /** Name of what is mixed. */
  readonly material: string;
  /** Volume that filler builds up; only of a filler. */
  readonly volume?: Volume;
  /** Area of tape or sheet that resin wets out; only of the resin of the laminate. */
  readonly area?: Area;
  /** All of it, with waste. */
  readonly mass: Mass;
  /** Batches of equal mass. */
  readonly batches: number;
  /** Mass of one batch, both parts together. */
  readonly batchMass: Mass;
  /** Weighed into each batch. */
  readonly base: Mass;
  /** Mass of the hardener in each batch. */
  readonly hardener: Mass;
  /** What keeps a batch from being larger; `job` where one batch is all of it. */
  readonly limitedBy: 'job' | 'kit' | 'working time';
  /** Kits to open. */
  readonly kits: number;
}

/** What is mixed on site, by its use. */
export interface MixDesigns {
  /** Built up under the wrap; `none` where the case has no filler. */
  readonly filler: MixDesign | 'none';
  /** Wets out dry tape or sheet; `none` where the wrap brings its resin with it. */
  readonly laminateResin: MixDesign | 'none';
}

/** What cures on the pipe, by its use: two materials may bear one name. */
export interface CureDesigns {
  /** Seals the leak; `none` where no seal is laid. */
  readonly putty: CureDesign | 'none';
  /** Built up under the wrap; `none` where the case has no filler. */
  readonly filler: CureDesign | 'none';
  /** The resin of the laminate itself. */
  readonly laminate: CureDesign;
}

/** How long one material can be worked, and how it waits. */
export interface CureDesign {
  /** Name of what cures. */
  readonly material: string;
  /** Shortest working time of the cases considered. */
  readonly workingTime: Time;
  /** How its wait follows from the hour at which it is laid: the wait itself stands in the timeline. */
  readonly law: CureLaw;
}

/** One pass of the tape, or one band of a layer of sheet: positions are from the centre of the defect, positive in the direction of the first pass. */
export interface PassDesign {
  /** The layer, where sheet is laid layer by layer in bands. */
  readonly pass: number;
  /** Which way it is laid: `forward` from the start of the wrap to its end. */
  readonly direction: 'forward' | 'back';
  /** Edge at which it begins. */
  readonly from: Length;
  /** Edge at which it ends. */
  readonly to: Length;
  /** Tape, or sheet, that lies in it. */
  readonly tapeLength: Length;
  /** Only of a band of a layer: where it begins, from the start of the wrap. */
  readonly begins?: Length;
  /** Only of a band of a layer: how wide it is cut. */
  readonly width?: Length;
}

/** One roll, or one band of sheet: where it ends, and how long it takes. */
export interface RollDesign {
  /** Counted from 1 in the order of laying. */
  readonly roll: number;
  /** Tape or sheet of it that lies on the pipe, or of the band. */
  readonly length: Length;
  /** The pass, or the band, in which it ends, and how far along the pipe. */
  readonly endsInPass: number;
  /** Edge at which it ends, from the centre of the defect. */
  readonly endsAt: Length;
  /** Time that the crew takes for it, with soaking; absent where the crew is not stated. */
  readonly time?: Time;
}

/** How the wrap is laid: from where to where, roll by roll, and whether that fits the working time. */
export interface RollsDesign {
  /** Ends of the wrap from the centre of the defect. */
  readonly start: Length;
  /** As far beyond the centre as the start is before it. */
  readonly end: Length;
  /** From the start of the wrap to the edge of the defect at the end of life. */
  readonly beforeDefect: Length;
  /** How much farther in each pass starts and ends than the one before it. */
  readonly stagger: Length;
  /** Each pass of tape, or each band of each layer of sheet, in the order of laying. */
  readonly passes: readonly PassDesign[];
  /** Each roll, or band of sheet, in the order of laying; empty where there are too many rolls to list. */
  readonly rolls: readonly RollDesign[];
  /** What has to be laid within one working time. */
  readonly charge: 'roll' | 'band' | 'batch';
  /** Length of tape or sheet in the longest of them. */
  readonly chargeLength: Length;
  /** Of the resin of the laminate, at the warmest that it may meet. */
  readonly workingTime?: Time;
  /** From the first contact of resin and hardener to the last turn: a share of the working time. */
  readonly allowedTime?: Time;
  /** Time that the crew takes for one charge; absent where the crew is not stated. */
  readonly chargeTime?: Time;
  /** Absent where the crew is not stated. */
  readonly fits?: boolean;
  /** Time that the crew takes for the whole wrap; absent where the crew is not stated. */
  readonly wrapTime?: Time;
  /** Only where a charge does not fit. */
  readonly remedies?: RollRemedies;
}

/** What makes a charge fit its working time; what is absent cannot. */
export interface RollRemedies {
  /** Length of tape or sheet that one charge may have. */
  readonly longestCharge?: Length;
  /** Steel and air that read this or less this give the time. */
  readonly coolerThan?: Temperature;
  /** The first hour of the forecast that is that cool. */
  readonly coolerHour?: Time;
}

/** What the inspector may find, in words with their numbers. */
export interface InspectionLimit {
  /** What is looked for. */
  readonly feature: string;
  /** Where it is looked for. */
  readonly where: string;
  /** What passes. */
  readonly limit: Line;
  /** What becomes of a repair that breaks the limit. */
  readonly beyond: string;
  /** What is to be done then. */
  readonly remedy: string;
  /** Where the limit comes from. */
  readonly clause: string;
}

/** The hardness that lets the repair be accepted. */
export interface HardnessDesign {
  /** Scale that the maker qualified on and the inspector reads. */
  readonly scale: 'Shore D' | 'Barcol';
  /** Hardness that the qualification reached. */
  readonly qualified: number;
  /** The lowest mean of the readings that passes. */
  readonly leastMean: number;
  /** The lowest single reading that passes. */
  readonly leastSingle: number;
  /** Absent where the table of the scale does not reach down to the least mean. */
  readonly readings?: number;
}

/** The pressure test of the finished repair. */
export interface PressureTestDesign {
  /** What the test is made with; `none` where the case agrees on no test. */
  readonly medium: 'liquid' | 'gas' | 'none' | 'not stated';
  /** Level that the rule set asks for, whether a test is made or not. */
  readonly pressure: GaugePressure;
  /** What the laid laminate resists on the day of the test: a test above it is not made. */
  readonly resistance: GaugePressure;
  /** How long the pressure is held, by the rule set. */
  readonly hold: Time;
  /** Volume of the closed line: the liquid that fills it. */
  readonly volume?: Volume;
  /** What fills the line; absent where it is no test with liquid. */
  readonly liquid?: 'fresh water' | 'other';
  /** Fresh water to pump into a full line to reach the pressure; absent where that is not known. */
  readonly waterToAdd?: Volume;
  /** Of the water, taken as that of the pipe; absent where it is not fresh water. */
  readonly testTemperature?: Temperature;
  /** Of the blocked line at the test pressure, for one kelvin of warming. */
  readonly pressurePerKelvin?: GaugePressure;
  /** What the medium, and with liquid the stretched pipe, would give off; absent where no test is made. */
  readonly storedEnergy?: Energy;
  /** Mass of explosive with the stored energy of a gas; absent with liquid. */
  readonly tntEquivalent?: Mass;
  /** People stay at least this far away. */
  readonly distance?: Length;
  /** What is done where the case agrees on no test; absent where one is made. */
  readonly instead?: string;
}

/** What the repair must show before the line goes back to service. */
export interface AcceptanceDesign {
  /** Absent where the case does not state what was qualified. */
  readonly hardness?: HardnessDesign;
  /** What nobody stated and nothing is accepted without. */
  readonly missing: readonly MissingInput[];
  /** What the finished laminate has to measure at least. */
  readonly leastThickness: Length;
  /** What it has to measure at least on each side of the defect, the taper not counted. */
  readonly leastOverlap: Length;
  /** The highest step in thickness that a wrinkle may leave. */
  readonly highestWrinkle: Length;
  /** The laminate is too thick for the tap test alone. */
  readonly needsSecondMethod: boolean;
  /** Limits of what may be found before, on and in the laminate. */
  readonly inspection: readonly InspectionLimit[];
  /** How the finished repair is tested under pressure. */
  readonly pressureTest: PressureTestDesign;
}

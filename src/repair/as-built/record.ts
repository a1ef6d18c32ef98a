import type { InspectionRecord, PressureTestRecord } from '../../acceptance/index.js';
import type { TemperatureStep } from '../../cure/index.js';
import type {
  Amount,
  ArealWeight,
  GaugePressure,
  Length,
  Line,
  Mass,
  Ratio,
  Temperature,
  Time,
} from '../../quantity/index.js';
import type { PreparationGrade, Slot } from '../case/case.js';
import type { StepId } from '../timeline/timeline.js';

/** A batch as it was mixed. */
export interface BatchRecord {
  /** From the pack: without it nobody can say later what lies on the pipe. */
  readonly number: string;
  /** Last day on which the pack may be used, as printed on it: `2026-06-30`. */
  readonly useBefore?: string | undefined;
  /** Day on which it was mixed. */
  readonly mixedOn?: string | undefined;
  /** What it was mixed for. */
  readonly use: 'filler' | 'laminate resin';
  /** Mass of base in it, as weighed. */
  readonly base: Mass;
  /** Mass of hardener in it, as weighed. */
  readonly hardener: Mass;
  /** From the start of mixing until the last of it lay on the pipe. */
  readonly usedWithin: Time;
  /** Of laminate resin: hardness of the batch on its witness plate, on the scale of the design. */
  readonly witnessHardness?: number | undefined;
}

/** The line while people worked and resin was soft. */
export interface LineRecord {
  /** Highest reading of the gauge, from the first touch to the cured laminate; 0 of a line that stayed empty. */
  readonly highestPressure: GaugePressure;
}

/** Air and steel as they were read at the gate. */
export interface ClimateRecord {
  /** Read on the steel. */
  readonly steelTemperature: Temperature;
  /** Read in the air at the pipe. */
  readonly airTemperature: Temperature;
  /** Read in the air at the pipe. */
  readonly relativeHumidity: Ratio;
}

/** The steel as it was just before the first resin. */
export interface SteelRecord {
  /** Grade of cleanness that was reached. */
  readonly grade: PreparationGrade;
  /** Roughness as measured. */
  readonly profile: Length;
  /** Soluble salts, every reading. */
  readonly salts?: readonly ArealWeight[] | undefined;
  /** Whether no oil or grease was found on it. */
  readonly isFreeOfOil: boolean;
  /** Whether it had begun to rust again. */
  readonly hasRustBloom: boolean;
  /** From preparation to the first resin. */
  readonly sincePreparation: Time;
}

/** What the prepared steel showed: preparation uncovers what corrosion hid. */
export interface SurveyRecord {
  /** The least wall measured anywhere in the defect; at a hole in the metal round it. */
  readonly leastWall: Length;
  /** Extent of the loss along the pipe, its thinned rim with it and without the neighbouring losses of the case. */
  readonly axialLength?: Length | undefined;
  /** Extent of the loss round the pipe, measured like its length. */
  readonly circumferentialWidth?: Length | undefined;
  /** Diameter of the circle that encloses the hole. */
  readonly hole?: Length | undefined;
  /** Extents of the opening of a slot. */
  readonly slot?: Slot | undefined;
}

/** The seal of a leak, as it was seen. */
export interface SealRecord {
  /** Whether the steel stayed dry until the laminate was cured. */
  readonly heldDry?: boolean | undefined;
  /** Whether the putty took no print before work went on over it. */
  readonly puttyWasFirm?: boolean | undefined;
  /** Whether the bands were taken off before the wrap; of bands that stay nobody is asked. */
  readonly bandsWereRemoved?: boolean | undefined;
}

/** A hold point of the job with the name of who signed it. */
export interface SignatureRecord {
  /** The step of the job that was signed. */
  readonly holdPoint: StepId;
  /** Who signed it. */
  readonly by: string;
}

/** The test as it was made. */
export interface TestRecord extends Pick<PressureTestRecord, 'lowestPressure' | 'hold' | 'leak' | 'fall'> {
  /** Highest pressure that the line saw under test. */
  readonly highestPressure?: GaugePressure | undefined;
}

/** What was measured while the repair was made. What is left out counts as not shown, never as good. */
export interface AsBuiltRecord {
  /** The line while people worked on it. */
  readonly line?: LineRecord | undefined;
  /** Wall, extent of the loss and opening as the prepared steel showed them. */
  readonly survey?: SurveyRecord | undefined;
  /** The seal of the leak; nobody asks for it where the design has none. */
  readonly seal?: SealRecord | undefined;
  /** The steel just before the first resin. */
  readonly steel?: SteelRecord | undefined;
  /** Every reading at the gate and at the batches. */
  readonly climate?: readonly ClimateRecord[] | undefined;
  /** Every batch of filler and of laminate resin. */
  readonly batches?: readonly BatchRecord[] | undefined;
  /** Whether the filler took no print when the wrap began. */
  readonly fillerWasFirm?: boolean | undefined;
  /** Day on which a laminate was laid that brings its own resin; of one laid wet it is the day on which the last of its resin was mixed. */
  readonly laidOn?: string | undefined;
  /** The least number of layers anywhere over the length that needs all of them. */
  readonly layers?: number | undefined;
  /** The least thickness measured. */
  readonly thickness?: Length | undefined;
  /** Thickness of one ply as it was measured on a witness of this job; else that of the system counts. A thicker one holds no more fibre. */
  readonly plyThickness?: Length | undefined;
  /** Of the whole laminate on prepared steel, with its tapers; on a bend along its outside. */
  readonly length?: Length | undefined;
  /** The lesser one: from the edge of the defect at the end of life to where the full thickness ends; on a bend along its inside. */
  readonly leastOverlap?: Length | undefined;
  /** Temperature of the steel from the last batch until the hardness was read. */
  readonly cure?: readonly TemperatureStep[] | undefined;
  /** Hardness of the cured laminate. */
  readonly hardness?:
    | {
        /** Every reading, on the scale below. */
        readonly readings: readonly number[];
        /** Whether it no longer rises from one look to the next: then waiting does not help. */
        readonly hasStopped: boolean;
        /** Scale of the tester; readings on another scale than that of the design are no readings. */
        readonly scale: 'Shore D' | 'Barcol';
      }
    | undefined;
  /** What was seen and heard at the finished laminate. */
  readonly inspection?: InspectionRecord | undefined;
  /** The pressure test; nothing where none was made. */
  readonly pressureTest?: TestRecord | undefined;
  /** Hold points that were signed, with who did. */
  readonly signed?: readonly SignatureRecord[] | undefined;
}

/** Whether a record shows that a hold point was met; what is not recorded is not shown. */
export type AsBuiltVerdict = 'meets' | 'not shown' | 'does not meet';

/** What a repair is compared by with its design. */
export type AsBuiltPointName =
  | 'line pressure'
  | 'wall'
  | 'crack test'
  | 'loss length'
  | 'loss width'
  | 'hole'
  | 'slot'
  | 'seal'
  | 'putty firm'
  | 'bands'
  | 'steel'
  | 'climate'
  | 'batches'
  | 'witness'
  | 'filler age'
  | 'filler firm'
  | 'layers'
  | 'thickness'
  | 'length'
  | 'overlap'
  | 'cure'
  | 'hardness'
  | 'surface'
  | 'bond'
  | 'pressure test'
  | 'signatures';

/** One hold point: whether the record shows that it was met, and by how much it was not. */
export interface AsBuiltPoint extends Line {
  /** Which one. */
  readonly point: AsBuiltPointName;
  /** What the record shows of it. */
  readonly verdict: AsBuiltVerdict;
  /** What was measured, where it is a number. */
  readonly found?: Amount;
  /** What it is held to. */
  readonly limit?: Amount;
  /** How much is missing to that limit; absent where it is reached. */
  readonly shortfall?: Amount;
}

/** What a laminate that is too thin or too short still holds; never above the design pressure. */
export interface AsBuiltRating {
  /** Absent where the repair is good for no pressure that anybody can state. */
  readonly pressure?: GaugePressure;
  /** What governs that pressure, or why none can be stated. */
  readonly because: Line;
}

/** A repair as it was made, against its design. */
export interface AsBuiltComparison {
  /** The worst point decides. */
  readonly verdict: AsBuiltVerdict;
  /** Each hold point of the design, in order. */
  readonly points: readonly AsBuiltPoint[];
  /** Present where thickness, layers, length or overlap fall short. */
  readonly goodFor?: AsBuiltRating;
}

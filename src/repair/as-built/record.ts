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
  readonly use: 'filler' | 'laminate resin';
  readonly base: Mass;
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
  readonly steelTemperature: Temperature;
  readonly airTemperature: Temperature;
  readonly relativeHumidity: Ratio;
}

/** The steel as it was just before the first resin. */
export interface SteelRecord {
  readonly grade: PreparationGrade;
  readonly profile: Length;
  /** Soluble salts, every reading. */
  readonly salts?: readonly ArealWeight[] | undefined;
  readonly isFreeOfOil: boolean;
  readonly hasRustBloom: boolean;
  /** From preparation to the first resin. */
  readonly sincePreparation: Time;
}

/** What the prepared steel showed: preparation uncovers what corrosion hid. */
export interface SurveyRecord {
  /** The least wall measured anywhere in the defect; at a hole in the metal round it. */
  readonly leastWall: Length;
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
  readonly bandsWereRemoved?: boolean | undefined;
}

/** A hold point of the job with the name of who signed it. */
export interface SignatureRecord {
  readonly holdPoint: StepId;
  readonly by: string;
}

/** The test as it was made. */
export interface TestRecord extends Pick<PressureTestRecord, 'lowestPressure' | 'hold' | 'leak' | 'fall'> {
  /** Highest pressure that the line saw under test. */
  readonly highestPressure?: GaugePressure | undefined;
}

/** What was measured while the repair was made. What is left out counts as not shown, never as good. */
export interface AsBuiltRecord {
  readonly line?: LineRecord | undefined;
  readonly survey?: SurveyRecord | undefined;
  readonly seal?: SealRecord | undefined;
  readonly steel?: SteelRecord | undefined;
  /** Every reading at the gate and at the batches. */
  readonly climate?: readonly ClimateRecord[] | undefined;
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
  readonly hardness?:
    | {
        readonly readings: readonly number[];
        readonly hasStopped: boolean;
        /** Scale of the tester; readings on another scale than that of the design are no readings. */
        readonly scale: 'Shore D' | 'Barcol';
      }
    | undefined;
  readonly inspection?: InspectionRecord | undefined;
  readonly pressureTest?: TestRecord | undefined;
  readonly signed?: readonly SignatureRecord[] | undefined;
}

export type AsBuiltVerdict = 'meets' | 'not shown' | 'does not meet';

export type AsBuiltPointName =
  | 'line pressure'
  | 'wall'
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
  readonly point: AsBuiltPointName;
  readonly verdict: AsBuiltVerdict;
  readonly found?: Amount;
  readonly limit?: Amount;
  readonly shortfall?: Amount;
}

/** What a laminate that is too thin or too short still holds; never above the design pressure. */
export interface AsBuiltRating {
  /** Absent where the repair is good for no pressure that anybody can state. */
  readonly pressure?: GaugePressure;
  readonly because: Line;
}

/** A repair as it was made, against its design. */
export interface AsBuiltComparison {
  /** The worst point decides. */
  readonly verdict: AsBuiltVerdict;
  readonly points: readonly AsBuiltPoint[];
  /** Present where thickness, layers, length or overlap fall short. */
  readonly goodFor?: AsBuiltRating;
}

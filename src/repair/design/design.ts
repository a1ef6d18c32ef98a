import type { RecordedEntry, SourceTag } from '../../formula/index.js';
import type { OverlapCriterion, ThickOverThin } from '../../laminate/index.js';
import type { RemainingStrengthCriterion } from '../../pipe/index.js';
import type { Amount, Area, GaugePressure, Length, Line, Ratio, Strain, Stress } from '../../quantity/index.js';
import type { ConfirmedValue, RuleSet } from '../../rules/index.js';
import type { RepairCase, Slot, ThicknessMethod } from '../case/case.js';
import type { MissingInput } from '../job/missing-input.js';
import type { StepId, Timeline } from '../timeline/timeline.js';
import type { LaminateCriterion } from './criteria.js';
import type {
  AcceptanceDesign,
  CureDesigns,
  LineDesign,
  MixDesigns,
  RollsDesign,
  SealDesign,
  SiteDesign,
} from './design-work.js';

export type { MissingInput };

/** Why the pipe cannot be repaired this way: the finding, and the limit that it breaks. */
export interface Reason extends Line {
  /** What the case has, where a number speaks against the repair. */
  readonly found?: Amount;
  /** The number that would have passed, where there is one. */
  readonly limit?: Amount;
  /** Where the limit comes from, where a clause or a table sets it. */
  readonly clause?: string;
}

/** A value that the library supplied because the case did not. */
export interface Assumption {
  /** The value in the coherent SI unit of its kind; a choice has a word in its place. */
  readonly amount:
    | Amount
    | {
        /** What was chosen. */
        readonly name: string;
        /** The choice. */
        readonly word: string;
      };
  /** How well the value is known. */
  readonly tag: SourceTag;
  /** Why the library supplied it, and where it comes from. */
  readonly because: string;
}

/** What does not stop the design, and somebody has to know. */
export interface Warning extends Line {
  /** Where the rule behind the warning comes from, where there is one. */
  readonly clause?: string;
  /** The step of the plan at which the crew is told. */
  readonly step?: StepId;
  /** Path of the field whose value real jobs do not have, more often a slip than right: only such a warning has one. */
  readonly field?: string;
}

/** A value of the rule set that this design used. */
export interface UsedRule {
  /** What the value is, as the sheet calls it. */
  readonly name: string;
  /** Where the rule set has it from. */
  readonly clause: string;
  /** Whether its source was seen, or only recalled, or the value chosen. */
  readonly tag: SourceTag;
  /** Another route that reproduces it. */
  readonly derived?: string;
  /** Numbers of it that the case confirms, and how many it holds; absent where none is confirmed. */
  readonly confirmed?: {
    /** The numbers that the case confirms, each with the one that stood there before. */
    readonly values: readonly ConfirmedValue[];
    /** How many numbers the rule holds. */
    readonly of: number;
  };
}

/** A candidate that could not be computed: what it would need, or why it does not hold here. */
export interface Unavailable {
  /** Name of the method or criterion that was tried. */
  readonly criterion: string;
  /** What it would have needed; absent where it is out for another reason. */
  readonly needs?: Line;
  /** Why it does not hold here; absent where something is missing. */
  readonly because?: Line;
}

/** One candidate for a quantity, by the name of its criterion. */
export interface Candidate<Q extends number = number, C extends string = string> {
  /** What asks for the value, or sets it. */
  readonly criterion: C;
  /** What the criterion comes to by itself. */
  readonly value: Q;
}

/** Several candidates, and the one that governs. */
export interface Governed<Q extends number = number, C extends string = string> {
  /** Every candidate that was computed, the governing one among them. */
  readonly candidates: readonly Candidate<Q, C>[];
  /** The criterion whose value counts. */
  readonly governing: C;
  /** The value of the governing criterion. */
  readonly value: Q;
}

/** Remaining strength of the thinned pipe at the end of life. */
export interface StrengthOutcome {
  /** What the safe pressure comes from: a method, or what counts beside every one. */
  readonly method: RemainingStrengthCriterion;
  /** Never above what the sound pipe carries. */
  readonly safePressure: GaugePressure;
  /** On the failure pressure: as stated, or by the design factor of the line, and never below the inverse of that. */
  readonly safetyFactor: number;
  /** Does the thinned pipe carry the design pressure without repair? */
  readonly fitAsItIs: boolean;
  /** Safe pressure by every method, or why it is out. */
  readonly methods: readonly (Candidate<GaugePressure> | Unavailable)[];
}

/** The pipe as it was found, and as it will be at the end of the life of the repair. */
export interface AsFound {
  /** Of the bare pipe: as stated, or by its circumference. */
  readonly outsideDiameter: Length;
  /** Hoop stress of the nominal wall at the design pressure, or at a stated surge above it. */
  readonly hoopStressSound: Stress;
  /**
   * Hoop stress of the least wall at the end of life at that pressure; absent where the defect goes through the wall.
   */
  readonly hoopStressThinned?: Stress;
  /** All that presses on the empty pipe from outside; absent where nothing does. */
  readonly outsidePressure?: GaugePressure;
  /** The part of it that soil and traffic lay on the top of the pipe: 0 above ground. */
  readonly soilPressure?: GaugePressure;
  /** The least wall there is today: the reading, less what it may be off. */
  readonly wallToday: Length;
  /** The least wall there is at the end of the life of the repair; 0 where it is used up. */
  readonly wallAtEndOfLife: Length;
  /** Depth of the loss at the end of life from the nominal wall on, and never more than it. */
  readonly depthAtEndOfLife: Length;
  /** Length of the defect along the pipe at the end of life. */
  readonly lengthAtEndOfLife: Length;
  /** Width of the defect round the pipe at the end of life, never more than its circumference. */
  readonly widthAtEndOfLife: Length;
  /** Through-wall now, or within the life of the repair by the 1 mm rule. */
  readonly throughWall: boolean;
  /** Diameter of the hole at the end of life, of a slot the circle round it; absent where a wall is left. */
  readonly holeAtEndOfLife?: Length;
  /** The hole that the design takes: never less than the least of the rule set. */
  readonly designHole?: Length;
  /** Extents of the slot at the end of life; absent where the leak is no slot. */
  readonly slotAtEndOfLife?: Slot;
  /** The slot that the design takes: no extent less than the least hole of the rule set. */
  readonly designSlot?: Slot;
  /**
   * Absent where the defect goes through the wall, on a bend, without a stated factor, and where no method reaches the
   * loss.
   */
  readonly strength?: StrengthOutcome;
}

/** Where the laminate over a leak is bonded to nothing. */
export interface Footprint {
  /** What lies between pipe and laminate: the bare opening, or the seal on it. */
  readonly under: 'hole' | 'slot' | 'seal';
  /** Of the circle round the hole or the slot, the pad, the sheet and the collar. */
  readonly diameter: Length;
  /** Along the pipe, bands included where they stay. */
  readonly length: Length;
  /** Whether the laminate holds on the pipe beside it, or bands that stay or a large seal keep it off all round. */
  readonly bonded: 'beside it' | 'nowhere round the pipe';
}

/** Joints of a wrap of sheet in bands, and what is left at the worst place along the pipe. */
export interface JointDesign {
  /** A layer counts for nothing along the pipe this far to either side of its joint. */
  readonly reach: Length;
  /** Places over one pitch of the bands on which the layers have their joints. */
  readonly places: number;
  /** Plies that go through along the pipe at the worst place. */
  readonly carryingPlies: number;
  /** Plies that have a joint within reach of the worst place, and count for nothing along the pipe there. */
  readonly lostPlies: number;
}

/** How thick the laminate is, by every criterion that applies, and what the laid thickness resists. */
export interface LaminateDesign {
  /** Method of the thickness: the one that the case names, else the one that ignores the pipe. */
  readonly method: ThicknessMethod;
  /** Strain that the laminate may carry round the pipe over its life, the thermal mismatch taken off. */
  readonly hoopStrain: Strain;
  /** Strain that it may carry along the pipe over its life, the thermal mismatch taken off. */
  readonly axialStrain: Strain;
  /** Diameter that the laminate goes round: over the filler. */
  readonly wrappedDiameter: Length;
  /** Thickness that is needed by every criterion, raised on a fitting, before it is rounded up to whole plies. */
  readonly thickness: Governed<Length, LaminateCriterion>;
  /** Thickness by the methods that were not chosen, for comparison. */
  readonly alternatives: readonly (Candidate<Length> | Unavailable)[];
  /** Plies to lay: at least what the thickness takes, with those that the joints of a sheet cost. */
  readonly plies: number;
  /** On a fitting: by how much every line of straight pipe was raised. */
  readonly fittingFactor?: number;
  /** The fewest that may be laid: of the rule set, and of the qualification. */
  readonly leastPlies: number;
  /** Thickness of all plies to lay. */
  readonly laidThickness: Length;
  /** Only over a leak. */
  readonly footprint?: Footprint;
  /** Only where sheet is laid in bands side by side. */
  readonly joints?: JointDesign;
  /** Pressure that the laid thickness resists. */
  readonly resistance: Governed<GaugePressure, LaminateCriterion>;
  /** Only where pipe and laminate share the load: how far thick walls are stressed beyond thin ones. Nothing rests on it. */
  readonly thickOverThin?: ThickOverThin;
}

/** On a bend overlap, taper and defect are those along its inside, where they are shortest. */
export interface ExtentDesign {
  /**
   * Mean thickness of all that lies there, with the laps of turns and bands: overlap and taper are those of it. At least that
   * of the plies; on a bend along its inside, where the turns close up.
   */
  readonly meanThickness: Length;
  /** Length of sound pipe that the laminate has to lie on at full thickness, on each side of the defect. */
  readonly overlap: Governed<Length, OverlapCriterion>;
  /** Length on each side over which the thickness runs out, beyond the overlap. */
  readonly taper: Length;
  /** Length at the end of life that lies between the two overlaps. */
  readonly defectLength: Length;
  /** On a bend along its outside, so that it is long enough along the inside. */
  readonly totalLength: Length;
  /** On a bend only: along its inside. */
  readonly insideLength?: Length;
}

/** How tape covers the repair. */
export interface TapeDesign {
  /** Tape is wound in a helix, to and fro. */
  readonly form: 'tape';
  /** Layers that one pass leaves everywhere, by the overlap of its turns. */
  readonly layersPerPass: number;
  /** Passes to wind, to and fro. */
  readonly passes: number;
  /** Least layer count that the passes leave. */
  readonly layers: number;
  /** Length over which that count holds; the end bands carry fewer. */
  readonly fullCountLength: Length;
  /** Length of pipe that the first pass lies on, end bands included. */
  readonly overallLength: Length;
  /** Tape that lies on the pipe in all passes, without waste. */
  readonly tapeLength: Length;
  /** On a bend only: the turns close up there, where they keep the stated overlap along the outside. */
  readonly insideOverlap?: Ratio;
  /** Rolls to order, with waste. */
  readonly rolls: number;
  /** What is left on the last roll when all, with its waste, has been drawn. */
  readonly leftOnLastRoll: Length;
}

/** How sheet covers the repair. */
export interface SheetDesign {
  /** Sheet goods, in one band or in several side by side. */
  readonly form: 'sheet';
  /** Layers to lay: the plies of the laminate. */
  readonly layers: number;
  /** Side by side: the most in one layer. */
  readonly bands: number;
  /** By which a turn runs past its start. */
  readonly finalLap: Length;
  /** Sheet of all bands together, without waste. */
  readonly sheetLength: Length;
  /** Area of that sheet before it is cut to width. */
  readonly sheetArea: Area;
  /** Rolls to order, with waste. */
  readonly rolls: number;
  /** What is left on the last roll when all, with its waste, has been drawn. */
  readonly leftOnLastRoll: Length;
}

/** What every design says, whatever became of it. */
export interface DesignRecord {
  /** The case as it was stated. */
  readonly case: RepairCase;
  /** What was asked for beside the case. */
  readonly options: DesignOptions;
  /** Version of this library that made the design. */
  readonly libraryVersion: string;
  /** Rule set with its edition, "after ISO 24817:2017, as recalled"; one of the user's own with its file and how far it differs. */
  readonly ruleSet: string;
  /** Why it is `not repairable` or `not covered`. */
  readonly reasons: readonly Reason[];
  /** What has to be known before there is a design, and who has it. */
  readonly missing: readonly MissingInput[];
  /** Values that the library supplied because the case did not, or looked up in its tables. */
  readonly assumed: readonly Assumption[];
  /** Values of the rule set behind this design, each with what stands behind it. */
  readonly rules: readonly UsedRule[];
  /** What does not stop the design and somebody has to know. */
  readonly warnings: readonly Warning[];
  /** Dangers of the work, and what the design is not; for people, in full sentences. */
  readonly cautions: readonly string[];
  /** The steps, when recording was asked for. */
  readonly record?: readonly RecordedEntry[];
}

/** The parts of a design, in the order of the job. What a job has no use for is `none`. */
export interface DesignParts {
  /** The pipe as it is, and as it will be at the end of the life of the repair. */
  readonly found: AsFound;
  /** Whether people may work on the line in the state that the case gives. */
  readonly line: LineDesign;
  /**
   * How the leak is held before the wrap; `none` where nothing leaks yet, or the line is empty and no seal is stated.
   */
  readonly seal: SealDesign | 'none';
  /** How thick the laminate is, and what it resists. */
  readonly laminate: LaminateDesign;
  /** How far along the pipe the laminate reaches. */
  readonly extent: ExtentDesign;
  /** How tape or sheet covers the repair, and how many rolls it takes. */
  readonly wrap: TapeDesign | SheetDesign;
  /** How long each material can be worked, and by which law it waits. */
  readonly cures: CureDesigns;
  /** What is mixed on site, and in which batches. */
  readonly mixes: MixDesigns;
  /** How the wrap is laid, roll by roll. */
  readonly rolls: RollsDesign;
  /** What the finished repair has to show. */
  readonly acceptance: AcceptanceDesign;
  /** When each step of the job begins and ends: every hour that is printed comes from it. */
  readonly timeline: Timeline;
  /** Whether work may start, as read and forecast. */
  readonly site: SiteDesign;
}

/** A design that was made: every part is there. */
export interface Designed extends DesignRecord, DesignParts {
  /** Every part could be worked out, and nothing speaks against the repair. */
  readonly verdict: 'designed';
  /** Empty: nothing speaks against the repair. */
  readonly reasons: readonly [];
  /** Empty: nothing is missing. */
  readonly missing: readonly [];
}

/** A design that was not made, with the parts that were reached before what stopped it. */
export interface NotDesigned extends DesignRecord, Partial<DesignParts> {
  /** What this version does not cover comes first, then what speaks against the repair, then what is missing. */
  readonly verdict: 'not repairable' | 'needs input' | 'not covered';
}

/** The whole design, told apart by its verdict. */
export type RepairDesign = Designed | NotDesigned;

/** What became of a design. */
export type Verdict = RepairDesign['verdict'];

/** What can be asked for beside the case. */
export interface DesignOptions {
  /** Keep every step of the arithmetic for the calculation sheet. */
  readonly record?: boolean | undefined;
  /** Refuse a case with a value outside the usual span of its field, in place of a warning. */
  readonly strict?: boolean | undefined;
  /** A rule set of the user's own, of the shape of those of this library, in place of the one that the case names. */
  readonly rules?: RuleSet | undefined;
  /** Where that set came from, as a reader of the answer finds it: the name of a file. */
  readonly rulesFrom?: string | undefined;
}

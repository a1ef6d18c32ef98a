import type { RecordedEntry, SourceTag } from '../../formula/index.js';
import type { OverlapCriterion, ThickOverThin } from '../../laminate/index.js';
import type { RemainingStrengthCriterion } from '../../pipe/index.js';
import type {
  Amount,
  Area,
  GaugePressure,
  Length,
  Line,
  Mass,
  Ratio,
  Strain,
  Stress,
  Time,
  Volume,
} from '../../quantity/index.js';
import type { ConfirmedValue, RuleSet } from '../../rules/index.js';
import type { RepairCase, Slot, ThicknessMethod } from '../case/case.js';
import type { MissingInput } from '../job/missing-input.js';
import type { CureLaw } from '../timeline/cure-law.js';
import type { StepId, Timeline } from '../timeline/timeline.js';
import type { LaminateCriterion } from './criteria.js';
import type { AcceptanceDesign, LineDesign, RollsDesign, SealDesign, SiteDesign } from './design-work.js';

export type { MissingInput };

/** Why the pipe cannot be repaired this way: the finding, and the limit that it breaks. */
export interface Reason extends Line {
  readonly found?: Amount;
  readonly limit?: Amount;
  readonly clause?: string;
}

/** A value that the library supplied because the case did not. */
export interface Assumption {
  readonly amount: Amount | { readonly name: string; readonly word: string };
  readonly tag: SourceTag;
  readonly because: string;
}

export interface Warning extends Line {
  readonly clause?: string;
  /** The step of the plan at which the crew is told. */
  readonly step?: StepId;
  /** Path of the field whose value real jobs do not have, more often a slip than right: only such a warning has one. */
  readonly field?: string;
}

/** A value of the rule set that this design used. */
export interface UsedRule {
  readonly name: string;
  readonly clause: string;
  readonly tag: SourceTag;
  /** Another route that reproduces it. */
  readonly derived?: string;
  /** Numbers of it that the case confirms, and how many it holds; absent where none is confirmed. */
  readonly confirmed?: { readonly values: readonly ConfirmedValue[]; readonly of: number };
}

/** A candidate that could not be computed: what it would need, or why it does not hold here. */
export interface Unavailable {
  readonly criterion: string;
  readonly needs?: Line;
  readonly because?: Line;
}

/** One candidate for a quantity, by the name of its criterion. */
export interface Candidate<Q extends number = number, C extends string = string> {
  readonly criterion: C;
  readonly value: Q;
}

/** Several candidates, and the one that governs. */
export interface Governed<Q extends number = number, C extends string = string> {
  readonly candidates: readonly Candidate<Q, C>[];
  readonly governing: C;
  readonly value: Q;
}

/** Remaining strength of the thinned pipe at the end of life. */
export interface StrengthOutcome {
  /** What the safe pressure comes from: a method, or what counts beside every one. */
  readonly method: RemainingStrengthCriterion;
  /** Never above what the sound pipe carries. */
  readonly safePressure: GaugePressure;
  readonly safetyFactor: number;
  /** Does the thinned pipe carry the design pressure without repair? */
  readonly fitAsItIs: boolean;
  /** Safe pressure by every method, or why it is out. */
  readonly methods: readonly (Candidate<GaugePressure> | Unavailable)[];
}

export interface AsFound {
  readonly outsideDiameter: Length;
  readonly hoopStressSound: Stress;
  readonly hoopStressThinned?: Stress;
  /** All that presses on the empty pipe from outside, and the part of soil and traffic on its top; none where there is none. */
  readonly outsidePressure?: GaugePressure;
  readonly soilPressure?: GaugePressure;
  /** The least wall there is today: the reading, less what it may be off. */
  readonly wallToday: Length;
  readonly wallAtEndOfLife: Length;
  readonly depthAtEndOfLife: Length;
  readonly lengthAtEndOfLife: Length;
  readonly widthAtEndOfLife: Length;
  /** Through-wall now, or within the life of the repair by the 1 mm rule. */
  readonly throughWall: boolean;
  /** Hole at the end of life, and the one that the design takes: never less than the least of the rule set. */
  readonly holeAtEndOfLife?: Length;
  readonly designHole?: Length;
  /** Slot at the end of life, and the one that the design takes: no extent less than the least hole of the rule set. */
  readonly slotAtEndOfLife?: Slot;
  readonly designSlot?: Slot;
  readonly strength?: StrengthOutcome;
}

/** Where the laminate over a leak is bonded to nothing. */
export interface Footprint {
  readonly under: 'hole' | 'slot' | 'seal';
  /** Of the circle round the hole or the slot, the pad, the sheet and the collar. */
  readonly diameter: Length;
  /** Along the pipe, bands included where they stay. */
  readonly length: Length;
  readonly bonded: 'beside it' | 'nowhere round the pipe';
}

/** Joints of a wrap of sheet in bands, and what is left at the worst place along the pipe. */
export interface JointDesign {
  /** A layer counts for nothing along the pipe this far to either side of its joint. */
  readonly reach: Length;
  /** Places over one pitch of the bands on which the layers have their joints. */
  readonly places: number;
  readonly carryingPlies: number;
  readonly lostPlies: number;
}

export interface LaminateDesign {
  readonly method: ThicknessMethod;
  readonly hoopStrain: Strain;
  readonly axialStrain: Strain;
  /** Diameter that the laminate goes round: over the filler. */
  readonly wrappedDiameter: Length;
  readonly thickness: Governed<Length, LaminateCriterion>;
  /** Thickness by the methods that were not chosen, for comparison. */
  readonly alternatives: readonly (Candidate<Length> | Unavailable)[];
  readonly plies: number;
  /** On a fitting: by how much every line of straight pipe was raised. */
  readonly fittingFactor?: number;
  /** The fewest that may be laid: of the rule set, and of the qualification. */
  readonly leastPlies: number;
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
  readonly overlap: Governed<Length, OverlapCriterion>;
  readonly taper: Length;
  /** Length at the end of life that lies between the two overlaps. */
  readonly defectLength: Length;
  /** On a bend along its outside, so that it is long enough along the inside. */
  readonly totalLength: Length;
  /** On a bend only: along its inside. */
  readonly insideLength?: Length;
}

export interface TapeDesign {
  readonly form: 'tape';
  readonly layersPerPass: number;
  readonly passes: number;
  /** Least layer count that the passes leave. */
  readonly layers: number;
  /** Length over which that count holds; the end bands carry fewer. */
  readonly fullCountLength: Length;
  readonly overallLength: Length;
  readonly tapeLength: Length;
  /** On a bend only: the turns close up there, where they keep the stated overlap along the outside. */
  readonly insideOverlap?: Ratio;
  readonly rolls: number;
  readonly leftOnLastRoll: Length;
}

export interface SheetDesign {
  readonly form: 'sheet';
  readonly layers: number;
  /** Side by side: the most in one layer. */
  readonly bands: number;
  /** By which a turn runs past its start. */
  readonly finalLap: Length;
  readonly sheetLength: Length;
  readonly sheetArea: Area;
  readonly rolls: number;
  readonly leftOnLastRoll: Length;
}

export interface MixDesign {
  readonly material: string;
  readonly volume?: Volume;
  readonly area?: Area;
  /** All of it, with waste. */
  readonly mass: Mass;
  readonly batches: number;
  readonly batchMass: Mass;
  /** Weighed into each batch. */
  readonly base: Mass;
  readonly hardener: Mass;
  readonly limitedBy: 'job' | 'kit' | 'working time';
  readonly kits: number;
}

/** What is mixed on site, by its use. */
export interface MixDesigns {
  readonly filler: MixDesign | 'none';
  readonly laminateResin: MixDesign | 'none';
}

/** What cures on the pipe, by its use: two materials may bear one name. */
export interface CureDesigns {
  readonly putty: CureDesign | 'none';
  readonly filler: CureDesign | 'none';
  readonly laminate: CureDesign;
}

export interface CureDesign {
  readonly material: string;
  /** Shortest working time of the cases considered. */
  readonly workingTime: Time;
  /** How its wait follows from the hour at which it is laid: the wait itself stands in the timeline. */
  readonly law: CureLaw;
}

/** What every design says, whatever became of it. */
export interface DesignRecord {
  readonly case: RepairCase;
  readonly options: DesignOptions;
  readonly libraryVersion: string;
  /** Rule set with its edition, "after ISO 24817:2017, as recalled"; one of the user's own with its file and how far it differs. */
  readonly ruleSet: string;
  /** Why it is `not repairable` or `not covered`. */
  readonly reasons: readonly Reason[];
  readonly missing: readonly MissingInput[];
  readonly assumed: readonly Assumption[];
  /** Values of the rule set behind this design, each with what stands behind it. */
  readonly rules: readonly UsedRule[];
  readonly warnings: readonly Warning[];
  readonly cautions: readonly string[];
  /** The steps, when recording was asked for. */
  readonly record?: readonly RecordedEntry[];
}

/** The parts of a design, in the order of the job. What a job has no use for is `none`. */
export interface DesignParts {
  readonly found: AsFound;
  /** Whether people may work on the line in the state that the case gives. */
  readonly line: LineDesign;
  readonly seal: SealDesign | 'none';
  readonly laminate: LaminateDesign;
  readonly extent: ExtentDesign;
  readonly wrap: TapeDesign | SheetDesign;
  readonly cures: CureDesigns;
  readonly mixes: MixDesigns;
  /** How the wrap is laid, roll by roll. */
  readonly rolls: RollsDesign;
  readonly acceptance: AcceptanceDesign;
  /** When each step of the job begins and ends: every hour that is printed comes from it. */
  readonly timeline: Timeline;
  /** Whether work may start, as read and forecast. */
  readonly site: SiteDesign;
}

/** A design that was made: every part is there. */
export interface Designed extends DesignRecord, DesignParts {
  readonly verdict: 'designed';
  readonly reasons: readonly [];
  readonly missing: readonly [];
}

/** A design that was not made, with the parts that were reached before what stopped it. */
export interface NotDesigned extends DesignRecord, Partial<DesignParts> {
  readonly verdict: 'not repairable' | 'needs input' | 'not covered';
}

/** The whole design, told apart by its verdict. */
export type RepairDesign = Designed | NotDesigned;

export type Verdict = RepairDesign['verdict'];

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

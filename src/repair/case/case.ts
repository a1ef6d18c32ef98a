import type { SourceTag } from '../../formula/index.js';
import type { FlowStressChoice, RemainingStrengthMethod } from '../../pipe/index.js';
import type {
  CorrosionRate,
  Density,
  Force,
  GaugePressure,
  Length,
  Modulus,
  Moment,
  Stress,
  Temperature,
  ThermalExpansion,
  Time,
} from '../../quantity/index.js';
import type { Confirmation } from '../../rules/index.js';
import type { Filler, LaminateSystem, SheetStock, TapeStock, WetLayUp } from './case-materials.js';
import type { Acceptance, Crew, LineAtWork, Seal, Site } from './case-work.js';

export type * from './case-materials.js';
export type * from './case-work.js';

/** The rule sets a case may name. */
export type Basis = 'ISO 24817' | 'ASME PCC-2';

/**
 * What was measured on the pipe, what it carries, what material is at hand and what the weather is.
 *
 * Fields that bear on safety are required and take `none` as a value: a load that nobody wrote down is not a load of zero.
 */
export interface RepairCase {
  readonly title: string;
  /** Line number, drawing, work order: whatever the site calls it. */
  readonly reference?: string | undefined;
  /** Day of the survey, as text. */
  readonly date?: string | undefined;
  /** Anything a reader should know about this case. */
  readonly note?: string | undefined;
  readonly basis: Basis;
  readonly pipe: PipeAsBuilt;
  readonly service: Service;
  /** The line while people work on it: one state and one pressure from the first touch to the cured laminate. */
  readonly line: LineAtWork;
  readonly defect: Defect;
  readonly loads: Loads;
  readonly fitting: Fitting | 'none';
  readonly assessment?: Assessment | undefined;
  readonly repair: Demands;
  readonly laminate: LaminateSystem;
  readonly wrap: TapeStock | SheetStock;
  /** Resin mixed on site for the laminate; `none` when the tape or sheet brings its own. */
  readonly resin: WetLayUp | 'none';
  readonly filler: Filler | 'none';
  readonly site: Site;
  /** How the leak is held before the wrap. */
  readonly seal?: Seal | undefined;
  readonly crew?: Crew | undefined;
  readonly acceptance?: Acceptance | undefined;
  /** Numbers of the rule set as somebody who has the document reads them there: they take the place of what is recalled. */
  readonly confirmed?: readonly Confirmation[] | undefined;
  /** Values that the case took from tables by naming a row of them; filled in by whoever reads the document. */
  readonly lookedUp?: readonly LookedUp[] | undefined;
}

/** A value from a table of this library, for a row that the case names. */
export interface LookedUp {
  /** What was looked up. */
  readonly name: string;
  /** Kind of the value. */
  readonly kind: 'length' | 'stress';
  /** In the coherent SI unit of that kind. */
  readonly value: number;
  /** How well the table is known. */
  readonly tag: SourceTag;
  /** Which row of which table. */
  readonly because: string;
}

/** The undamaged pipe. */
export interface PipeAsBuilt {
  /** The outside diameter; or give the circumference. */
  readonly outsideDiameter?: Length | undefined;
  /** Circumference measured round the bare pipe. */
  readonly circumference?: Length | undefined;
  /** Nominal wall of the undamaged pipe. */
  readonly wallThickness: Length;
  /** Size by name, when the diameter and wall were taken from a table: "NPS 8 schedule 40, ASME B36.10M". */
  readonly size?: string | undefined;
  readonly material: PipeMaterial;
  /** Of a buried line; `none` says that somebody looked. A design to sign needs a word. */
  readonly cathodicProtection?: CathodicProtection | 'none' | undefined;
}

/** A current that keeps buried steel from corroding: a wrap that comes off keeps it off the steel. */
export interface CathodicProtection {
  /** What becomes of it under the wrap, and who judged that. */
  readonly underWrap: string;
}

/** The metal of the pipe. */
export interface PipeMaterial {
  readonly name: string;
  /** Specified minimum yield strength. */
  readonly yieldStrength: Stress;
  /** Specified minimum tensile strength. */
  readonly tensileStrength?: Stress | undefined;
  /** Allowable stress of the pipe at the design temperature under its own code. */
  readonly allowableStress?: Stress | undefined;
  readonly modulus?: Modulus | undefined;
  readonly thermalExpansion?: ThermalExpansion | undefined;
}

/** What the line carries, and at what pressure and temperature. */
export interface Service {
  readonly contents: string;
  readonly phase: 'liquid' | 'gas' | 'two-phase';
  /** What the contents can do to people; an empty list says that somebody looked and found nothing. */
  readonly hazards: readonly ('flammable' | 'toxic' | 'hot' | 'corrosive' | 'asphyxiant')[];
  /** Who looked for hazards, and by what: an empty list counts by it for anything but plain water or air. */
  readonly hazardsStatedBy?: string | undefined;
  /** Firewater, deluge, emergency shutdown and the like. */
  readonly safetyCritical: boolean;
  readonly designPressure: GaugePressure;
  readonly designTemperature: Temperature;
  /** Coldest steel over the life, where it lies farther from the day of the work than the design temperature. */
  readonly lowestTemperature?: Temperature | undefined;
  /** Highest pressure that the line has carried lately with this defect in it, and when. */
  readonly recentPressure?: { readonly pressure: GaugePressure; readonly date: string } | undefined;
  /** Highest pressure of a surge, or that the design pressure holds it: a design to sign needs the one or the other. */
  readonly surge?: 'included' | GaugePressure | undefined;
  /** Whether the service cracks steel; `none` says that somebody looked. A design to sign needs a word. */
  readonly cracking?: Cracking | 'none' | undefined;
}

/** A service that cracks steel under its corrosion, where no method for metal loss holds. */
export interface Cracking {
  readonly environment: 'sour' | 'stress corrosion';
  readonly test?: CrackTest | undefined;
}

/** The test of the whole area under the wrap. A crack that was found is a defect of kind `crack`. */
export interface CrackTest {
  readonly method: string;
  readonly result: 'no crack found';
  /** Day of the test, as 2026-03-12. */
  readonly date: string;
}

/** What the defect is; the case may name more than this version designs for. */
export type DefectKind =
  | 'metal loss'
  | 'through-wall hole'
  | 'through-wall slot'
  | 'crack'
  | 'dent'
  | 'gouge'
  | 'lamination'
  | 'bulge'
  | 'seam defect';

/** What made the defect, and from which side. */
export type DefectCause =
  | 'internal corrosion'
  | 'external corrosion'
  | 'internal erosion'
  | 'mechanical damage'
  | 'unknown';

/** The defect as it was measured. */
export interface Defect {
  readonly kind: DefectKind;
  readonly cause: DefectCause;
  /** Extent along the pipe. */
  readonly axialLength: Length;
  /** Extent round the pipe. */
  readonly circumferentialWidth: Length;
  /** The least wall left anywhere in the defect; of a through-wall hole or slot, in the metal round it. */
  readonly remainingWall: Length;
  /** How far that reading may be off; `none` says that the wall stated is already the least that it can be. */
  readonly readingError: Length | 'none';
  /** Diameter of the circle that encloses a through-wall hole. */
  readonly holeDiameter?: Length | undefined;
  /** The opening of a through-wall slot itself, inside the thinned metal round it. */
  readonly slot?: Slot | undefined;
  /**
   * Hole to expect by the end of the repair's life where the wall is used up; without it the whole defect counts as the
   * hole. An inspector's judgement: less conservative.
   */
  readonly holeAtEndOfLife?: Length | undefined;
  /** Depth of the metal loss along the pipe, in order of position: over the whole defect, down to its least wall. */
  readonly profile?: readonly ProfilePoint[] | undefined;
  readonly growth: Growth | 'none';
  /** From the edge of the loss to the nearest weld, branch, support or flange along the pipe; at least so far counts. */
  readonly nearestAttachment?: Length | undefined;
  /** Other metal losses near this one, the worst of them being this one; `none` says that somebody looked. */
  readonly neighbours?: readonly NeighbouringLoss[] | 'none' | undefined;
}

/** A metal loss beside the defect, and the sound metal between the two: edge to edge, 0 where they overlap. */
export interface NeighbouringLoss {
  readonly cause: DefectCause;
  readonly gapAlong: Length;
  /** Measured along the outside of the pipe. */
  readonly gapRound: Length;
  readonly axialLength: Length;
  readonly circumferentialWidth: Length;
  /** By the same gauge as that of the defect, whose reading error counts for it too. */
  readonly remainingWall: Length;
}

/** An opening that is longer one way than the other: the rectangle that encloses it. */
export interface Slot {
  readonly axialLength: Length;
  readonly circumferentialWidth: Length;
}

/** Depth of the metal loss at one place along the pipe. */
export interface ProfilePoint {
  readonly position: Length;
  readonly depth: Length;
}

/** How fast the defect goes on growing under the repair. */
export interface Growth {
  /** Wall loss per time, or the readings of the wall that it follows from. */
  readonly depth: CorrosionRate | WallReadings;
  /** Growth of the extent at each end, and of the radius of a hole, per time. */
  readonly length: CorrosionRate;
}

/** Earlier readings of the thinnest wall; the larger of the long-term and the short-term rate is taken. */
export interface WallReadings {
  /** Wall at the reading before this one. */
  readonly previousWall: Length;
  readonly sincePrevious: Time;
  /** Since the wall was that of the new pipe. */
  readonly service: Time;
}

/** What acts on the pipe beside the pressure inside. */
export interface Loads {
  /** Tension along the pipe beside those of the pressure and of `heldLine`, a push below 0. */
  readonly axialForce: Force | 'none';
  /** A line that cannot move along itself: heat makes it push, cold makes it pull; `none` says that it is free to. */
  readonly heldLine?: HeldLine | 'none' | undefined;
  /** Of these three the size counts. */
  readonly bendingMoment: Moment | 'none';
  readonly torsion: Moment | 'none';
  readonly shearForce: Force | 'none';
  /** Pressure on the outside above that inside while the line is empty: vacuum, free water over the pipe. */
  readonly externalPressure: GaugePressure | 'none';
  /** What lies over a buried pipe. */
  readonly soil: Soil | 'none';
  /** Longest span without support of a pipe that is pushed along itself. */
  readonly freeSpan?: Length | undefined;
  readonly cycles: PressureCycles | 'none';
}

/** A line that soil or anchors hold along itself. */
export interface HeldLine {
  /** Temperature at which it was tied in: no force of heat or cold then. */
  readonly tieInTemperature: Temperature;
}

/** Soil over a buried pipe. Its support from the sides is not counted. */
export interface Soil {
  /** From the surface to the top of the pipe. */
  readonly cover: Length;
  /** As it lies, wet. */
  readonly density: Density;
  /** Ground water over the top of the pipe. */
  readonly waterAbove: Length | 'none';
  /** Pressure of traffic at the top of the pipe. */
  readonly traffic: GaugePressure | 'none';
}

/** Cycles of pressure over the life of the repair. */
export interface PressureCycles {
  /** Number over the life of the repair. */
  readonly number: number;
  readonly lowestPressure: GaugePressure;
  readonly highestPressure: GaugePressure;
}

/** Sort of fitting that the defect lies on. */
export type FittingKind = 'bend' | 'tee' | 'reducer' | 'flange' | 'nozzle' | 'weld';

/** The fitting that the defect lies on. */
export interface Fitting {
  readonly kind: FittingKind;
  /** Of the centre line of a bend. */
  readonly bendRadius?: Length | undefined;
}

/** By the names that the methods have everywhere. */
export type StrengthMethod = RemainingStrengthMethod;

/** By the names that the formulas have. */
export type FlowStressRule = FlowStressChoice;

/** How the remaining strength of the pipe is to be judged; what is not named is chosen on the safe side. */
export interface Assessment {
  readonly method?: StrengthMethod | undefined;
  readonly flowStress?: FlowStressRule | undefined;
  readonly safetyFactor?: number | undefined;
  /** Design factor F of the pipeline code; the safety factor is at least 1/F. */
  readonly designFactor?: number | undefined;
}

/** How the thickness of the laminate is found, and whether the pipe counts in it. */
export type ThicknessMethod =
  | 'substrate ignored'
  | 'substrate sharing load'
  | 'substrate yielded'
  | 'long-term strength';

/** What is asked of the repair. */
export interface Demands {
  readonly class: 1 | 2 | 3;
  /** How long the repair has to last. */
  readonly life: Time;
  readonly method?: ThicknessMethod | undefined;
  /**
   * How often the design load acts, for the rule set that asks it; `continuous` unless given. `rare` is less conservative.
   */
  readonly loading?: 'rare' | 'continuous' | undefined;
  /** Class 3 only: take the leak service factor by formula instead of the fixed 0.333. Less conservative. */
  readonly leakFactorByFormula?: boolean | undefined;
  /** Length of sound pipe free for the overlap on the shorter side, where something is in the way. */
  readonly availableOverlap?: Length | undefined;
  /** The owner's own interval between inspections of a repair; nothing is invented where there is none. */
  readonly inspectionInterval?: Time | undefined;
}

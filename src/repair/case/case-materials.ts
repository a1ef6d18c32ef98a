import type { HoleTest } from '../../laminate/index.js';
import type {
  ActivationEnergy,
  ArealWeight,
  Density,
  EnergyReleaseRate,
  Length,
  Mass,
  MassFlow,
  Modulus,
  Ratio,
  Strain,
  Stress,
  Temperature,
  ThermalExpansion,
  Time,
} from '../../quantity/index.js';

/** What a cured material stands, by the word of its maker. */
export interface Resistance {
  /** As the case names the contents of the line. */
  readonly contents: string;
  /** Up to here. */
  readonly temperature: Temperature;
  /** Whose word it is: a table of the maker, a letter, a test. */
  readonly statedBy: string;
}

/** Properties of the cured laminate as qualified. */
export interface LaminateSystem {
  readonly name: string;
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  /** Load round the pipe, contraction along it. */
  readonly poissonRatio: number;
  readonly shearModulus?: Modulus | undefined;
  readonly plyThickness: Length;
  /** Plies of the qualification test, the least that may be laid. */
  readonly qualifiedPlies?: number | undefined;
  /** Short-term strain to failure round the pipe. */
  readonly strainToFailure?: Strain | undefined;
  /** Long-term strains of the qualification: where they are lower than the defaults of the rule set they count. */
  readonly qualifiedStrains?: { readonly hoop: Strain; readonly axial: Strain } | undefined;
  readonly hoopExpansion?: ThermalExpansion | undefined;
  readonly axialExpansion?: ThermalExpansion | undefined;
  /** One of the two fixes the highest design temperature. */
  readonly glassTransition?: Temperature | undefined;
  /** The same of a sample that has taken up water as in service: it softens earlier. */
  readonly wetGlassTransition?: Temperature | undefined;
  readonly heatDistortion?: Temperature | undefined;
  /** Temperature at which the sample of those two was cured: a colder cure leaves a lower one. */
  readonly transitionCuredAt?: Temperature | undefined;
  readonly fibre?: 'glass' | 'carbon' | undefined;
  /** What keeps carbon off the steel. */
  readonly isolatingLayer?: string | undefined;
  /** Lowest temperature of the qualification: below it nobody has a word about the system. */
  readonly lowestTemperature?: Temperature | undefined;
  /** What the cured resin stands, where the contents reach it. */
  readonly resists?: Resistance | undefined;
  /** Lower confidence limit of the energy release rate of the bond to the prepared pipe. */
  readonly energyReleaseRate?: EnergyReleaseRate | undefined;
  /** Tests that it is computed from in place of the value: pressurised holes under the laminate, each raised until it leaked. */
  readonly holeTests?: readonly HoleTest[] | undefined;
  /** The same, found over a seal: it counts for a footprint at most as large. */
  readonly energyReleaseRateOverSeal?:
    | { readonly energyReleaseRate: EnergyReleaseRate; readonly footprint: Length }
    | undefined;
  /** That of the bond to the prepared pipe at the design temperature, with the moduli there. */
  readonly atDesignTemperature?:
    | {
        readonly energyReleaseRate: EnergyReleaseRate;
        readonly hoopModulus: Modulus;
        readonly axialModulus: Modulus;
      }
    | undefined;
  readonly lapShearStrength?: Stress | undefined;
  /** Lower confidence limit of the long-term strength, and what kind of test gave it. */
  readonly longTermStrength?:
    | {
        readonly strength: Stress;
        readonly test: '1000 h survival' | 'design life regression';
        /** Of the tests: above it their strength says nothing. */
        readonly testTemperature?: Temperature | undefined;
        /** A second series at another temperature: between the two the strength is interpolated. */
        readonly second?: { readonly testTemperature: Temperature; readonly strength: Stress } | undefined;
      }
    | undefined;
  readonly cure: CureSheet;
}

/** Tape as it comes on rolls, and the overlap at which it is wound. */
export interface TapeStock {
  readonly form: 'tape';
  readonly width: Length;
  /** Part of the width that the next turn covers. */
  readonly overlap: Ratio;
  readonly rollLength: Length;
  readonly waste?: Ratio | undefined;
}

/** Sheet as it comes on rolls. */
export interface SheetStock {
  readonly form: 'sheet';
  readonly width: Length;
  readonly rollLength: Length;
  /** Circumferential lap at the end of the last layer. */
  readonly finalLap?: Length | undefined;
  readonly waste?: Ratio | undefined;
}

/** Parts of a two-part material, by mass. */
export interface Parts {
  readonly base: number;
  readonly hardener: number;
}

/** Fabric wetted out on site with two-part resin. */
export interface WetLayUp {
  readonly fabricWeight: ArealWeight;
  /** Mass of fibre over mass of laminate. */
  readonly fibreMassFraction: Ratio;
  readonly parts: Parts;
  readonly kitMass: Mass;
  /** How much mixed resin the crew lays per time. */
  readonly rate: MassFlow;
  readonly waste?: Ratio | undefined;
}

/** Two-part filler that makes the surface even before wrapping. */
export interface Filler {
  readonly name: string;
  /** Over the built-up length; it stops short of the bonded overlap. */
  readonly thickness: Length;
  /** Over the defect. */
  readonly thicknessOverDefect: Length;
  /** Greatest thickness that may be placed at once: a thicker pour runs hot by itself. */
  readonly greatestLift?: Length | undefined;
  readonly density: Density;
  readonly parts: Parts;
  readonly kitMass: Mass;
  readonly rate: MassFlow;
  readonly waste?: Ratio | undefined;
  /**
   * Built up under the whole wrap, bonded overlap included: covered only where the system was qualified that way, with
   * the energy release rate of that bond.
   */
  readonly underWholeWrap?: boolean | undefined;
  readonly qualifiedOverFiller?: { readonly energyReleaseRate: EnergyReleaseRate } | undefined;
  readonly cure: CureSheet;
}

/** Times of a curing material from its maker, and how they may be moved to another temperature. */
export type CureSheet = ReactionCureSheet | MoistureCureSheet;

/** Two parts that react with each other: times move with temperature by the Arrhenius law. */
export interface ReactionCureSheet {
  readonly mechanism: 'two-part reaction';
  readonly referenceTemperature: Temperature;
  /** From mixing to full cure at the reference temperature. */
  readonly cureTime: Time;
  /** From mixing until the material can no longer be worked, at the reference temperature. */
  readonly workingTime: Time;
  readonly activationEnergy?: ActivationEnergy | undefined;
  /** Span of temperature in which the maker tested. */
  readonly testedFrom: Temperature;
  readonly testedTo: Temperature;
  /** Below this the reaction stalls. */
  readonly minimumTemperature: Temperature;
}

/** Cured by moisture: the maker's own rows or nothing. */
export interface MoistureCureSheet {
  readonly mechanism: 'moisture';
  readonly rows: readonly MoistureCureRow[];
}

/** One row of the maker's table: times at one temperature and humidity. */
export interface MoistureCureRow {
  readonly temperature: Temperature;
  readonly humidity: Ratio;
  readonly cureTime: Time;
  readonly workingTime: Time;
}

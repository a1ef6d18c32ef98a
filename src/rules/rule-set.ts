import type { SourceKey } from '../formula/index.js';
import type {
  GaugePressure,
  LeakSeverity,
  Length,
  Strain,
  Stress,
  Temperature,
  TemperatureDifference,
  Time,
} from '../quantity/index.js';
import type { Rule, UnknownRule } from './rule.js';

/** Class of a repair: 1 low-hazard utilities, 2 fire water, 3 hydrocarbons, gas and all that is harsher. */
export type RepairClass = 1 | 2 | 3;

/** How often the design load acts. */
export type Loading = 'rare' | 'continuous';

/** Default strains for a design life up to `life`. */
export interface DefaultStrainRow {
  /** The longest design life that the row holds for. */
  readonly life: Time;
  /** Strain round the pipe. */
  readonly hoop: Strain;
  /** Axial strain of a laminate whose axial modulus is above the stated share of the hoop modulus. */
  readonly axial: Strain;
  /** Axial strain of a laminate that is no stiffer than that along the pipe. */
  readonly softAxial: Strain;
}

/** Factor on the long-term strength for a design life up to `life`. */
export interface PerformanceRow {
  /** The longest design life that the row holds for. */
  readonly life: Time;
  /** Share of the long-term strength that may be used. */
  readonly factor: number;
}

/** What a repair class covers. `null`: up to the limit to which the system is qualified. */
export interface ClassLimits {
  /** The service that the class is meant for, in words. */
  readonly service: string;
  /** Highest design pressure, which may be reached. */
  readonly highestPressure: GaugePressure | null;
  /** Highest design temperature. */
  readonly highestTemperature: Temperature | null;
  /** Whether the temperature may reach that limit; else it has to stay below. */
  readonly mayReachTemperature: boolean;
  /** Whether it covers lines that must work in an emergency. */
  readonly safetyCritical: boolean;
  /** Whether it covers gas and hazardous contents. */
  readonly gasOrHazard: boolean;
}

/** Above any of these a repair counts as high risk. */
export interface HighRiskLimits {
  /** Design pressure from which on a repair counts as high risk. */
  readonly pressure: GaugePressure;
  /** Design temperature from which on it does. */
  readonly highestTemperature: Temperature;
  /** Design temperature at and below which it does. */
  readonly lowestTemperature: Temperature;
  /** Leak severity beyond which it does. */
  readonly leakSeverity: LeakSeverity;
  /** Diameter of the hole over outside diameter of the pipe beyond which it does. */
  readonly holeOverDiameter: number;
}

/** A value for each class of repair. */
export type ByClass<T> = Readonly<Record<RepairClass, T>>;

/**
 * One set of design rules as data. Both sets have this one shape, so a formula takes numbers and never asks which set
 * they are from.
 */
export interface RuleSet {
  /** Name of the document, by which a set of the user's own is held against that of this library. */
  readonly id: string;
  /** Edition of the document that the values are recalled from. */
  readonly edition: string;
  /** How a sheet may name the set, as long as no body page of it was read. */
  readonly heading: string;
  /** Absent where the set is a user's own. */
  readonly source?: SourceKey | undefined;

  /** What each class of repair covers. */
  readonly classes: ByClass<Rule<ClassLimits>>;
  /** The longest design life that the set has rules for. */
  readonly longestLife: Rule<Time>;
  /** Remaining wall at the end of life below which the defect counts as through-wall. */
  readonly throughWallBelow: Rule<Length>;

  /** Strain that a laminate may carry where no long-term test allows another, by loading, class and life. */
  readonly defaultStrains: Readonly<Record<Loading, ByClass<Rule<readonly DefaultStrainRow[]>>>>;
  /** Axial over hoop modulus above which the `axial` column of the default strains holds. */
  readonly modulusShare: Rule<number>;
  /** Short-term strain to failure that the default strains require. */
  readonly leastFailureStrain: Rule<Strain>;
  /** f = quadratic x^2 + linear x + constant, at most 1, with x = (T_m - T_d)/unit. */
  readonly temperatureFactor: Rule<{
    /** Coefficient of x squared. */
    readonly quadratic: number;
    /** Coefficient of x. */
    readonly linear: number;
    /** Factor at a temperature margin of 0. */
    readonly constant: number;
    /** Temperature difference that counts as x = 1. */
    readonly unit: TemperatureDifference;
  }>;
  /** How the difference in thermal expansion is taken off the strain. */
  readonly mismatch: Rule<'absolute'>;
  /** f = sqrt(R^2 + (1 - R^2)/(slope log10 N - intercept)), with no reduction up to `freeCycles`. */
  readonly cyclic: Rule<{
    /** Factor on the decadic logarithm of the cycles. */
    readonly slope: number;
    /** What is taken off that product. */
    readonly intercept: number;
    /** Cycles over the design life up to which nothing is taken off. */
    readonly freeCycles: number;
    /** Cycles up to which the form is known. */
    readonly lastCycles: number;
  }>;
  /** What is taken off the transition temperature to reach the upper temperature limit. */
  readonly temperatureMargin: {
    /** Off the glass transition temperature. */
    readonly glassTransition: {
      /** Where the pipe does not leak within the life of the repair. */
      readonly notLeaking: Rule<TemperatureDifference>;
      /** Where it leaks. */
      readonly leaking: Rule<TemperatureDifference>;
    };
    /** Off the heat deflection temperature. */
    readonly heatDeflection: {
      /** Where the pipe does not leak within the life of the repair. */
      readonly notLeaking: Rule<TemperatureDifference>;
      /** Where it leaks. */
      readonly leaking: Rule<TemperatureDifference>;
    };
  };

  /** Factors on a long-term strength, by what the strength was measured in. */
  readonly performance: {
    /** For a strength that specimens survived for 1000 h. */
    readonly survivalTest: ByClass<Rule<readonly PerformanceRow[]>>;
    /** For a strength from a regression to the design life. */
    readonly designLifeTest: ByClass<Rule<readonly PerformanceRow[]>>;
  };

  /** f = firstYear 10^(-decay (life in years - 1)); a fixed factor has no decay. */
  readonly leakFactor: ByClass<
    Rule<{
      /** Factor for a life of up to a year. */
      readonly firstYear: number;
      /** Decades by which it falls with each further year; 0 for a fixed factor. */
      readonly decay: number;
    }>
  >;
  /** The less conservative factor that a design may ask for by name. */
  readonly leakFactorOption: ByClass<
    Rule<{
      /** Factor for a life of up to a year. */
      readonly firstYear: number;
      /** Decades by which it falls with each further year. */
      readonly decay: number;
    } | null>
  >;
  /** Factor for heat on the resistance over a hole: not known. */
  readonly leakTemperatureFactor: UnknownRule;
  /** A leak through a round hole. */
  readonly hole: {
    /** The smallest hole that a laminate is designed for, however small the leak is. */
    readonly leastDiameter: Rule<Length>;
    /** d <= sqrt(limit D t). */
    readonly validity: Rule<number>;
    /** Length over width of a defect that still counts as round. */
    readonly aspectRatio: Rule<number>;
  };

  /** How far the laminate reaches beyond the defect. */
  readonly overlap: {
    /** l = coefficient sqrt(D t / divisor). */
    readonly geometry: Rule<{
      /** Factor on the root. */
      readonly coefficient: number;
      /** What diameter times wall thickness is divided by. */
      readonly divisor: number;
    }>;
    /** The shortest overlap on each side. */
    readonly minimum: Rule<Length>;
    /** l = multiple d, for d below share sqrt(D t). */
    readonly hole: Rule<{
      /** Overlap over diameter of the hole. */
      readonly multiple: number;
      /** The largest such hole over the root of diameter times wall thickness. */
      readonly share: number;
    } | null>;
    /** Factor on the overlap that carries the end load through the bond. */
    readonly adhesiveFactor: Rule<number>;
    /** Strain that the bond has to follow, whatever the life and the class: the largest default of the column. */
    readonly bondStrains: Rule<{
      /** Design life by which the row of the table is taken. */
      readonly life: Time;
      /** Default strains that the axial one is taken from. */
      readonly table: readonly DefaultStrainRow[];
    }>;
    /** Overlap as laid below which no pressure is stated for a repair. */
    readonly leastAvailable: Rule<Length>;
    /** Length of the taper on each side over the thickness of the laminate. */
    readonly taper: Rule<number>;
  };

  /** Outside diameter over thickness at which a laminate no longer counts as thin. */
  readonly thinLaminateRatio: Rule<number>;
  /** The fewest plies of a repair. */
  readonly leastPlies: Rule<number>;
  /** Lap shear strength that the bond has to have. */
  readonly lapShear: {
    /** From here on nothing is said against it. */
    readonly required: Rule<Stress>;
    /** Below this the repair is refused; between the two a warning asks. */
    readonly withWarning: Rule<Stress>;
  };
  /** How much thicker a laminate is on a fitting than on straight pipe. */
  readonly components: {
    /** Factor on a bend, where its inside does not ask for more. */
    readonly bend: Rule<number>;
    /** Factor on a flange. */
    readonly flange: Rule<number>;
    /** Exponent by which a short overlap takes from the thickness that counts. */
    readonly overlayExponent: Rule<number>;
  };
  /** Pressure test of the finished repair. */
  readonly systemTest: {
    /** Test pressure over design pressure. */
    readonly factor: Rule<number>;
    /** How long the pressure is held. */
    readonly hold: Rule<Time>;
  };
  /** Screening for high risk in SI and in US customary units, which the document rounds apart: a repair that passes either limit is one. */
  readonly highRisk: {
    /** In SI; `null` where the set does not screen so. */
    readonly si: Rule<HighRiskLimits | null>;
    /** In US customary units. */
    readonly us: Rule<HighRiskLimits | null>;
  };
  /** Interval of re-inspection: not known, the owner of the line sets it. */
  readonly inspectionInterval: UnknownRule;
}

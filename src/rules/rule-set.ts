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
  readonly life: Time;
  readonly hoop: Strain;
  /** Axial strain of a laminate whose axial modulus is above the stated share of the hoop modulus. */
  readonly axial: Strain;
  /** Axial strain of a laminate that is no stiffer than that along the pipe. */
  readonly softAxial: Strain;
}

/** Factor on the long-term strength for a design life up to `life`. */
export interface PerformanceRow {
  readonly life: Time;
  readonly factor: number;
}

/** What a repair class covers. `null`: up to the limit to which the system is qualified. */
export interface ClassLimits {
  readonly service: string;
  readonly highestPressure: GaugePressure | null;
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
  readonly pressure: GaugePressure;
  readonly highestTemperature: Temperature;
  readonly lowestTemperature: Temperature;
  readonly leakSeverity: LeakSeverity;
  readonly holeOverDiameter: number;
}

/** A value for each class of repair. */
export type ByClass<T> = Readonly<Record<RepairClass, T>>;

/**
 * One set of design rules as data. Both sets have this one shape, so a formula takes numbers and never asks which set
 * they are from.
 */
export interface RuleSet {
  readonly id: string;
  readonly edition: string;
  /** How a sheet may name the set, as long as no body page of it was read. */
  readonly heading: string;
  /** Absent where the set is a user's own. */
  readonly source?: SourceKey | undefined;

  readonly classes: ByClass<Rule<ClassLimits>>;
  readonly longestLife: Rule<Time>;
  /** Remaining wall at the end of life below which the defect counts as through-wall. */
  readonly throughWallBelow: Rule<Length>;

  readonly defaultStrains: Readonly<Record<Loading, ByClass<Rule<readonly DefaultStrainRow[]>>>>;
  /** Axial over hoop modulus above which the `axial` column of the default strains holds. */
  readonly modulusShare: Rule<number>;
  /** Short-term strain to failure that the default strains require. */
  readonly leastFailureStrain: Rule<Strain>;
  /** f = quadratic x^2 + linear x + constant, at most 1, with x = (T_m - T_d)/unit. */
  readonly temperatureFactor: Rule<{
    readonly quadratic: number;
    readonly linear: number;
    readonly constant: number;
    readonly unit: TemperatureDifference;
  }>;
  /** How the difference in thermal expansion is taken off the strain. */
  readonly mismatch: Rule<'absolute'>;
  /** f = sqrt(R^2 + (1 - R^2)/(slope log10 N - intercept)), with no reduction up to `freeCycles`. */
  readonly cyclic: Rule<{
    readonly slope: number;
    readonly intercept: number;
    readonly freeCycles: number;
    readonly lastCycles: number;
  }>;
  /** What is taken off the transition temperature to reach the upper temperature limit. */
  readonly temperatureMargin: {
    readonly glassTransition: {
      readonly notLeaking: Rule<TemperatureDifference>;
      readonly leaking: Rule<TemperatureDifference>;
    };
    readonly heatDeflection: {
      readonly notLeaking: Rule<TemperatureDifference>;
      readonly leaking: Rule<TemperatureDifference>;
    };
  };

  /** Factors on a long-term strength, by what the strength was measured in. */
  readonly performance: {
    readonly survivalTest: ByClass<Rule<readonly PerformanceRow[]>>;
    readonly designLifeTest: ByClass<Rule<readonly PerformanceRow[]>>;
  };

  /** f = firstYear 10^(-decay (life in years - 1)); a fixed factor has no decay. */
  readonly leakFactor: ByClass<Rule<{ readonly firstYear: number; readonly decay: number }>>;
  /** The less conservative factor that a design may ask for by name. */
  readonly leakFactorOption: ByClass<Rule<{ readonly firstYear: number; readonly decay: number } | null>>;
  readonly leakTemperatureFactor: UnknownRule;
  readonly hole: {
    readonly leastDiameter: Rule<Length>;
    /** d <= sqrt(limit D t). */
    readonly validity: Rule<number>;
    /** Length over width of a defect that still counts as round. */
    readonly aspectRatio: Rule<number>;
  };

  readonly overlap: {
    /** l = coefficient sqrt(D t / divisor). */
    readonly geometry: Rule<{ readonly coefficient: number; readonly divisor: number }>;
    readonly minimum: Rule<Length>;
    /** l = multiple d, for d below share sqrt(D t). */
    readonly hole: Rule<{ readonly multiple: number; readonly share: number } | null>;
    readonly adhesiveFactor: Rule<number>;
    /** Strain that the bond has to follow, whatever the life and the class: the largest default of the column. */
    readonly bondStrains: Rule<{ readonly life: Time; readonly table: readonly DefaultStrainRow[] }>;
    readonly leastAvailable: Rule<Length>;
    readonly taper: Rule<number>;
  };

  readonly thinLaminateRatio: Rule<number>;
  readonly leastPlies: Rule<number>;
  readonly lapShear: { readonly required: Rule<Stress>; readonly withWarning: Rule<Stress> };
  readonly components: {
    readonly bend: Rule<number>;
    readonly flange: Rule<number>;
    readonly overlayExponent: Rule<number>;
  };
  readonly systemTest: { readonly factor: Rule<number>; readonly hold: Rule<Time> };
  /** Screening for high risk in SI, and in US customary units as the document rounds it. */
  readonly highRisk: {
    readonly si: Rule<HighRiskLimits | null>;
    readonly us: Rule<HighRiskLimits | null>;
  };
  readonly inspectionInterval: UnknownRule;
}

import type { SourceKey, SourceTag } from '../../formula/index.js';
import type { ActivationEnergy, RateConstant } from '../../quantity/index.js';

/** A cure law with its constants: a is the degree of cure, and each k = A exp(-E/(R T)). */
export type KineticLaw =
  | {
      /** da/dt = k (1 - a)^n. */
      readonly law: 'n-th order';
      /** A of the rate constant. */
      readonly frequencyFactor: RateConstant;
      /** E of the rate constant. */
      readonly activationEnergy: ActivationEnergy;
      /** Exponent of 1 - a. */
      readonly n: number;
    }
  | {
      /** da/dt = k a^m (1 - a)^n. */
      readonly law: 'autocatalytic';
      /** A of the rate constant. */
      readonly frequencyFactor: RateConstant;
      /** E of the rate constant. */
      readonly activationEnergy: ActivationEnergy;
      /** Exponent of a. */
      readonly m: number;
      /** Exponent of 1 - a. */
      readonly n: number;
      /** 1 + exp(C (a - (a_C0 + a_CT T))) divides the rate. */
      readonly diffusion?: {
        /** C, how sharply diffusion takes over. */
        readonly constant: number;
        /** a_C0, at 0 K. */
        readonly atZero: number;
        /** a_CT, by which it rises with each kelvin. */
        readonly perKelvin: number;
      };
    }
  | {
      /** da/dt = (k_1 + k_2 a) (1 - a) (ceiling - a), and from `switchAt` on k_3 (1 - a). */
      readonly law: 'two-branch';
      /** A of the three rate constants. */
      readonly frequencyFactors: readonly [RateConstant, RateConstant, RateConstant];
      /** E of the three rate constants. */
      readonly activationEnergies: readonly [ActivationEnergy, ActivationEnergy, ActivationEnergy];
      /** Degree of cure from which the second branch holds. */
      readonly switchAt: number;
      /** Degree of cure at which the rate of the first branch would end. */
      readonly ceiling: number;
    };

/** Name of a published set of constants. */
export type KineticSetName =
  | 'two-branch epoxy'
  | 'glass-polyester'
  | 'two-part polyurethane'
  | 'diffusion-limited epoxy';

/** A published set of constants, with where it comes from and what speaks against it. */
export interface KineticSet {
  /** Name by which it is asked for. */
  readonly name: KineticSetName;
  /** Rate law with its constants. */
  readonly law: KineticLaw;
  /** Where the constants were printed. */
  readonly source: SourceKey;
  /** How that source was reached. */
  readonly tag: SourceTag;
  /** What speaks against using it. */
  readonly doubt?: string;
}

const perMinute = (value: number): RateConstant => (value / 60) as RateConstant;
const joules = (value: number): ActivationEnergy => value as ActivationEnergy;

/**
 * Published constants. None of them is a pipe repair resin: they show the method and carry the checks; a design takes the
 * maker's own times. A set for an E44 epoxy with an aromatic amine is left out: it contradicts its own cure schedule.
 */
export const kineticSets: readonly KineticSet[] = [
  {
    name: 'two-branch epoxy',
    law: {
      law: 'two-branch',
      frequencyFactors: [perMinute(2.101e9), perMinute(-2.014e9), perMinute(1.96e5)],
      activationEnergies: [joules(80700), joules(77800), joules(56600)],
      switchAt: 0.3,
      ceiling: 0.47,
    },
    source: 'lee-loos-springer-1982',
    tag: 'secondary',
    doubt: 'one public program has 2.102e9 per minute for the first factor: times to 0.3 fall by 0.1 per cent',
  },
  {
    name: 'glass-polyester',
    law: {
      law: 'autocatalytic',
      frequencyFactor: perMinute(3.7e22),
      activationEnergy: joules(167400),
      m: 0.524,
      n: 1.476,
    },
    source: 'bogetti-gillespie-1991',
    tag: 'secondary',
  },
  {
    name: 'two-part polyurethane',
    law: {
      law: 'n-th order',
      frequencyFactor: 234400 as RateConstant,
      activationEnergy: joules(43590),
      n: 0.87,
    },
    source: 'polyurethane-kinetics-2013',
    tag: 'secondary',
    doubt: 'a fit to DSC runs: not a field cure time',
  },
  {
    name: 'diffusion-limited epoxy',
    law: {
      law: 'autocatalytic',
      frequencyFactor: 152800 as RateConstant,
      activationEnergy: joules(66500),
      m: 0.8129,
      n: 2.736,
      diffusion: { constant: 43.09, atZero: -1.684, perKelvin: 0.005475 },
    },
    source: 'hubert-2001',
    tag: 'recalled',
    doubt: 'constants not confirmed by a public page',
  },
];

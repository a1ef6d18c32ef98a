import type { HoleTest } from './energy-from-tests.js';
import type { Loss } from './loss.js';
import { readQuantity } from './read-quantity.js';
import { type Confirmed, type RuleValues, ruleValues } from './rule-values.js';

/** What the second route takes from the document of a case, every quantity in SI. What is `none` is not there. */
export interface Job {
  readonly date?: string;
  readonly basis: 'ISO 24817' | 'ASME PCC-2';
  /** Of the basis, with what the case confirms. */
  readonly rules: RuleValues;
  /** Losses that lie apart from the defect. */
  readonly apart: readonly Loss[];
  /** How far beyond the defect as stated those reach that act with it. */
  readonly reach: number;
  readonly confirmed?: readonly Confirmed[];
  readonly pipe: {
    readonly outsideDiameter?: number;
    readonly circumference?: number;
    readonly wallThickness: number;
    readonly material: {
      readonly yieldStrength: number;
      readonly tensileStrength?: number;
      readonly allowableStress?: number;
      readonly modulus?: number;
      readonly thermalExpansion?: number;
    };
    readonly cathodicProtection?: unknown;
  };
  readonly service: {
    readonly contents: string;
    readonly phase: 'liquid' | 'gas' | 'two-phase';
    readonly hazards: readonly string[];
    readonly safetyCritical: boolean;
    readonly designPressure: number;
    /** As it is stated, where a surge takes its place. */
    readonly statedPressure?: number;
    readonly designTemperature: number;
    readonly lowestTemperature?: number;
    /** `included` where the design pressure holds it. */
    readonly surge?: 'included' | number;
    readonly cracking?: 'none' | { readonly environment: string; readonly test?: { readonly date: string } };
    readonly recentPressure?: { readonly pressure: number; readonly date: string };
  };
  readonly line: { readonly state: string; readonly pressure?: number; readonly writtenProcedure?: string };
  readonly defect: {
    readonly kind: string;
    readonly cause: string;
    readonly axialLength: number;
    readonly circumferentialWidth: number;
    readonly remainingWall: number;
    readonly readingError?: number;
    readonly nearestAttachment?: number;
    readonly holeDiameter?: number;
    readonly holeAtEndOfLife?: number | undefined;
    readonly slot?: { readonly axialLength: number; readonly circumferentialWidth: number };
    readonly profile?: readonly { readonly position: number; readonly depth: number }[];
    /** Left out where nobody says; none where somebody looked. */
    readonly neighbours?: 'none' | readonly Neighbour[];
    readonly growth?: {
      readonly depth:
        | number
        | { readonly previousWall: number; readonly sincePrevious: number; readonly service: number };
      readonly length: number;
    };
  };
  readonly loads: {
    readonly axialForce?: number;
    /** Left out where nobody says; none of a line that is free to move. */
    readonly heldLine?: 'none' | { readonly tieInTemperature: number };
    readonly bendingMoment?: number;
    readonly torsion?: number;
    readonly shearForce?: number;
    readonly externalPressure?: number;
    readonly soil?: {
      readonly cover: number;
      readonly density: number;
      readonly waterAbove?: number;
      readonly traffic?: number;
    };
    readonly freeSpan?: number;
    readonly cycles?: { readonly number: number; readonly lowestPressure: number; readonly highestPressure: number };
  };
  readonly fitting?: { readonly kind: string; readonly bendRadius?: number };
  readonly assessment?: {
    readonly method?: string;
    readonly flowStress?: string;
    readonly safetyFactor?: number;
    readonly designFactor?: number;
  };
  readonly repair: {
    readonly class: 1 | 2 | 3;
    readonly life: number;
    readonly method?: string;
    readonly loading?: 'rare' | 'continuous';
    readonly leakFactorByFormula?: boolean;
    readonly availableOverlap?: number;
    readonly inspectionInterval?: number;
  };
  readonly laminate: Laminate;
  readonly wrap: Wrap;
  readonly resin?: {
    readonly fabricWeight: number;
    readonly fibreMassFraction: number;
    readonly parts: Parts;
    readonly kitMass: number;
    readonly rate: number;
    readonly waste?: number;
  };
  readonly filler?: {
    readonly name: string;
    readonly thickness: number;
    readonly thicknessOverDefect: number;
    readonly greatestLift?: number;
    readonly density: number;
    readonly parts: Parts;
    readonly kitMass: number;
    readonly rate: number;
    readonly waste?: number;
    readonly underWholeWrap?: boolean;
    readonly qualifiedOverFiller?: { readonly energyReleaseRate: number };
    readonly cure: CureSheet;
  };
  readonly site: Site;
  readonly seal?: Seal;
  readonly crew?: { readonly layingSpeed: number; readonly crews: number; readonly soakTime?: number };
  readonly acceptance?: {
    readonly hardnessScale: 'Shore D' | 'Barcol';
    readonly qualifiedHardness: number;
    readonly pressureTest:
      | 'none'
      | {
          readonly medium: 'liquid' | 'gas';
          readonly liquid?: 'fresh water' | 'other';
          readonly length: number;
          readonly atmosphere: number;
          readonly lowestRating?: number;
        };
  };
}

interface Neighbour {
  readonly cause: string;
  readonly gapAlong: number;
  readonly gapRound: number;
  readonly axialLength: number;
  readonly circumferentialWidth: number;
  readonly remainingWall: number;
}

export interface Parts {
  readonly base: number;
  readonly hardener: number;
}

interface Laminate {
  readonly name: string;
  readonly hoopModulus: number;
  readonly axialModulus: number;
  readonly poissonRatio: number;
  readonly shearModulus?: number;
  readonly plyThickness: number;
  readonly qualifiedPlies?: number;
  readonly transitionCuredAt?: number;
  readonly fibre?: 'glass' | 'carbon';
  readonly isolatingLayer?: string;
  readonly strainToFailure?: number;
  readonly hoopExpansion?: number;
  readonly axialExpansion?: number;
  readonly glassTransition?: number;
  readonly heatDistortion?: number;
  readonly lowestTemperature?: number;
  readonly resists?: Resists;
  readonly energyReleaseRate?: number;
  readonly holeTests?: readonly HoleTest[];
  readonly energyReleaseRateOverSeal?: { readonly energyReleaseRate: number; readonly footprint: number };
  readonly atDesignTemperature?: {
    readonly energyReleaseRate: number;
    readonly hoopModulus: number;
    readonly axialModulus: number;
  };
  readonly lapShearStrength?: number;
  readonly longTermStrength?: {
    readonly strength: number;
    readonly test: '1000 h survival' | 'design life regression';
    readonly testTemperature?: number;
    readonly second?: { readonly testTemperature: number; readonly strength: number };
  };
  readonly cure: CureSheet;
}

export interface Resists {
  readonly contents: string;
  readonly temperature: number;
}

type Wrap =
  | {
      readonly form: 'tape';
      readonly width: number;
      readonly overlap: number;
      readonly rollLength: number;
      readonly waste?: number;
    }
  | {
      readonly form: 'sheet';
      readonly width: number;
      readonly rollLength: number;
      readonly finalLap?: number;
      readonly waste?: number;
    };

export type CureSheet =
  | {
      readonly mechanism: 'two-part reaction';
      readonly referenceTemperature: number;
      readonly cureTime: number;
      readonly workingTime: number;
      readonly activationEnergy?: number;
      readonly testedFrom: number;
      readonly testedTo: number;
      readonly minimumTemperature: number;
    }
  | {
      readonly mechanism: 'moisture';
      readonly rows: readonly {
        readonly temperature: number;
        readonly humidity: number;
        readonly cureTime: number;
        readonly workingTime: number;
      }[];
    };

interface Site {
  readonly pipeTemperature: number;
  readonly airTemperature: number;
  readonly relativeHumidity: number;
  readonly instruments?: { readonly temperatureError: number; readonly humidityError: number };
  readonly history?: readonly { readonly duration: number; readonly temperature: number }[];
  readonly forecast?: readonly {
    readonly duration: number;
    readonly pipeTemperature: number;
    readonly airTemperature: number;
    readonly relativeHumidity: number;
  }[];
  readonly surface?: {
    readonly grade: string;
    readonly profile: number;
    readonly salts?: number;
    readonly qualified?: { readonly grade: string; readonly profile: number };
  };
}

export interface Seal {
  readonly siteLimit: number;
  readonly bands?: 'removed before the wrap' | 'left';
  readonly collar?: number | 'none';
  readonly pad: { readonly multiple: number; readonly multipleOf: string; readonly margin: number };
  readonly putty: { readonly name: string; readonly resists?: Resists; readonly cure: CureSheet };
  readonly band: {
    readonly width: number;
    readonly thickness: number;
    readonly strength: number;
    readonly factor: number;
    readonly friction: number;
    readonly count: number;
    readonly overlap: number;
    readonly holdingFactor: number;
  };
  readonly fastener: {
    readonly threadDiameter: number;
    readonly nutFactor: number;
    readonly scatter: number;
    readonly permittedTension: number;
  };
  readonly sheet: {
    readonly across?: number;
    readonly thickness: number;
    readonly modulus: number;
    readonly yieldStrength: number;
    readonly poissonRatio: number;
    readonly factor: number;
    readonly support: 'clamped' | 'simply supported';
  };
  readonly pipeFactor: number;
  readonly fluid?:
    | { readonly phase: 'liquid'; readonly density: number }
    | {
        readonly phase: 'gas';
        readonly molarMass: number;
        readonly heatCapacityRatio: number;
        readonly atmosphere: number;
      };
}

/** Fields that hold words, even where they begin with a digit. */
const WORDS = new Set([
  'title',
  'reference',
  'date',
  'note',
  'name',
  'contents',
  'statedBy',
  'start',
  'grade',
  'writtenProcedure',
  'flowStress',
  'edition',
  'underWrap',
]);

/** Fields in which `none` is a statement of its own. */
const KEEPS_NONE = new Set([
  'collar',
  'pressureTest',
  'writtenProcedure',
  'cracking',
  'cathodicProtection',
  'neighbours',
  'heldLine',
]);

function inSi(value: unknown, key: string): unknown {
  if (typeof value === 'string') {
    if (value === 'none') return KEEPS_NONE.has(key) ? value : undefined;
    return WORDS.has(key) || !/^-?\d/u.test(value) || value === '1000 h survival' ? value : readQuantity(value);
  }
  if (Array.isArray(value)) return value.map((row) => inSi(row, key));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, member]) => [name, inSi(member, name)]));
}

/** Reads the document of a case. It is taken as valid: whether it is one is for the door of the library. */
export function readJob(document: unknown): Job {
  const read = inSi(document, '') as Omit<Job, 'rules' | 'apart' | 'reach'>;
  const job: Job = { ...read, rules: ruleValues(read.basis, read.confirmed), apart: [], reach: 0 };
  const { surge, designPressure } = job.service;
  // A surge above the design pressure is what everything is designed for.
  if (typeof surge !== 'number' || surge <= designPressure) return job;
  return { ...job, service: { ...job.service, designPressure: surge, statedPressure: designPressure } };
}

import { isCalculationError, properFraction, refuse, wholeNumber } from '../formula/index.js';
import { type DesignOptions, designRepair, type LaidInCase, laidInCase, type RepairCase } from '../repair/index.js';
import { type Distribution, type ValueAt, valueAt } from './distribution.js';
import { type DesignPoint, firstOrder } from './first-order.js';
import { inputAt, type NumericInput, numericInputs, withInputs } from './inputs.js';
import { type Draw, type Simulation, simulate } from './simulate.js';

/** What is known of the spread of a case. What is not named, or named `none`, stays as the case states it. */
export interface Spread {
  /** The inputs say nothing of each other: nothing else is computed here, and whoever asks has to say so. */
  readonly dependence: 'none';
  /** Distribution of each field by its path; none for one that is known. */
  readonly inputs: Readonly<Record<string, Distribution | 'none'>>;
}

/** How cases are drawn, and the options of the design. */
export interface ShortfallOptions extends DesignOptions {
  /** Draws; 10,000 unless given. */
  readonly samples?: number | undefined;
  /** Of the generator; 1 unless given. */
  readonly seed?: number | undefined;
  /** Of the confidence interval; 0.95 unless given. */
  readonly level?: number | undefined;
}

/** The point of one criterion by the first-order method, or why there is none. */
export type CriterionPoint = {
  /** Which criterion of the design. */
  readonly criterion: string;
} & (
  | {
      /** The point, with its chance. */
      readonly found: DesignPoint;
      /** The fields of the case at that point, by path, in SI. */
      readonly values: Readonly<Record<string, number>>;
    }
  | {
      /** Why there is none. */
      readonly because: string;
    }
);

/** How likely the plies of a design fall short of the pressure that they are asked for. */
export interface Shortfall {
  /** Plies as laid: they are not changed. */
  readonly plies: number;
  /** What the plies resist and are asked for in the case as stated. */
  readonly stated: {
    /** Gauge pressure that the plies resist [Pa]. */
    readonly resistance: number;
    /** Gauge pressure that they are asked for, a stated surge counted [Pa]. */
    readonly pressure: number;
    /** The criterion by which they resist least. */
    readonly governing: string;
  };
  /** Every number of the case, with its distribution or `none`. */
  readonly inputs: readonly (NumericInput & {
    /** As stated; `none` where the field stays as the case has it. */
    readonly distribution: Distribution | 'none';
  })[];
  /** The chance by drawing cases. */
  readonly simulation: Simulation;
  /** The chance by the first-order method, line by line. */
  readonly firstOrder: {
    /** One for each criterion of the design. */
    readonly lines: readonly CriterionPoint[];
    /** Of the nearest of them; absent where none was found. */
    readonly governing?: string | undefined;
    /** Reliability index of that criterion. */
    readonly index?: number | undefined;
    /** Chance to fall short by that criterion. */
    readonly probability?: number | undefined;
    /** No series of these criteria falls short more often than their sum. */
    readonly atMost?: number | undefined;
    /** Whether that probability lies in the interval of the simulation. */
    readonly agrees?: boolean | undefined;
  };
}

/**
 * How likely the plies of a design resist less than the pressure that they are asked for, from stated distributions of its
 * inputs: by a seeded Monte Carlo over the lines of the design, and by a first-order method for each criterion.
 *
 * The resistance is the rated one, with the allowable strains and service factors of the rule set in it. So this is the chance
 * that the repair falls short of its rating, and no chance of a failure. A draw of which the library cannot tell the
 * resistance, or against which it has a reason, counts as short.
 *
 * @param repairCase that comes to a design
 * @param spread distributions of the inputs that are uncertain
 * @param options of the draws, and a rule set of the user's own
 * @throws CalculationError `invalid-input` for a path without a number, a count, parameters that no distribution has, or a
 *   dependence that is not stated; `no-solution` where the case comes to no design
 */
export function shortfall(repairCase: RepairCase, spread: Spread, options: ShortfallOptions = {}): Shortfall {
  const { samples = 10_000, seed = 1, level = 0.95, rules } = options;
  wholeNumber(samples, 1, 'samples');
  wholeNumber(seed, 0, 'seed');
  properFraction(level, 'level');
  const spans = spansOf(repairCase, spread);
  const design = designRepair(repairCase, { rules });
  if (design.verdict !== 'designed')
    unfit(
      'no-solution',
      'the verdict of the case',
      design.verdict,
      'must be designed: there are no plies to fall short',
    );
  const { resistance } = design.laminate;
  const valuesAt = (u: readonly number[]) => spans.map(({ path, at }, index) => [path, at(u[index] ?? 0)] as const);
  const ratedAt = (u: readonly number[]): LaidInCase | string => {
    try {
      return laidInCase(design, withInputs(repairCase, valuesAt(u)));
    } catch (error) {
      if (!isCalculationError(error)) throw error;
      return error.message;
    }
  };
  const simulation = simulate((u) => drawn(ratedAt(u)), spans.length, { samples, seed, level });
  const lines = resistance.candidates.map(({ criterion }): CriterionPoint => {
    const found = firstOrder((u) => marginOf(ratedAt(u), criterion), spans.length);
    if (typeof found === 'string') return { criterion, because: found };
    return { criterion, found, values: Object.fromEntries(valuesAt(found.point)) };
  });
  return {
    plies: design.laminate.plies,
    stated: {
      resistance: resistance.value,
      pressure: laidInCase(design, repairCase).pressure,
      governing: resistance.governing,
    },
    inputs: numericInputs(repairCase).map((input) => ({ ...input, distribution: spread.inputs[input.path] ?? 'none' })),
    simulation,
    firstOrder: { lines, ...nearest(lines, simulation) },
  };
}

interface Span {
  readonly path: string;
  readonly at: ValueAt;
}

function spansOf(repairCase: RepairCase, { dependence, inputs }: Spread): Span[] {
  if (dependence !== 'none')
    unfit(
      'invalid-input',
      'dependence',
      dependence ?? 'missing',
      'must be stated as "none": inputs that depend on each other are not computed',
    );
  const spans = Object.entries(inputs).flatMap(([path, distribution]): Span[] => {
    const { kind, value } = inputAt(repairCase, path);
    if (distribution === 'none') return [];
    if (kind === 'count')
      unfit('invalid-input', path, value, 'must be a measure: a count has none of these distributions');
    return [{ path, at: valueAt(path, distribution) }];
  });
  if (spans.length === 0) unfit('invalid-input', 'inputs', 'none', 'must state the distribution of at least one input');
  return spans;
}

/** Whether a draw falls short: on the safe side where nobody can tell. */
function drawn(rated: LaidInCase | string): Draw {
  if (typeof rated === 'string') return { short: true, refused: rated };
  const { resistance, pressure, reasons } = rated;
  if (resistance === undefined || reasons.length > 0)
    return { short: true, refused: reasons[0]?.text ?? 'the lines of the design do not reach this case' };
  return { short: resistance.value < pressure, governing: resistance.governing };
}

/** Resistance by one criterion over the pressure, less one: nought where the laminate just holds. */
function marginOf(rated: LaidInCase | string, criterion: string): number | undefined {
  if (typeof rated === 'string') return undefined;
  const line = rated.resistance?.candidates.find((each) => each.criterion === criterion);
  return line === undefined ? undefined : line.value / rated.pressure - 1;
}

function nearest(lines: readonly CriterionPoint[], { interval }: Simulation): Omit<Shortfall['firstOrder'], 'lines'> {
  const found = lines.flatMap((line) => ('found' in line ? [{ criterion: line.criterion, ...line.found }] : []));
  const [first] = [...found].sort((a, b) => a.index - b.index);
  if (first === undefined) return {};
  const { criterion: governing, index, probability } = first;
  return {
    governing,
    index,
    probability,
    atMost: Math.min(
      1,
      found.reduce((sum, each) => sum + each.probability, 0),
    ),
    agrees: probability >= interval.least && probability <= interval.most,
  };
}

function unfit(code: 'invalid-input' | 'no-solution', parameter: string, value: unknown, constraint: string): never {
  refuse({ code, parameter, value, unit: '', constraint });
}

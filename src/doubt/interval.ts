import type { Outcome, OutcomeName } from '../compare/index.js';
import { finite, nonNegative, refuse } from '../formula/index.js';
import { siUnitOf } from '../repair/case/check-case.js';
import { type Designed, type DesignOptions, designRepair, type RepairCase, type Verdict } from '../repair/index.js';
import { type Answer, answerTo, laidOutcomes } from './answer.js';
import { inputAt, type NumericInput, withInputs } from './inputs.js';

/** How far an input may lie from its value, below and above, in SI; one number for both. Of a temperature in K. */
export type Tolerance =
  | number
  | {
      /** How far it may lie below its value. */
      readonly below: number;
      /** How far it may lie above it. */
      readonly above: number;
    };

/** The tolerances by the paths of the inputs: `{ 'defect.remainingWall': length.mm(0.3) }`. */
export type Tolerances = Readonly<Record<string, Tolerance>>;

/** The values of the inputs at one corner. */
export type Corner = Readonly<Record<string, number>>;

/** An outcome over all corners that were designed, and the corners that make its ends. */
export interface OutcomeInterval {
  /** What it is. */
  readonly name: OutcomeName;
  /** Kind of quantity, or a count. */
  readonly kind: Outcome['kind'];
  /** With the case as it is, in SI. */
  readonly nominal: number | undefined;
  /** Least over all corners, in SI. */
  readonly least: number;
  /** Most over all corners, in SI. */
  readonly most: number;
  /** The corners at which they stand. */
  readonly at: {
    /** Where it is least. */
    readonly least: Corner;
    /** Where it is most. */
    readonly most: Corner;
  };
  /** The criterion that governs at each. */
  readonly governing: {
    /** With the case as it is. */
    readonly nominal: string | undefined;
    /** Where the outcome is least. */
    readonly least: string | undefined;
    /** Where it is most. */
    readonly most: string | undefined;
  };
}

/** A corner that came to no design, and why. */
export interface CornerWithoutDesign {
  /** The corner: which fields stand at which end. */
  readonly corner: Corner;
  /** What became of the case there. */
  readonly verdict: Exclude<Verdict, 'designed'> | 'refused';
  /** Why, in a sentence. */
  readonly because: string;
}

/** What the tolerances of some inputs leave of every outcome. */
export interface DesignInterval {
  /** The design of the case as it is. */
  readonly nominal: Answer;
  /** The fields that were moved, each with its ends in SI. */
  readonly inputs: readonly (NumericInput & {
    /** The value less its tolerance, in SI. */
    readonly least: number;
    /** The value with its tolerance, in SI. */
    readonly most: number;
  })[];
  /** Every corner; the nominal case besides. */
  readonly corners: number;
  /** What the tolerances leave of each outcome; nothing where no corner is designed. */
  readonly outcomes: readonly OutcomeInterval[];
  /** While one corner has no design, the ends say nothing of it: the interval is open on that side. */
  readonly without: readonly CornerWithoutDesign[];
}

/** With so many inputs there are 4096 corners, some seconds of designs. */
const MOST_INPUTS = 12;

/**
 * The interval of every result over the tolerances of some inputs: all corners of the box are designed, and the nominal case.
 * Resistance and margin are those of the plies of the nominal design at the corner: they are laid by then.
 * Nothing is taken for monotone between two of its corners by a guess of the side, and a value inside the box that lies
 * beyond every corner is possible only where a result turns within a tolerance.
 *
 * @param repairCase the nominal case
 * @param tolerances of each field that is uncertain, by its path
 * @param options of each design, such as a rule set of the user's own
 * @throws CalculationError `invalid-input` for a path without a number, a tolerance that is none or below 0, and more than
 *   twelve inputs; as `designRepair`
 */
export function interval(repairCase: RepairCase, tolerances: Tolerances, options: DesignOptions = {}): DesignInterval {
  const inputs = Object.entries(tolerances).map(([path, tolerance]) => spanOf(inputAt(repairCase, path), tolerance));
  if (inputs.length > MOST_INPUTS)
    refuse({
      code: 'invalid-input',
      parameter: 'tolerances',
      value: inputs.length,
      unit: '',
      constraint: `must be at most ${MOST_INPUTS} inputs: each one doubles the corners`,
    });
  const nominal = answerTo(repairCase, options);
  const made = nominal.verdict === 'designed' ? designRepair(repairCase, options) : undefined;
  const laid = made?.verdict === 'designed' ? made : undefined;
  const own = Object.fromEntries(inputs.map(({ path, value }) => [path, value]));
  const at = laid === undefined ? [] : [{ corner: own, outcomes: withLaid(nominal, laid, repairCase) }];
  const without: CornerWithoutDesign[] = [];
  const corners = cornersOf(inputs);
  for (const corner of corners) {
    const cornered = withInputs(repairCase, Object.entries(corner));
    const answer = answerTo(cornered, options);
    const { verdict, because = '' } = answer;
    if (verdict === 'designed') at.push({ corner, outcomes: withLaid(answer, laid, cornered) });
    else without.push({ corner, verdict, because });
  }
  // The case as stated alone is no interval: "nothing moves" would be read where nothing is known.
  const outcomes = without.length === corners.length ? [] : nominal.outcomes.flatMap((outcome) => overAll(outcome, at));
  return { nominal, inputs, corners: corners.length, outcomes, without };
}

/** Resistance and margin are those of the plies as laid: designed anew, each corner would get the plies that it needs. */
function withLaid({ outcomes }: Answer, laid: Designed | undefined, repairCase: RepairCase): readonly Outcome[] {
  if (laid === undefined) return outcomes;
  const rated = laidOutcomes(laid, repairCase);
  return outcomes.map((outcome) => rated.find(({ name }) => name === outcome.name) ?? outcome);
}

function spanOf(input: NumericInput, tolerance: Tolerance): DesignInterval['inputs'][number] {
  const { below, above } = typeof tolerance === 'number' ? { below: tolerance, above: tolerance } : tolerance;
  for (const each of [below, above]) {
    finite(each, input.path, siUnitOf(input.kind));
    nonNegative(each, input.path, siUnitOf(input.kind));
  }
  return { ...input, least: input.value - below, most: input.value + above };
}

/** Every choice of an end for each input. */
function cornersOf(inputs: DesignInterval['inputs']): Corner[] {
  let corners: Corner[] = [{}];
  for (const { path, least, most } of inputs)
    corners = corners.flatMap((corner) => [...new Set([least, most])].map((value) => ({ ...corner, [path]: value })));
  return corners;
}

function overAll(
  { name, kind, value: nominal, governing }: Outcome,
  designed: readonly { readonly corner: Corner; readonly outcomes: readonly Outcome[] }[],
): OutcomeInterval[] {
  const values = designed.flatMap(({ corner, outcomes }) => {
    const outcome = outcomes.find((each) => each.name === name);
    return outcome?.value === undefined ? [] : [{ corner, outcome, value: outcome.value }];
  });
  const [first] = values;
  if (first === undefined) return [];
  const least = values.reduce((best, each) => (each.value < best.value ? each : best));
  const most = values.reduce((best, each) => (each.value > best.value ? each : best));
  return [
    {
      name,
      kind,
      nominal,
      least: least.value,
      most: most.value,
      at: { least: least.corner, most: most.corner },
      governing: {
        nominal: governing,
        least: least.outcome.governing,
        most: most.outcome.governing,
      },
    },
  ];
}

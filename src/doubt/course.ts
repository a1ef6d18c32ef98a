import type { Outcome, OutcomeName } from '../compare/index.js';
import { positive } from '../formula/index.js';
import type { DesignOptions, RepairCase } from '../repair/index.js';
import { answerTo } from './answer.js';
import { inputAt, type NumericInput, withInputs } from './inputs.js';

/** How far and how finely one input is moved. */
export interface CourseSteps extends DesignOptions {
  /** Share of the value, either way; 0.3 unless given. */
  readonly share?: number | undefined;
  /** Of a temperature [K], either way; 15 K unless given. */
  readonly temperature?: number | undefined;
  /** Designs on either side of the case as it is; 20 unless given. */
  readonly each?: number | undefined;
}

/** An outcome over the values of one input. */
export interface OutcomeCourse {
  /** The number of the case that was moved, and its value there. */
  readonly input: NumericInput;
  /** What moved with it. */
  readonly name: OutcomeName;
  /** Kind of the outcome. */
  readonly kind: Outcome['kind'];
  /** From the least value of the input on; no outcome where that case is not designed. */
  readonly points: readonly CoursePoint[];
}

/** One design of a course. */
export interface CoursePoint {
  /** Of the input, in SI. */
  readonly value: number;
  /** In SI; nothing where the case is not designed. */
  readonly outcome: number | undefined;
  /** The criterion that governs it there. */
  readonly governing: string | undefined;
}

/**
 * An outcome against one number of its case, over the real design: the whole job designed anew at each value, so that another
 * criterion may govern, and a value that is not designed leaves a gap.
 *
 * @param repairCase the case about which the input is moved
 * @param path the field that is moved: `defect.remainingWall`
 * @param name the outcome that is followed
 * @param steps how far and how finely it is moved, and the options of each design
 * @throws CalculationError as `designRepair`; where no number stands at the path, and for steps that are not above 0
 */
export function courseOf(
  repairCase: RepairCase,
  path: string,
  name: OutcomeName,
  { share = 0.3, temperature = 15, each = 20, ...options }: CourseSteps = {},
): OutcomeCourse {
  positive(share, 'share', '');
  positive(temperature, 'temperature', 'K');
  positive(each, 'each', '');
  const input = inputAt(repairCase, path);
  const isTemperature = input.kind === 'temperature' || input.kind === 'temperature difference';
  const reach = isTemperature ? temperature : share * Math.abs(input.value);
  let kind: Outcome['kind'] = 'count';
  const points = Array.from({ length: 2 * each + 1 }, (_, index): CoursePoint => {
    const value = input.value + (reach * (index - each)) / each;
    const { verdict, outcomes } = answerTo(withInputs(repairCase, [[path, value]]), options);
    const found = outcomes.find((outcome) => outcome.name === name);
    // The middle one is the case as it is.
    if (index === each && found !== undefined) kind = found.kind;
    return verdict === 'designed'
      ? { value, outcome: found?.value, governing: found?.governing }
      : { value, outcome: undefined, governing: undefined };
  });
  return { input, name, kind, points };
}

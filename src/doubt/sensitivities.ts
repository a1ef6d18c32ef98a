import type { Outcome, OutcomeName } from '../compare/index.js';
import { positive } from '../formula/index.js';
import type { DesignOptions, RepairCase } from '../repair/index.js';
import { type Answer, answerTo } from './answer.js';
import { type NumericInput, numericInputs, withInputs } from './inputs.js';

/** By how much each input is moved, either way. */
export interface Steps extends DesignOptions {
  /** Share of the value; 0.01 unless given. */
  readonly share?: number | undefined;
  /** Of a temperature [K], which has no share: its nought is chosen by nobody at the pipe; 1 K unless given. */
  readonly temperature?: number | undefined;
}

/** An outcome with one input moved either way. */
export interface Moved {
  /** What moved. */
  readonly name: OutcomeName;
  /** Kind of quantity, or a count. */
  readonly kind: Outcome['kind'];
  /** With the case as it is, in SI. */
  readonly at: number;
  /** With the input below and above; absent where that case comes to no such number. */
  readonly below: number | undefined;
  /** With the field moved up, in SI. */
  readonly above: number | undefined;
  /** The larger change of the two, relative to the outcome, with its sign as the input grows. */
  readonly change: number;
  /** The criterion that governs at each. */
  readonly governing: {
    /** With the case as it is. */
    readonly at: string | undefined;
    /** With the input moved down. */
    readonly below: string | undefined;
    /** With the input moved up. */
    readonly above: string | undefined;
  };
  /** Whether another criterion governs on either side: beyond that point the slope is another one. */
  readonly governingChanges: boolean;
}

/** What one input moves. */
export interface Sensitivity extends NumericInput {
  /** How far the field was moved, in SI. */
  readonly step: number;
  /** Verdict with the field moved down and up. */
  readonly verdicts: {
    /** With the field moved down. */
    readonly below: Answer['verdict'];
    /** With the field moved up. */
    readonly above: Answer['verdict'];
  };
  /** Why a side is not designed. */
  readonly because: {
    /** With the field moved down; absent where that case is designed. */
    readonly below?: string | undefined;
    /** With the field moved up; absent where that case is designed. */
    readonly above?: string | undefined;
  };
  /** What each outcome did. */
  readonly moves: readonly Moved[];
}

/** How each outcome of a design moves with each number of its case. */
export interface Sensitivities {
  /** The design of the case as it is. */
  readonly at: Answer;
  /** Share of its value by which a field was moved. */
  readonly share: number;
  /** Kelvins by which a temperature was moved. */
  readonly temperature: number;
  /** Each field that was moved. */
  readonly inputs: readonly Sensitivity[];
  /** Inputs that are nought, of which a share moves nothing. */
  readonly atNought: readonly NumericInput[];
  /** For each outcome the inputs that move it, the strongest first. */
  readonly ranked: Readonly<
    Partial<
      Record<
        OutcomeName,
        readonly {
          /** The field that moves it. */
          readonly path: string;
          /** By how much, relative to the outcome, with its sign as the field grows. */
          readonly change: number;
        }[]
      >
    >
  >;
}

/**
 * How each result of a design moves with each number of its case, over the real design: every input is moved a step down and
 * a step up, and the whole job designed again, so that another criterion may govern, which is named.
 *
 * @param repairCase the case about which each input is moved
 * @param steps by how much, and the options of each design
 * @throws CalculationError as `designRepair`, and for a step that is not above 0
 */
export function sensitivities(repairCase: RepairCase, steps: Steps = {}): Sensitivities {
  const { share = 0.01, temperature = 1 } = steps;
  positive(share, 'share', '');
  positive(temperature, 'temperature', 'K');
  const at = answerTo(repairCase, steps);
  const all = numericInputs(repairCase);
  const stepOf = ({ kind, value }: NumericInput): number => {
    if (kind === 'temperature' || kind === 'temperature difference') return temperature;
    return kind === 'count' ? 1 : share * Math.abs(value);
  };
  const inputs = all
    .filter((input) => stepOf(input) > 0)
    .map((input) => moved(repairCase, input, stepOf(input), at, steps));
  return {
    at,
    share,
    temperature,
    inputs,
    atNought: all.filter((input) => stepOf(input) === 0),
    ranked: ranked(inputs),
  };
}

function moved(
  repairCase: RepairCase,
  input: NumericInput,
  step: number,
  at: Answer,
  options: DesignOptions,
): Sensitivity {
  const to = (value: number): Answer => answerTo(withInputs(repairCase, [[input.path, value]]), options);
  const [below, above] = [to(input.value - step), to(input.value + step)];
  return {
    ...input,
    step,
    verdicts: { below: below.verdict, above: above.verdict },
    because: { below: below.because, above: above.because },
    moves: at.outcomes.flatMap((outcome) => move(outcome, below, above)),
  };
}

function move({ name, kind, value: at, governing }: Outcome, below: Answer, above: Answer): Moved[] {
  if (at === undefined) return [];
  const [low, high] = [below, above].map(({ outcomes }) => outcomes.find((each) => each.name === name));
  const [down, up] = [changeOf(at, low?.value), changeOf(at, high?.value)];
  const change = Math.abs(up) >= Math.abs(down) ? up : -down;
  const turned = [low, high].some((each) => each?.value !== undefined && each.governing !== governing);
  if (change === 0 && !turned) return [];
  return [
    {
      name,
      kind,
      at,
      below: low?.value,
      above: high?.value,
      change,
      governing: { at: governing, below: low?.governing, above: high?.governing },
      governingChanges: turned,
    },
  ];
}

/** Relative to the outcome; of one that is nought the change itself. */
function changeOf(at: number, then: number | undefined): number {
  if (then === undefined) return 0;
  return at === 0 ? then : (then - at) / Math.abs(at);
}

function ranked(inputs: readonly Sensitivity[]): Sensitivities['ranked'] {
  const lists: Partial<Record<OutcomeName, { path: string; change: number }[]>> = {};
  for (const { path, moves } of inputs) {
    for (const { name, change } of moves) {
      const list = lists[name] ?? [];
      list.push({ path, change });
      lists[name] = list;
    }
  }
  for (const list of Object.values(lists)) list.sort((a, b) => Math.abs(b.change) - Math.abs(a.change));
  return lists;
}

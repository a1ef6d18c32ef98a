import { isCalculationError } from '../../src/formula/index.js';
import { type Kind, readQuantity, unitOf, units } from '../../src/quantity/index.js';
import { fromSi } from '../../src/quantity/quantity.js';
import type { CaseRecord, Expectation } from '../case.js';
import { type Call, CaseFault, type Lookup, outputOf, prepareCall, resultOf, type Shifts } from './call.js';
import { digitsAgreed, inside, type Printed, printedInterval, readPrinted } from './printed.js';
import { reach } from './reach.js';

/** From the best to the worst. */
export const verdicts = [
  'agrees',
  'agrees within the rounding of its inputs',
  'within stated tolerance',
  'explained difference',
  'fails',
] as const;

export type Verdict = (typeof verdicts)[number];

/** One expected value and what was computed for it. */
interface Outcome {
  /** Name of the output; an item of a list has its place, `result[3]`. */
  readonly output: string;
  /** What was expected, as printed. */
  readonly expected: string;
  /** What was computed, in the printed unit, three digits further than the print. */
  readonly computed: string;
  readonly verdict: Verdict;
  /** Digits printed and digits agreed; only where a number was printed. */
  readonly digits?: { readonly printed: number; readonly agreed: number };
  /** The inputs that meet the print, and the part of half a last place by which they had to be moved. */
  readonly moved?: { readonly part: number; readonly inputs: Readonly<Record<string, string>> };
  /** The tolerance and its reason, or the explanation, on which the verdict rests. */
  readonly because?: string;
}

export interface CaseResult {
  readonly file: string;
  readonly record: CaseRecord;
  /** The worst of its outcomes. */
  readonly verdict: Verdict;
  readonly outcomes: readonly Outcome[];
  /** What is wrong with the record itself; the verdict is then `fails`. */
  readonly faults: readonly string[];
}

function worst(of: readonly Verdict[]): Verdict {
  return verdicts[Math.max(0, ...of.map((verdict) => verdicts.indexOf(verdict)))] ?? 'fails';
}

type Output = ReturnType<typeof outputOf>;

/** A printed value of an output, with the way from SI to its unit. */
interface Target {
  readonly printed: Printed;
  readonly text: string;
  readonly inUnit: (si: number) => number;
  readonly unit: string;
}

function target(output: Output, text: string, digits: number | undefined): Target {
  const { kind } = output;
  const printed = readPrinted(text, digits);
  if (printed === undefined) throw new CaseFault(`${JSON.stringify(text)} is not a printed number`);
  if (kind === 'number' || kind === 'count') {
    if (printed.unit !== '')
      throw new CaseFault(`${JSON.stringify(text)} has a unit, but ${output.symbol} is a plain number`);
    return { printed, text, inUnit: (si) => si, unit: '' };
  }
  if (!Object.hasOwn(units, kind))
    throw new CaseFault(`${output.symbol} is a ${kind}: expect a word, not ${JSON.stringify(text)}`);
  const reading = readQuantity(kind as Kind, text);
  if (!reading.ok) throw new CaseFault(reading.problem);
  const unit = unitOf(kind as Kind, reading.unit);
  if (unit === undefined) throw new CaseFault(`a ${kind} has no unit ${reading.unit}`);
  return { printed, text, inUnit: (si) => fromSi(si, unit), unit: reading.unit === '1' ? '' : reading.unit };
}

function shown(value: unknown, { inUnit, printed, unit }: Target): string {
  if (isCalculationError(value)) return `refused (${value.code}): ${value.message}`;
  if (typeof value !== 'number') return String(value);
  const digits = Math.min(17, Math.max(4, printed.digits + 3));
  return `${Number(inUnit(value).toPrecision(digits))}${unit === '' ? '' : ` ${unit}`}`;
}

interface Asked {
  readonly name: string;
  readonly label: string;
  readonly call: Call;
  readonly expected: Expectation;
  readonly explained: string | undefined;
  readonly id: string;
}

/** The tolerance in the printed unit of the value; that of a temperature is a temperature difference. */
function toleranceOf(output: Output, { value }: { readonly value: string }, { unit }: Target): number {
  const { kind } = output;
  if (kind === 'number' || kind === 'count') {
    const printed = readPrinted(value);
    if (printed === undefined || printed.unit !== '')
      throw new CaseFault(`the tolerance ${value} is not a plain number`);
    return printed.value;
  }
  const differs = kind === 'temperature' ? 'temperature difference' : (kind as Kind);
  const reading = readQuantity(differs, value);
  if (!reading.ok) throw new CaseFault(`the tolerance: ${reading.problem}`);
  const scale = unitOf(kind as Kind, unit === '' ? '1' : unit);
  if (scale === undefined) throw new CaseFault(`a ${kind} has no unit ${unit}`);
  return (reading.quantity * scale[1]) / scale[0];
}

function judgeNumber(
  { name, label, call, expected, explained, id }: Asked,
  text: string,
  pick: (result: unknown) => unknown,
): Outcome {
  const output = outputOf(call.formula, name);
  const aim = target(output, text, expected.digits);
  const interval = printedInterval(aim.printed, expected.truncated);
  const valueAt = (shifts: Shifts): number | undefined => {
    const found = pick(resultOf(call.formula, call.run(shifts), name));
    return typeof found === 'number' ? aim.inUnit(found) : undefined;
  };
  const result = call.run([]);
  const raw = isCalculationError(result) ? result : pick(resultOf(call.formula, result, name));
  const here = typeof raw === 'number' ? aim.inUnit(raw) : undefined;
  const digits = { printed: aim.printed.digits, agreed: here === undefined ? 0 : digitsAgreed(here, aim.printed) };
  const outcome = { output: label, expected: text, computed: shown(raw, aim), digits };
  if (here !== undefined && inside(here, interval)) return { ...outcome, verdict: 'agrees' };
  const witness = reach(valueAt, call.leaves.length, interval, `${id} ${label}`);
  if (witness !== undefined) {
    const moved = { part: witness.part, inputs: call.written(witness.shifts) };
    return { ...outcome, moved, verdict: 'agrees within the rounding of its inputs' };
  }
  const { tolerance } = expected;
  if (tolerance !== undefined && here !== undefined) {
    const allowed = toleranceOf(output, tolerance, aim);
    if (Math.abs(here - aim.printed.value) <= allowed) {
      return { ...outcome, verdict: 'within stated tolerance', because: `${tolerance.value}: ${tolerance.reason}` };
    }
  }
  const because = expected.explained ?? explained;
  if (because !== undefined) return { ...outcome, verdict: 'explained difference', because };
  return { ...outcome, verdict: 'fails' };
}

function judgeBound(
  { name, label, call, expected, explained }: Asked,
  text: string,
  side: 'atLeast' | 'atMost',
): Outcome {
  const aim = target(outputOf(call.formula, name), text, undefined);
  const raw = call.run([]);
  const value = isCalculationError(raw) ? raw : resultOf(call.formula, raw, name);
  const here = typeof value === 'number' ? aim.inUnit(value) : Number.NaN;
  const holds = side === 'atLeast' ? here >= aim.printed.value : here <= aim.printed.value;
  const outcome = {
    output: label,
    expected: `${side === 'atLeast' ? 'at least' : 'at most'} ${text}`,
    computed: shown(value, aim),
  };
  const because = expected.explained ?? explained;
  if (holds) return { ...outcome, verdict: 'agrees' };
  return because === undefined
    ? { ...outcome, verdict: 'fails' }
    : { ...outcome, verdict: 'explained difference', because };
}

function judgeWord(
  { name, label, call, expected, explained }: Asked,
  word: string,
  pick: (result: unknown) => unknown,
): Outcome {
  outputOf(call.formula, name);
  const raw = call.run([]);
  const value = isCalculationError(raw) ? raw : pick(resultOf(call.formula, raw, name));
  const computed = isCalculationError(value) ? `refused (${value.code}): ${value.message}` : String(value);
  const because = expected.explained ?? explained;
  if (computed === word) return { output: label, expected: word, computed, verdict: 'agrees' };
  if (because === undefined) return { output: label, expected: word, computed, verdict: 'fails' };
  return { output: label, expected: word, computed, verdict: 'explained difference', because };
}

const whole = (result: unknown): unknown => result;

function judgeItem(asked: Asked, text: string, pick: (result: unknown) => unknown): Outcome {
  const kind = outputOf(asked.call.formula, asked.name).kind;
  return kind === 'choice' || kind === 'flag' ? judgeWord(asked, text, pick) : judgeNumber(asked, text, pick);
}

function judgeExpectation(asked: Omit<Asked, 'call'>, calls: readonly Call[]): Outcome[] {
  const { expected, name } = asked;
  const [call] = calls;
  if (call === undefined) throw new CaseFault('there is nothing to call');
  if (expected.list !== undefined) {
    if (calls.length === 1) {
      return expected.list.map((text, index) =>
        judgeItem(
          { ...asked, call, label: `${name}[${index}]` },
          text,
          (result) => (result as readonly unknown[])[index],
        ),
      );
    }
    if (calls.length !== expected.list.length) {
      throw new CaseFault(`${name} expects ${expected.list.length} values for ${calls.length} variations`);
    }
    return expected.list.map((text, index) =>
      judgeItem({ ...asked, call: calls[index] ?? call, label: `${name}[${index}]` }, text, whole),
    );
  }
  if (calls.length > 1) throw new CaseFault(`${name}: inputs vary, so a list is expected`);
  if (expected.value !== undefined) return [judgeItem({ ...asked, call }, expected.value, whole)];
  if (expected.word !== undefined) return [judgeWord({ ...asked, call }, expected.word, whole)];
  if (expected.atLeast !== undefined) return [judgeBound({ ...asked, call }, expected.atLeast, 'atLeast')];
  return [judgeBound({ ...asked, call }, expected.atMost ?? '', 'atMost')];
}

function callsOf(lookup: Lookup, { formula, inputs, vary, exact }: CaseRecord): Call[] {
  const length = Object.values(vary ?? {})[0]?.length;
  if (length === undefined) return [prepareCall(lookup, formula, inputs, exact)];
  return Array.from({ length }, (_, index) => {
    const varied = Object.entries(vary ?? {}).map(([name, values]) => [name, values[index] ?? ''] as const);
    return prepareCall(lookup, formula, { ...inputs, ...Object.fromEntries(varied) }, exact);
  });
}

function judgeRefusal(calls: readonly Call[], code: string): Outcome[] {
  return calls.map((call, index) => {
    const result = call.run([]);
    const refused = isCalculationError(result);
    return {
      output: calls.length > 1 ? `result[${index}]` : 'result',
      expected: `refused (${code})`,
      computed: refused ? `refused (${result.code}): ${result.message}` : JSON.stringify(result),
      verdict: refused && result.code === code ? 'agrees' : 'fails',
    };
  });
}

/** Reasons that no outcome needed, and errata that are none: a record must not claim more difference than there is. */
function idleReasons(record: CaseRecord, outcomes: readonly Outcome[], calls: readonly Call[]): string[] {
  const faults: string[] = [];
  const reached = (verdict: Verdict, name?: string): boolean =>
    outcomes.some(
      (outcome) => outcome.verdict === verdict && (name === undefined || outcome.output.split('[')[0] === name),
    );
  if (record.explained !== undefined && !reached('explained difference') && !reached('fails')) {
    faults.push('explains a difference that is not there; remove explained');
  }
  if ('refused' in record.expect && typeof record.expect['refused'] === 'string') return faults;
  const expected = record.expect as Readonly<Record<string, Expectation>>;
  for (const [name, { tolerance, explained }] of Object.entries(expected)) {
    const needed = reached('explained difference', name) || reached('fails', name);
    if (explained !== undefined && !needed)
      faults.push(`${name} explains a difference that is not there; remove explained`);
    if (tolerance !== undefined && !needed && !reached('within stated tolerance', name)) {
      faults.push(`${name} agrees without its tolerance; remove it`);
    }
  }
  const [only] = Object.keys(expected);
  const [call] = calls;
  if (record.erratum !== undefined && only !== undefined && call !== undefined && Object.keys(expected).length === 1) {
    const wrong = erratumHolds(call, only, record.erratum.printed);
    if (wrong) faults.push(`the published ${record.erratum.printed} is what is computed, so there is no erratum`);
  }
  return faults;
}

function erratumHolds(call: Call, name: string, printed: string): boolean {
  let aim: Target;
  try {
    aim = target(outputOf(call.formula, name), printed, undefined);
  } catch (error) {
    // The erratum may be a remark in words, which nothing computed can equal.
    if (error instanceof CaseFault) return false;
    throw error;
  }
  const value = resultOf(call.formula, call.run([]), name);
  return typeof value === 'number' && inside(aim.inUnit(value), printedInterval(aim.printed));
}

/** Judges one case. A record that cannot be judged fails and says why; nothing is thrown. */
export function judge(record: CaseRecord, file: string, lookup: Lookup): CaseResult {
  try {
    const calls = callsOf(lookup, record);
    const { expect } = record;
    const outcomes =
      'refused' in expect && typeof expect['refused'] === 'string'
        ? judgeRefusal(calls, expect['refused'])
        : Object.entries(expect as Readonly<Record<string, Expectation>>).flatMap(([name, expected]) =>
            judgeExpectation({ name, label: name, expected, explained: record.explained, id: record.id }, calls),
          );
    const faults = outcomes.length === 0 ? ['expects nothing'] : idleReasons(record, outcomes, calls);
    const verdict = faults.length > 0 ? 'fails' : worst(outcomes.map((outcome) => outcome.verdict));
    return { file, record, verdict, outcomes, faults };
  } catch (error) {
    if (!(error instanceof CaseFault)) throw error;
    return { file, record, verdict: 'fails', outcomes: [], faults: [error.message] };
  }
}

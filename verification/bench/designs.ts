import { budgets } from './budgets.js';
import { built, functionOf } from './built.js';
import { type Example, examples } from './examples.js';
import { leastInFreshProcesses, type Times } from './fresh-process.js';
import { leastTimes, type Work } from './interleaved.js';
import type { Row } from './row.js';

/** A whole design is much code: it takes the compiler seconds until it gets no faster. */
const SECONDS = 5;
const PROCESSES = 2;
const TIMED = ['replay', 'design', 'recorded', 'JSON.parse', 'decode'] as const;

/** The whole design of each example against nothing but its formula calls, and the way from text to a case. */
export function designRows(say: (what: string) => void): Row[] {
  return examples.flatMap(({ name }) => {
    say(name);
    return rowsOf(name, leastInFreshProcesses('design', name, PROCESSES) as Record<(typeof TIMED)[number], number>);
  });
}

function rowsOf(name: string, times: Readonly<Record<(typeof TIMED)[number], number>>): Row[] {
  const { replay, design, recorded, 'JSON.parse': parse, decode } = times;
  const against = (what: string, time: number, base: number, of: string): Row => {
    return { what, measured: time / base, unit: 'x', note: `${inMicroseconds(time)}; ${of} ${inMicroseconds(base)}` };
  };
  return [
    { ...against(`design of ${name}`, design, replay, 'its formula calls'), budget: budgets.design },
    against('the same, recorded', recorded, replay, 'its formula calls'),
    against(`decoding of ${name}`, decode, parse, 'JSON.parse'),
  ];
}

/** Times of one design, of its formula calls, and of reading its case [ns]. */
export function designTimes(name: string): Times {
  const example = examples.find((each) => each.name === name);
  if (example === undefined) throw new Error(`there is no example ${name} that can be designed`);
  const { case: repairCase, text } = example;
  const design = (record: boolean): Work => {
    return () => built.root.designRepair(repairCase, { record }).laminate?.laidThickness ?? Number.NaN;
  };
  const decode: Work = () => built.json.parseCase(text).case.pipe.wallThickness;
  const parse: Work = () => Object.keys(JSON.parse(text)).length;
  const times = leastTimes([replayOf(example), design(false), design(true), parse, decode], SECONDS);
  return Object.fromEntries(TIMED.map((what, index) => [what, times[index] as number]));
}

/**
 * The formula calls that a design makes, recorded once and called again as a person would write them down: each in its own
 * line, its inputs as a literal.
 */
function replayOf({ name, case: repairCase }: Example): Work {
  const { record = [] } = built.root.designRepair(repairCase, { record: true });
  const steps = record.flatMap((entry) => {
    if (entry.sort !== 'step') return [];
    const { formula: id, input, result } = entry;
    return [{ id, compute: functionOf(id), input, result }];
  });
  if (steps.length === 0) throw new Error(`the design of ${name} recorded no step`);
  for (const { id, compute, input, result } of steps) {
    if (JSON.stringify(compute(input)) !== JSON.stringify(result))
      throw new Error(`${id} gives another result when it is called again`);
  }
  const lines = steps.map(({ input }, index) => `sum += numberIn(compute${index}({ ${literalOf(input, index)} }));`);
  const names = steps.map((_, index) => `const compute${index} = steps[${index}].compute;`);
  const code = `${names.join('\n')}\nreturn () => { let sum = 0;\n${lines.join('\n')}\nreturn sum; };`;
  return new Function('steps', 'numberIn', code)(steps, numberIn);
}

/** Numbers as they are written; lists, records and what else no text gives back stand as they were passed. */
function literalOf(input: Readonly<Record<string, unknown>>, index: number): string {
  const members = Object.entries(input).map(([name, value]) =>
    Number.isFinite(value) && !Object.is(value, -0) ? `${name}: ${value}` : `${name}: steps[${index}].input.${name}`,
  );
  return members.join(', ');
}

function numberIn(result: unknown): number {
  return typeof result === 'number' ? result : result === undefined ? 0 : 1;
}

function inMicroseconds(time: number): string {
  return `${(time / 1000).toFixed(1)} us`;
}

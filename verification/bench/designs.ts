import { budgets } from './budgets.js';
import { built } from './built.js';
import { type Example, examples } from './examples.js';
import { leastTimes, type Work } from './interleaved.js';
import type { Row } from './row.js';

/** The whole design of each example against nothing but its formula calls, and the way from text to a case. */
export function designRows(say: (what: string) => void): Row[] {
  return examples.flatMap((example) => {
    say(example.name);
    return [...jobRows(example), decodeRow(example)];
  });
}

function jobRows({ name, case: repairCase }: Example): Row[] {
  const design = (record: boolean): Work => {
    return () => built.root.designRepair(repairCase, { record }).laminate?.laidThickness ?? Number.NaN;
  };
  const { calls, replay } = replayOf({ name, case: repairCase });
  const [bare, plain, recorded] = leastTimes([replay, design(false), design(true)], 4) as [number, number, number];
  const note = `${inMicroseconds(plain)}; its ${calls} formula calls ${inMicroseconds(bare)}`;
  return [
    { what: `design of ${name}`, measured: plain / bare, unit: 'x', budget: budgets.design, note },
    { what: 'the same, recorded', measured: recorded / bare, unit: 'x', note: inMicroseconds(recorded) },
  ];
}

/** The formula calls that a design makes, recorded once with what was passed, and called again in a row. */
function replayOf({ name, case: repairCase }: Omit<Example, 'text'>): {
  readonly calls: number;
  readonly replay: Work;
} {
  const { record = [] } = built.root.designRepair(repairCase, { record: true });
  const steps = record.filter((entry) => entry.sort === 'step');
  if (steps.length === 0) throw new Error(`the design of ${name} recorded no step`);
  for (const { compute, input, result } of steps) {
    if (JSON.stringify(compute(input)) !== JSON.stringify(result))
      throw new Error(`${compute.name} gives another result when it is called again`);
  }
  const replay = (): number => {
    let sum = 0;
    for (const { compute, input } of steps) sum += numberIn(compute(input));
    return sum;
  };
  return { calls: steps.length, replay };
}

function numberIn(result: unknown): number {
  return typeof result === 'number' ? result : result === undefined ? 0 : 1;
}

function decodeRow({ name, text }: Example): Row {
  const decode: Work = () => built.json.parseCase(text).case.pipe.wallThickness;
  const parse: Work = () => Object.keys(JSON.parse(text)).length;
  const [json, ours] = leastTimes([parse, decode], 2) as [number, number];
  const note = `${inMicroseconds(ours)}; JSON.parse ${inMicroseconds(json)}`;
  return { what: `decoding of ${name}`, measured: ours / json, unit: 'x', note };
}

function inMicroseconds(time: number): string {
  return `${(time / 1000).toFixed(1)} us`;
}

import { readFileSync } from 'node:fs';
import Qty from 'js-quantities';
import * as mathjs from 'mathjs';
import * as SafeUnits from 'safe-units';
import type { GaugePressure, Length, RepairCase } from '../../src/index.js';
import { type BudgetRow, reasons, table } from './budget.js';
import { coldStartRatio } from './cold-start.js';
import { bundleSize } from './size.js';
import { nanoseconds } from './speed.js';

/**
 * Speed and size against their budgets, as ratios inside one process, so that the machine's speed drops out.
 * Run with `npm run bench`.
 */
const COUNT = 4096;

// What users run: the built files. Loaded by address, since the types are those of the source.
const built = (entry: string): string => new URL(`../../dist/${entry}.js`, import.meta.url).href;
const { designRepair }: typeof import('../../src/index.js') = await import(built('index'));
const { hoopStress, hoopStressAll }: typeof import('../../src/pipe.js') = await import(built('pipe'));
const { decodeCase }: typeof import('../../src/json.js') = await import(built('json'));

const pressures = Float64Array.from({ length: COUNT }, (_, i) => 1e5 + i * 1e3);
const diameters = Float64Array.from({ length: COUNT }, (_, i) => 0.1 + i * 1e-4);
const walls = Float64Array.from({ length: COUNT }, (_, i) => 0.004 + i * 1e-6);
const out = new Float64Array(COUNT);

function rawCalls(): number {
  let sum = 0;
  for (let i = 0; i < COUNT; i++)
    sum += ((pressures[i] as number) * (diameters[i] as number)) / (2 * (walls[i] as number));
  return sum;
}

function guardedCalls(): number {
  let sum = 0;
  for (let i = 0; i < COUNT; i++) {
    sum += hoopStress({
      pressure: pressures[i] as GaugePressure,
      outsideDiameter: diameters[i] as Length,
      wallThickness: walls[i] as Length,
    });
  }
  return sum;
}

const PRESSURE = 1.6e6 as GaugePressure;
const DIAMETER = 0.6 as Length;

function rawArray(): Float64Array {
  for (let i = 0; i < COUNT; i++) out[i] = (PRESSURE * DIAMETER) / (2 * (walls[i] as number));
  return out;
}

function guardedArray(): Float64Array {
  return hoopStressAll({ pressure: PRESSURE, outsideDiameter: DIAMETER, wallThickness: walls }, out);
}

const compiled = mathjs.compile('P * D / (2 * t)');
const scope = { P: mathjs.unit(1.6, 'MPa'), D: mathjs.unit(219.1, 'mm'), t: mathjs.unit(8.18, 'mm') };
const [qtyP, qtyD, qtyT] = [Qty(1.6, 'MPa'), Qty(219.1, 'mm'), Qty(8.18, 'mm')];
const safe = {
  P: SafeUnits.Measure.of(1.6e6, SafeUnits.pascals),
  D: SafeUnits.Measure.of(0.2191, SafeUnits.meters),
  t: SafeUnits.Measure.of(0.00818, SafeUnits.meters),
};

function exampleCase(): RepairCase {
  return decodeCase(JSON.parse(readFileSync('docs/examples/cooling-water-leak.json', 'utf8'))).case;
}

async function main(): Promise<void> {
  const rows: BudgetRow[] = [];
  const raw = await nanoseconds(rawCalls, COUNT);
  const guarded = await nanoseconds(guardedCalls, COUNT);
  const budget = 3 * raw + 5;
  rows.push({
    what: 'formula call with guards, no recorder',
    budget: `3 x raw + 5 ns = ${budget.toFixed(1)} ns`,
    measured: `${guarded.toFixed(1)} ns (${(guarded / raw).toFixed(1)} x raw)`,
    held: guarded <= budget,
  });

  const rawEach = await nanoseconds(rawArray, COUNT);
  const guardedEach = await nanoseconds(guardedArray, COUNT);
  const factor = rawEach < 5 ? 1.5 : 1.2;
  rows.push({
    what: 'array form, per element',
    budget: `${factor} x raw`,
    measured: `${(guardedEach / rawEach).toFixed(2)} x raw (${guardedEach.toFixed(2)} ns)`,
    held: guardedEach <= factor * rawEach,
  });

  const peers: readonly [string, () => unknown][] = [
    ['mathjs, compiled, with units', () => compiled.evaluate(scope)],
    ['js-quantities', () => qtyP.mul(qtyD).div(qtyT.mul(2)).to('MPa')],
    ['safe-units', () => safe.P.times(safe.D).over(safe.t.scale(2))],
  ];
  for (const [name, work] of peers) {
    const time = await nanoseconds(work, 1);
    rows.push({
      what: `the same formula in ${name}`,
      budget: 'for comparison',
      measured: `${(time / guarded).toFixed(0)} x ours`,
      held: undefined,
    });
  }

  const repairCase = exampleCase();
  const plain = await nanoseconds(() => designRepair(repairCase), 1);
  const recorded = await nanoseconds(() => designRepair(repairCase, { record: true }), 1);
  rows.push({
    what: 'full design of the first example',
    budget: '25 us',
    measured: `${(plain / 1000).toFixed(1)} us`,
    held: plain <= 25_000,
    why: 'since the budget was set the job has grown by seal, site, rolls and acceptance: twice the steps. Most of the time goes into the input objects of the steps, which are spread from shared parts to stay readable',
  });
  rows.push({
    what: 'the same with the recorder',
    budget: '400 us',
    measured: `${(recorded / 1000).toFixed(1)} us (${(recorded / plain).toFixed(2)} x without)`,
    held: recorded <= 400_000,
  });

  const one = await bundleSize(`export { hoopStress } from './dist/pipe.js';`);
  const root = await bundleSize(`export * from './dist/index.js';`);
  const unwanted = root.packages.filter((name) => name === 'zod' || name === 'decimal.js');
  rows.push({ what: 'one formula, bundled', budget: '1 kB gzip', measured: `${one.bytes} B`, held: one.bytes <= 1000 });
  rows.push({
    what: 'the root entry, bundled',
    budget: '40 kB gzip, no zod, no decimal.js',
    measured: `${(root.bytes / 1000).toFixed(1)} kB${unwanted.length > 0 ? ` with ${unwanted.join(', ')}` : ''}`,
    held: root.bytes <= 40_000 && unwanted.length === 0,
    why: 'the root now holds eleven rooms of formulas, each with the sentences of its refusals; nobody loads all of it: see the rows before and after',
  });
  const design = await bundleSize(`export { designRepair } from './dist/index.js';`);
  rows.push({
    what: 'the whole job alone, bundled',
    budget: '40 kB gzip',
    measured: `${(design.bytes / 1000).toFixed(1)} kB`,
    held: design.bytes <= 40_000,
    why: 'it reaches into every room',
  });

  const cold = coldStartRatio(
    [
      'dist/cli.js',
      'evaluate',
      'pipe/hoop-stress',
      'pressure=16 bar',
      'outsideDiameter=219.1 mm',
      'wallThickness=8.18 mm',
    ],
    15,
  );
  rows.push({
    what: 'command line, cold',
    budget: '3 x an empty Node process',
    measured: `${cold.toFixed(2)} x`,
    held: cold <= 3,
  });

  process.stdout.write(`${table(rows)}\n${reasons(rows)}`);
  if (rows.some(({ held }) => held === false)) process.exitCode = 1;
}

await main();

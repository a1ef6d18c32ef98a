import { readFileSync } from 'node:fs';
import psychrolib from 'psychrolib';
import { isCalculationError } from '../../src/formula/index.js';
import { type Kind, length, type Ratio, ratio, temperature, units } from '../../src/quantity/index.js';
import { asmePcc2, iso24817, type RuleSet } from '../../src/rules/index.js';
import { dewPoint, frostPoint } from '../../src/site/index.js';
import { pipeSize } from '../../src/tables.js';
import { composed } from '../../tests/quantity/composed-units.js';
import {
  burstMethodNotes,
  burstMethods,
  burstPredictions,
  burstStatistics,
  readBurstTests,
  zhouHuang2012,
} from '../datasets/burst-tests.js';
import { type DewPointRow, readDewPointTable } from '../datasets/dewpoint-table.js';
import { readLookUps } from '../look-ups.js';
import { seeded } from '../oracles/random.js';
import type { BurstReport, DewPointReport, LookUpRow, PipeSizeReport, RuleRow, UnitRow } from './shape.js';

/** The tables of the report that are no formulas: units, pipe sizes, burst tests, rule sets. */

/** Every unit with its exact ratio to SI, and whether its definition, composed from other units, gives the same ratio. */
export function unitRows(): UnitRow[] {
  return (Object.keys(units) as Kind[]).flatMap((kind) =>
    Object.entries(units[kind]).map(([unit, [top, bottom, shift]]) => {
      const irrational = !Number.isInteger(top) || !Number.isInteger(bottom);
      const wanted = irrational ? undefined : composed(unit);
      const same = wanted !== undefined && BigInt(top) * wanted.bottom === BigInt(bottom) * wanted.top;
      return {
        kind,
        unit,
        ratio: unit === 'deg' ? 'pi/180' : bottom === 1 ? String(top) : `${top}/${bottom}`,
        shift: shift === undefined ? '' : String(shift),
        si: String(Number((top / bottom).toPrecision(15))),
        composed: irrational ? 'by half a turn' : same ? 'agrees' : 'differs',
      };
    }),
  );
}

const inMPa = (pascal: number): number => Number((pascal / 1e6).toPrecision(6));

export function burstReport(): BurstReport {
  const tests = readBurstTests();
  const predictions = burstPredictions(tests);
  const publications = new Map(predictions.map(({ test }) => [test.group, test.publication]));
  return {
    tests: tests.length,
    statistics: burstStatistics(predictions).map(({ method, group, n, mean, deviation }) => ({
      method,
      group,
      n,
      mean: Number(mean.toFixed(4)),
      deviation: deviation === undefined ? null : Number(deviation.toFixed(4)),
    })),
    methods: burstMethods.map((method) => ({
      method,
      how: burstMethodNotes[method],
      published: zhouHuang2012[method] ?? null,
    })),
    publications: [...publications].map(([group, publication]) => ({ group, publication })),
    points: predictions.map(({ method, test, predicted }) => ({
      method,
      test: test.id,
      measured: inMPa(test.burst),
      predicted: inMPa(predicted),
    })),
  };
}

const inKelvin = (difference: number): number => Number(difference.toFixed(4));

/** The printed table of dew points, and another program: what they print against what is computed here. */
export function dewPointReport(): DewPointReport {
  const rows = readDewPointTable();
  const part = (
    status: DewPointRow['status'],
    formula: string,
    compute: typeof dewPoint,
  ): DewPointReport['parts'][0] => {
    const own = rows.filter((row) => row.status === status);
    const differences = own.map(({ airCelsius, humidityPercent, printedCelsius }) => {
      const found = compute({ temperature: temperature.degC(airCelsius), humidity: ratio.percent(humidityPercent) });
      return temperature.inDegC(found) - printedCelsius;
    });
    const sum = differences.reduce((total, difference) => total + difference, 0);
    const largest = Math.max(...differences.map(Math.abs));
    return { status, formula, rows: own.length, mean: inKelvin(sum / own.length), largest: inKelvin(largest) };
  };
  psychrolib.SetUnitSystem(psychrolib.SI);
  const random = seeded('dew points of the report');
  let [points, largest] = [0, 0];
  for (let i = 0; i < 500; i++) {
    const [celsius, humidity] = [50 * random(), 0.2 + 0.8 * random()];
    const theirs = psychrolib.GetTDewPointFromRelHum(celsius, humidity);
    // Below the triple point that program gives frost points.
    if (theirs < 0.02) continue;
    points++;
    const ours = temperature.inDegC(dewPoint({ temperature: temperature.degC(celsius), humidity: humidity as Ratio }));
    largest = Math.max(largest, Math.abs(ours - theirs));
  }
  const leftOut = (['misprint', 'suspect'] as const).map((status) => ({
    status,
    rows: rows.filter((row) => row.status === status).length,
  }));
  return {
    rows: rows.length,
    parts: [part('ok', 'site/dew-point', dewPoint), part('frost', 'site/frost-point', frostPoint)],
    leftOut,
    program: { points, largest: inKelvin(largest) },
  };
}

/** Every wall of the frozen output of the other program against this library's table. */
export function pipeSizeReport(): PipeSizeReport {
  const text = readFileSync(new URL('../oracles/pipe-sizes-fluids.json', import.meta.url), 'utf8');
  const frozen: {
    readonly package: string;
    readonly version: string;
    readonly rows: readonly { nps: number; schedule: string; outside_mm: number; wall_mm: number }[];
  } = JSON.parse(text);
  const different: string[] = [];
  for (const { nps, schedule, outside_mm, wall_mm } of frozen.rows) {
    const name = `NPS ${nps}, schedule ${schedule}`;
    try {
      const { outsideDiameter, wallThickness } = pipeSize({ nps, schedule });
      if (outsideDiameter === length.mm(outside_mm) && wallThickness === length.mm(wall_mm)) continue;
      different.push(
        `${name}: ${length.inMm(outsideDiameter)} x ${length.inMm(wallThickness)} mm for ${outside_mm} x ${wall_mm} mm`,
      );
    } catch (error) {
      if (!isCalculationError(error)) throw error;
      different.push(`${name}: not in this library`);
    }
  }
  return {
    program: `${frozen.package} ${frozen.version}, as Debian packages it`,
    rows: frozen.rows.length,
    equal: frozen.rows.length - different.length,
    different,
  };
}

function valueText(value: unknown): string {
  if (value === null) return 'none';
  if (typeof value === 'number') return String(Number(value.toPrecision(9)));
  if (Array.isArray(value)) return value.map(valueText).join('; ');
  if (typeof value === 'object')
    return Object.entries(value)
      .map(([name, inner]) => `${name} ${valueText(inner)}`)
      .join(', ');
  return String(value);
}

function rulesIn(set: string, path: string, node: unknown): RuleRow[] {
  if (typeof node !== 'object' || node === null) return [];
  if ('clause' in node) {
    const { value, unknown, clause, evidence } = node as {
      value?: unknown;
      unknown?: string;
      clause: string;
      evidence?: { tag: string; note?: string };
    };
    return [
      {
        set,
        path,
        value: unknown === undefined ? valueText(value) : 'unknown',
        clause,
        tag: evidence?.tag ?? 'needs input',
        note: evidence?.note ?? unknown ?? '',
      },
    ];
  }
  return Object.entries(node).flatMap(([name, inner]) => rulesIn(set, path === '' ? name : `${path} ${name}`, inner));
}

/** Every value of the rule sets in SI, with its clause and its tag: what a reader with the documents has to confirm. */
export function ruleRows(): RuleRow[] {
  return [iso24817, asmePcc2].flatMap((set: RuleSet) => rulesIn(set.id, '', set));
}

/** What was looked for, and how often with empty hands. */
export function lookUpRows(): LookUpRow[] {
  const all = readLookUps();
  return [...new Set(all.map(({ corpus }) => corpus))].map((corpus) => {
    const own = all.filter((each) => each.corpus === corpus);
    const cases = new Set(own.flatMap(({ cases: found = [] }) => found));
    return { corpus, made: own.length, found: own.filter(({ found }) => found).length, cases: cases.size };
  });
}

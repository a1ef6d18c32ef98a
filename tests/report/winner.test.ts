import { all, create, type FactoryFunctionMap } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { cureWaitOverHistory } from '../../src/cure/index.js';
import { type AnyFormula, type Definition, isCalculationError, type Winner } from '../../src/formula/index.js';
import { givenOutputs } from '../../src/formula/outputs.js';
import type { RecordedStep } from '../../src/formula/recorder.js';
import { activationEnergy, temperature, time } from '../../src/quantity/index.js';
import { formulas } from '../../src/registry/index.js';
import { arithmetic } from '../../src/report/arithmetic.js';
import { givenInputs } from '../../src/report/problem.js';
import { winnerOf } from '../../src/report/winner.js';
import { renderStep } from '../../src/report.js';
import { drawInput } from '../../verification/oracles/draw.js';
import { seeded } from '../../verification/oracles/random.js';
import { drawList } from '../formula/samplers.js';

const mathjs = create(all as FactoryFunctionMap, { predictable: true });

type Values = Record<string, unknown>;

const winnerOfEquation = ({ equation }: AnyFormula): Winner | undefined =>
  'algorithm' in equation ? equation.winner : undefined;

const winning = formulas.filter((each) => winnerOfEquation(each) !== undefined);

function calls(of: AnyFormula, wanted: number): RecordedStep[] {
  const random = seeded(`${of.id} winner`);
  const accepted: RecordedStep[] = [];
  for (let draw = 0; draw < 3000 && accepted.length < wanted; draw++) {
    const { input } = drawInput(of, random, drawList);
    try {
      accepted.push({ sort: 'step', formula: of.id, input, result: of.compute(input) });
    } catch (error) {
      if (!isCalculationError(error)) throw error;
    }
  }
  return accepted;
}

function define(scope: Values, where: readonly Definition[] = []): Values {
  for (const { symbol, expression } of where) scope[symbol] = mathjs.evaluate(expression, { ...scope });
  return scope;
}

/** The equation of the winner by mathjs, with sums added up here: nothing of the report is used. */
function byMathjs(of: AnyFormula, winner: Winner, { input, result }: RecordedStep): unknown {
  const outputs = givenOutputs(of, result).slice(winner.gives === undefined ? 1 : 0);
  const scope: Values = Object.fromEntries(
    [...givenInputs(of, input), ...outputs].map(({ declaration, value }) => [declaration.symbol, value]),
  );
  const { sums } = winner;
  if (sums !== undefined) {
    const rows = input[sums.list] as Values[];
    const last = sums.last === undefined ? rows.length + 1 : Number((result as Values)[sums.last]);
    for (const { symbol } of sums.sums) scope[symbol] = 0;
    for (const [index, row] of rows.slice(0, last).entries()) {
      const own: Values = { ...scope };
      for (const [column, symbol] of Object.entries(sums.columns)) own[symbol] = row[column];
      const counts = sums.when === undefined || mathjs.evaluate(sums.when, { ...own }) === true;
      for (const { symbol } of sums.where) own[symbol] = 0;
      if (counts) define(own, sums.where);
      if (index === last - 1) for (const { symbol } of sums.where) scope[symbol] = own[symbol];
      else for (const { symbol, of: what } of sums.sums) scope[symbol] = Number(scope[symbol]) + Number(own[what]);
    }
  }
  const { equation } = winner;
  define(scope, equation.where);
  if ('expression' in equation) return mathjs.evaluate(equation.expression, scope);
  const branch = equation.branches.find(({ when }) => when === undefined || mathjs.evaluate(when, scope) === true);
  return mathjs.evaluate(branch?.expression ?? '', define(scope, branch?.where));
}

function given({ gives }: Winner, of: AnyFormula, { result }: RecordedStep): number {
  if (gives === undefined) return Number(givenOutputs(of, result)[0]?.value);
  return Number((result as Record<string, Values[]>)[gives.list]?.[gives.row - 1]?.[gives.column]);
}

describe('the winning row of an algorithm, by its own equation', () => {
  it('is stated for the algorithms of a design that have one', () => {
    expect(winning.map(({ id }) => id)).toEqual(
      expect.arrayContaining([
        'pipe/effective-area',
        'pipe/local-metal-loss-profile',
        'wrap/tape-plan',
        'resin/batch-plan',
        'cure/cure-wait',
        'cure/working-time',
        'cure/cure-wait-over-history',
        'cure/equivalent-time',
      ]),
    );
  });

  describe.each(winning.map((each) => [each.id, each] as const))('%s', (_, each) => {
    const winner = winnerOfEquation(each) as Winner;
    const drawn = calls(each, 60);

    it('gives what the algorithm gives', () => {
      expect(drawn.length).toBe(60);
      for (const call of drawn) {
        const wanted = given(winner, each, call);
        expect(Math.abs(Number(byMathjs(each, winner, call)) / wanted - 1)).toBeLessThan(1e-11);
      }
    });

    it('is written so that the printed numbers give the printed result', () => {
      for (const call of drawn.slice(0, 12)) {
        for (const system of ['si', 'us'] as const) {
          const written = winnerOf(each, call, { system });
          expect(written?.isMain).toBe(winner.gives === undefined);
          expect(written && arithmetic(written.problem, 4).closes).toBe(true);
        }
      }
    });
  });
});

describe('a step whose formula is an algorithm', () => {
  const history = {
    steps: [
      { duration: time.hour(6), temperature: temperature.degC(18) },
      { duration: time.hour(5), temperature: temperature.degC(4) },
      { duration: time.hour(30), temperature: temperature.degC(23) },
    ],
    requiredTime: time.hour(10),
    referenceTemperature: temperature.degC(23),
    minimumTemperature: temperature.degC(10),
    activationEnergy: activationEnergy.kJPerMol(55),
    testedFrom: temperature.degC(10),
    testedTo: temperature.degC(40),
    mechanism: 'two-part reaction',
  } as const;
  const text = renderStep({
    sort: 'step',
    formula: 'cure/cure-wait-over-history',
    input: history,
    result: cureWaitOverHistory(history),
  });

  it('shows a sum row by row, where a row too cold counts nothing', () => {
    const gained = 6 * Math.exp((55000 / 8.31446261815324) * (1 / 296.15 - 1 / 291.15));
    expect(text).toMatch(/^ +1 +6 +18 +0\.6814 +4\.088$/mu);
    expect(text).toMatch(/^ +2 +5 +4 +0 +0$/mu);
    expect(text).toMatch(/^ +3 +30 +23 +1 +30$/mu);
    expect(text).toContain('t_0 = 11.00 h    (clock time of the steps before)');
    expect(text).toContain(`g_0 = ${gained.toFixed(3)} h    (equivalent time gained in them)`);
    expect(text).toContain(`= ${(11 + 10 - gained).toFixed(2)} h    (wait)`);
  });

  it('writes the row that won with its numbers', () => {
    expect(text).toContain('For the step in which it falls:');
    expect(text).toContain('t = t_0 + (t_req - g_0) / a_T');
    expect(text.indexOf('Method:')).toBeLessThan(text.indexOf('Row by row:'));
  });
});

import { describe, expect, it } from 'vitest';
import { inWords } from '../../src/formula/calculation-error.js';
import { type AnyFormula, type CalculationError, isCalculationError } from '../../src/formula/index.js';
import { formulas } from '../../src/registry/index.js';
import { seeded } from '../../verification/oracles/random.js';
import { drawnInputs, type Inputs } from './draws.js';

/**
 * A refusal of numbers says what is wrong, in numbers. What it says would pass does pass, and hardly more than that is refused: the
 * number in the sentence is the limit.
 */

const DRAWS = 20;

const UPPER = /^must be (?:below|at most|less than) /u;
const LOWER = /^must be (?:above|at least|more than|longer than) (?!.*by so much)/u;

/** What the words of a limit come to, by the inputs that they name: a word for a formula that has no such input says nothing here. */
const SAID: Readonly<Record<string, (input: Readonly<Record<string, number>>) => number | undefined>> = {
  'half the outside diameter': ({ outsideDiameter }) => outsideDiameter && outsideDiameter / 2,
  'half of the outside diameter': ({ outsideDiameter }) => outsideDiameter && outsideDiameter / 2,
  'the outside diameter': ({ outsideDiameter }) => outsideDiameter,
  'D/6': ({ outsideDiameter }) => outsideDiameter && outsideDiameter / 6,
  'the wall thickness': ({ wallThickness }) => wallThickness,
  'the reference temperature': ({ referenceTemperature }) => referenceTemperature,
  'the highest tested temperature': ({ testedTo }) => testedTo,
  'the minimum cure temperature': ({ minimumTemperature }) => minimumTemperature,
  'twice the mean temperature': ({ meanTemperature }) => meanTemperature && 2 * meanTemperature,
  'the typical energy': ({ typicalEnergy }) => typicalEnergy,
  'the high energy': ({ highEnergy }) => highEnergy,
  'the sheet width': ({ sheetWidth }) => sheetWidth,
  'the dry bulb': ({ dryBulb }) => dryBulb,
  'a quarter turn': () => Math.PI / 2,
  'the whole': () => 1,
  'full strength': () => 1,
  'the whole resistance': () => 1,
};

const WORDS = /^must be (?:below|at most|less than|above|at least|more than|longer than) (.+?), \{limit\}/u;

function refusalOf(formula: AnyFormula, input: Inputs): CalculationError | undefined {
  try {
    formula.compute(input as never);
    return undefined;
  } catch (error) {
    if (isCalculationError(error)) return error;
    throw error;
  }
}

/** The sentence without its numbers: which limit it is. */
const which = ({ parameter, constraint, limit, unit }: CalculationError): string =>
  `${parameter} ${constraint.replace(inWords(limit, unit), '{limit}')}`;

/** Every refusal to which draws lead in which one number is spoilt, with the input that it is about. */
function* refusals(formula: AnyFormula): Generator<readonly [CalculationError, Inputs]> {
  const random = seeded(`spoilt ${formula.id}`);
  for (let draw = 0; draw < DRAWS; draw++) {
    const input = drawnInputs(formula, draw);
    for (const [name, value] of Object.entries(input)) {
      const spoilt = { ...input, [name]: typeof value === 'number' ? value * 10 ** (8 * random() - 4) : value };
      const refusal = refusalOf(formula, spoilt);
      if (refusal !== undefined) yield [refusal, spoilt];
    }
  }
}

describe('the limit of a refusal', () => {
  let asked = 0;
  const said = new Set<string>();

  it.each(formulas.map((formula) => [formula.id, formula] as const))('is where it says: %s', (_, formula) => {
    for (const [refusal, input] of refusals(formula)) {
      expect(refusal.message, JSON.stringify(input)).not.toMatch(/NaN|undefined/u);
      if (refusal.limit === undefined || typeof input[refusal.parameter] !== 'number') continue;
      const { parameter, constraint, limit } = refusal;
      const toward = UPPER.test(constraint) ? -1 : LOWER.test(constraint) ? 1 : 0;
      if (toward === 0) continue;
      const words = WORDS.exec(which(refusal).slice(parameter.length + 1))?.[1] ?? '';
      const named = SAID[words]?.(input as Readonly<Record<string, number>>);
      if (named !== undefined) {
        expect(limit, words).toBeCloseTo(named, 9);
        said.add(words);
      }
      asked += 1;
      const step = 1e-4 * (Math.abs(limit) || 1);
      const at = (value: number) => refusalOf(formula, { ...input, [parameter]: value });
      const inside = at(limit + toward * step);
      if (inside !== undefined) expect(which(inside), JSON.stringify(input)).not.toBe(which(refusal));
      expect(at(limit - toward * step), JSON.stringify(input)).toBeDefined();
    }
  });

  it('was asked for', () => {
    expect(asked).toBeGreaterThan(2000);
    expect([...said].toSorted()).toEqual(Object.keys(SAID).toSorted());
  });
});

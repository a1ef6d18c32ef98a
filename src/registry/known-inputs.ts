import { type AnyFormula, refuse } from '../formula/index.js';

/** The formula, with a function that refuses an input that it does not declare: a misspelt option would else count as left out. */
export function withKnownInputs(formula: AnyFormula): AnyFormula {
  const compute = (input: object): unknown => {
    for (const name of Object.keys(input)) if (!Object.hasOwn(formula.inputs, name)) refuseInput(formula, name, input);
    return formula.compute(input);
  };
  Object.defineProperty(compute, 'name', { value: formula.compute.name });
  return Object.freeze({ ...formula, compute });
}

function refuseInput(formula: AnyFormula, parameter: string, input: object): never {
  const value: unknown = Reflect.get(input, parameter);
  const constraint = `is no input of ${formula.id}, which takes ${Object.keys(formula.inputs).join(', ')}`;
  refuse({ code: 'invalid-input', parameter, value, unit: '', constraint });
}

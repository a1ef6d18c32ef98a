import type { Distribution, NumericInput, Spread } from '../doubt/index.js';
import { nearMiss } from '../json/near-miss.js';
import { type Kind, readQuantity } from '../quantity/index.js';
import { UsageError } from './usage-error.js';

/** `service.designPressure=normal(6 bar; 0.3 bar)`: the distribution of each input, joined by commas. */
export function readSpread(text: string, dependence: string | undefined, inputs: readonly NumericInput[]): Spread {
  if (dependence !== 'none')
    throw new UsageError('--spread needs --dependence none: whether the inputs depend on each other is never assumed');
  const parts = text.split(/,(?![^(]*\))/u).map((part) => {
    const [, path, word, inner] = /^\s*([^=\s]+)=\s*([a-z ]+?)\s*(?:\((.*)\))?\s*$/isu.exec(part) ?? [];
    if (path === undefined || word === undefined)
      throw new UsageError(
        `--spread has "${part.trim()}"; it is written FIELD=SHAPE(A; B), as service.designPressure=normal(6 bar; 0.3 bar)`,
      );
    const input = inputs.find((each) => each.path === path);
    if (input === undefined) {
      const near = nearMiss(
        path,
        inputs.map((each) => each.path),
      );
      throw new UsageError(
        `--spread names ${path}, and the case holds no number there${near === undefined ? '' : `; did you mean ${near}?`}`,
      );
    }
    return [
      path,
      distributionOf(
        input,
        word,
        (inner ?? '').split(';').map((each) => each.trim()),
      ),
    ] as const;
  });
  return { dependence: 'none', inputs: Object.fromEntries(parts) };
}

function distributionOf(input: NumericInput, word: string, given: readonly string[]): Distribution | 'none' {
  const { path, kind } = input;
  const number = (index: number, what: string, of: NumericInput['kind']): number => {
    const text = given[index];
    if (text === undefined || text === '') throw new UsageError(`--spread ${path}: ${word} needs its ${what}`);
    return amountOf(path, of, text);
  };
  // A temperature is spread by differences of temperature.
  const off = kind === 'temperature' ? 'temperature difference' : kind;
  switch (word.toLowerCase()) {
    case 'none':
      return 'none';
    case 'normal':
    case 'lognormal':
      return {
        shape: word.toLowerCase() === 'normal' ? 'normal' : 'lognormal',
        mean: number(0, 'mean', kind),
        standardDeviation: number(1, 'standard deviation', off),
      };
    case 'uniform':
      return { shape: 'uniform', least: number(0, 'least', kind), most: number(1, 'most', kind) };
    case 'weibull':
      return {
        shape: 'Weibull minimum',
        location: number(0, 'location', kind),
        scale: number(1, 'scale', off),
        exponent: number(2, 'exponent', 'number'),
      };
    default:
      throw new UsageError(
        `--spread ${path}: "${word}" is no distribution here; normal, lognormal, uniform, weibull or none`,
      );
  }
}

/** @throws UsageError */
export function amountOf(path: string, kind: Kind | 'number' | 'count', text: string): number {
  if (kind === 'number' || kind === 'count') {
    const number = Number(text);
    if (Number.isFinite(number)) return number;
    throw new UsageError(`${path} is given as "${text}"; it must be a plain number`);
  }
  const reading = readQuantity(kind, text);
  if (reading.ok) return reading.quantity;
  throw new UsageError(`${path}: ${reading.problem}`);
}

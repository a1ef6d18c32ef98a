import type { NumericInput, Tolerances } from '../doubt/index.js';
import { nearMiss } from '../json/near-miss.js';
import { type Kind, readQuantity } from '../quantity/index.js';
import { UsageError } from './usage-error.js';

/** `defect.remainingWall=0.3 mm,service.designTemperature=5 K`: how far each input may be off, either way. */
export function readTolerances(text: string, inputs: readonly NumericInput[]): Tolerances {
  return Object.fromEntries(
    text.split(',').map((part) => {
      const [, path, amount] = /^\s*([^=\s]+)=(.+?)\s*$/su.exec(part) ?? [];
      if (path === undefined || amount === undefined)
        throw new UsageError(
          `--within has "${part}"; it is written FIELD=AMOUNT, joined by commas: defect.remainingWall=0.3 mm`,
        );
      const input = inputs.find((each) => each.path === path);
      if (input === undefined) {
        const near = nearMiss(
          path,
          inputs.map((each) => each.path),
        );
        throw new UsageError(
          `--within names ${path}, and the case holds no number there${near === undefined ? '' : `; did you mean ${near}?`}`,
        );
      }
      return [path, amountOf(input, amount)] as const;
    }),
  );
}

function amountOf({ path, kind }: NumericInput, text: string): number {
  if (kind === 'number' || kind === 'count') {
    const number = Number(text);
    if (Number.isFinite(number)) return number;
    throw new UsageError(`--within ${path} is "${text}"; it must be a plain number`);
  }
  // A temperature is off by a difference of temperatures.
  const asked: Kind = kind === 'temperature' ? 'temperature difference' : kind;
  const reading = readQuantity(asked, text);
  if (reading.ok) return reading.quantity;
  throw new UsageError(`--within ${path}: ${reading.problem}`);
}

import type { NumericInput, Tolerances } from '../doubt/index.js';
import { nearMiss } from '../json/near-miss.js';
import { amountOf } from './spread.js';
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
      // A temperature is off by a difference of temperatures.
      const kind = input.kind === 'temperature' ? 'temperature difference' : input.kind;
      return [path, amountOf(path, kind, amount)] as const;
    }),
  );
}

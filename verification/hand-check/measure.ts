import { checkHandCalculation, evaluate, type HandCheck } from '../../src/evaluate/index.js';
import { isCalculationError } from '../../src/formula/index.js';
import { isCaseError } from '../../src/json/index.js';
import { formulas } from '../../src/registry/index.js';
import { isClosedForm } from '../oracles/accuracy.js';
import { seeded } from '../oracles/random.js';
import { plantable, writtenDraw } from './plant.js';

/** How often the checker names a slip that was made, and one that was not. */
export interface HandCheckCount {
  readonly digits: number;
  /** Claims with a slip in them. */
  readonly planted: number;
  /** Of these: the slip that was made is among those named. */
  readonly named: number;
  /** Of these: only others are named, each of which gives the claim too. */
  readonly otherwise: number;
  /** Of these: said to agree though a slip was made; none may be, where the slip changes the digits written. */
  readonly taken: number;
  /** Claims that no slip made. */
  readonly unexplained: number;
  /** Of these: a slip is named all the same. */
  readonly namedWrongly: number;
}

const DIGITS = [3, 4, 5, 6] as const;

const write = (number: number, digits: number, unit: string): string =>
  `${Number(number).toExponential(digits - 1)}${unit === '' || unit === '1' ? '' : ` ${unit}`}`;

/** What a call gives, or nothing where it refuses: a temperature below absolute zero is no claim. */
function ifAny<Result>(call: () => Result): Result | undefined {
  try {
    return call();
  } catch (error) {
    if (isCalculationError(error) || isCaseError(error)) return undefined;
    throw error;
  }
}

/** @param draws of each closed form, at each count of digits */
export function measureHandChecks(draws: number): HandCheckCount[] {
  return DIGITS.map((digits) => {
    const counts = { planted: 0, named: 0, otherwise: 0, taken: 0, unexplained: 0, namedWrongly: 0 };
    for (const formula of formulas.filter(isClosedForm)) {
      const random = seeded(`${formula.id} hand check ${digits}`);
      for (let draw = 0; draw < draws; draw++) {
        const texts = writtenDraw(formula, random);
        if (texts === undefined) continue;
        const right = ifAny(() => evaluate(formula.id, texts));
        if (right === undefined || typeof right.value !== 'number' || right.value === 0) continue;
        const { value, unit } = right;
        const check = (claimed: string): HandCheck | undefined =>
          ifAny(() => checkHandCalculation(formula.id, texts, claimed));
        const all = plantable(formula, texts);
        const chosen = all[Math.floor(random() * all.length)];
        const wrong = chosen === undefined ? undefined : ifAny(() => evaluate(formula.id, chosen.taken));
        if (chosen !== undefined && typeof wrong?.value === 'number') {
          const claimed = write(chosen.after(wrong.value), digits, unit);
          // A slip that does not show in the digits written is none that anybody could see.
          if (Math.abs(Number.parseFloat(claimed) / value - 1) > 2 * 10 ** (1 - digits)) {
            const found = check(claimed);
            if (found === undefined) continue;
            counts.planted += 1;
            if (found.agrees) counts.taken += 1;
            else if (found.slips.some((words) => chosen.says.test(words))) counts.named += 1;
            else if (found.slips.length > 0) counts.otherwise += 1;
          }
        }
        const factor = 10 ** (random() * 2 - 1);
        if (Math.abs(factor - 1) < 0.02) continue;
        const found = check(write(value * factor, digits, unit));
        if (found === undefined) continue;
        counts.unexplained += 1;
        if (found.slips.length > 0) counts.namedWrongly += 1;
      }
    }
    return { digits, ...counts };
  });
}

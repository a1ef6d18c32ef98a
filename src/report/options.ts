import { DIGITS } from '../quantity/format.js';
import type { UnitPreferences, UnitSystem } from './units.js';

/** How a sheet or a step is written. */
export interface SheetOptions {
  /** How it is marked up; plain text where it is left out. */
  readonly format?: 'text' | 'markdown' | 'html' | 'html-fragment' | undefined;
  /** A system of units, or one with its exceptions. */
  readonly units?: UnitSystem | UnitPreferences | undefined;
  /** Significant digits of results, from 2 to 15; inputs of the arithmetic get as many as it takes. */
  readonly digits?: number | undefined;
}

/** Where on a sheet something was printed first, by what it is. */
export interface PrintedBefore {
  /** The step that printed it; the first time, it is this one, and nothing is returned. */
  first(what: string, number: string): string | undefined;
}

/** A sheet that has printed nothing yet. */
export function nothingPrinted(): PrintedBefore {
  const steps = new Map<string, string>();
  return {
    first: (what, number) => {
      const before = steps.get(what);
      if (before === undefined) steps.set(what, number);
      return before;
    },
  };
}

/** How one step is written. */
export interface StepOptions extends SheetOptions {
  /** The inputs as the user typed them, by name: the first substituted line then shows these very numbers and units. */
  readonly typed?:
    | Readonly<
        Record<
          string,
          {
            /** As typed, with its unit. */
            readonly text: string;
          }
        >
      >
    | undefined;
  /** Number of the step on its sheet. */
  readonly number?: string | undefined;
  /**
   * What the sheet has printed before this step, and in which step: it is named there and not printed again.
   *
   * @internal
   */
  readonly printed?: PrintedBefore | undefined;
}

/** Options with their defaults filled in. */
export interface ChosenOptions {
  readonly format: 'text' | 'markdown' | 'html' | 'html-fragment';
  readonly units: UnitPreferences;
  readonly digits: number;
}

/** @throws RangeError when the digits are not a whole number from 2 to 15 */
export function chosen({ format = 'text', units = 'si', digits = DIGITS }: SheetOptions): ChosenOptions {
  if (!(Number.isInteger(digits) && digits >= 2 && digits <= 15))
    throw new RangeError(`digits is ${digits}; must be a whole number from 2 to 15`);
  return { format, units: typeof units === 'string' ? { system: units } : units, digits };
}

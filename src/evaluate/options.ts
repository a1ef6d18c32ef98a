import { type Kind, type UnitPreferences, type UnitSystem, unitOf, units as unitTables } from '../quantity/index.js';
import { refuse } from './refuse.js';

/** How the answer is written. */
export interface EvaluateOptions {
  /** A system of units, or one with its exceptions by kind or by name; `si` where it is left out. */
  readonly units?: UnitSystem | UnitPreferences | undefined;
  /** Significant digits of the step, from 2 to 15. Values keep all of theirs unless digits are asked for. */
  readonly digits?: number | undefined;
}

/** Refuses an option that would be left aside, or that no unit or number of digits meets. @throws CaseError */
export function checkOptions(options: EvaluateOptions): void {
  for (const name of Object.keys(options))
    if (name !== 'units' && name !== 'digits')
      refuse(name, Reflect.get(options, name), 'left out; the options are units, digits');
  const { digits, units = 'si' } = options;
  if (digits !== undefined && !(Number.isInteger(digits) && digits >= 2 && digits <= 15))
    refuse('digits', digits, 'a whole number from 2 to 15');
  const system: unknown = typeof units === 'string' ? units : units?.system;
  if (system !== 'si' && system !== 'us') refuse('units', system, '"si" or "us"');
  if (typeof units === 'string') return;
  for (const [kind, symbol] of Object.entries(units.kinds ?? {})) {
    if (!Object.hasOwn(unitTables, kind)) refuse('units.kinds', kind, `one of ${Object.keys(unitTables).join(', ')}`);
    const known = Object.keys(unitTables[kind as Kind]).join(', ');
    if (unitOf(kind as Kind, symbol) === undefined) refuse(`units.kinds.${kind}`, symbol, `one of ${known}`);
  }
}

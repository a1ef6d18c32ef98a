import { type Amount, type Line, written } from '../quantity/index.js';
import { isKind } from '../quantity/units/index.js';
import { formatToward } from './number.js';
import type { ChosenOptions } from './options.js';
import { shownValue } from './shown-value.js';
import { joined, numberIn, preferredUnit } from './units.js';

/** A sentence with its amounts in the reader's units, limits rounded to the safe side. */
export function lineOnSheet(said: Line, options: ChosenOptions): string {
  return written(said, (amount) => amountOnSheet(amount, options, true));
}

/** An amount of a sentence or a reason as the sheet writes it: a limit never to the side that would let more pass. */
export function amountOnSheet(
  { kind, name, value, toward }: Amount,
  options: ChosenOptions,
  computed: boolean,
): string {
  if (toward === undefined || kind === 'count') return shownValue(kind, name, value, options, computed);
  if (!isKind(kind)) return formatToward(value, options.digits, toward);
  const unit = preferredUnit(kind, name, options.units);
  return joined(formatToward(numberIn(kind, value, unit), options.digits, toward), unit);
}

import { isKind } from '../quantity/units/index.js';
import type { ChosenOptions } from './options.js';
import { givenText, preferredUnit, quantityText } from './units.js';

/** A value as it is shown alone: in the unit wanted for it, by its name and by what it is in words. */
export function shownValue(
  kind: string,
  name: string,
  value: unknown,
  options: ChosenOptions,
  computed: boolean,
  words = '',
): string {
  if (value === undefined) return 'not given';
  if (Array.isArray(value)) return value.length === 1 ? '1 row' : `${value.length} rows`;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value !== 'number') return String(value);
  if (kind === 'count' || !Number.isFinite(value)) return String(value);
  if (!isKind(kind))
    return computed
      ? quantityText('ratio', value, '1', options.digits)
      : givenText('ratio', value, '1', options.digits);
  const unit = preferredUnit(kind, name, options.units, words);
  return computed ? quantityText(kind, value, unit, options.digits) : givenText(kind, value, unit, options.digits);
}

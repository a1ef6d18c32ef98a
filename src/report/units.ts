import { formatNumber } from '../quantity/format.js';
import { type Kind, unitOf } from '../quantity/index.js';
import { fromSi } from '../quantity/quantity.js';
import { formatGiven } from './number.js';

export { preferredUnit, type UnitPreferences, type UnitSystem } from '../quantity/preferred-unit.js';

/** A unit as it stands after a number on the sheet; empty for a pure number. */
export function unitText(symbol: string): string {
  if (symbol === '1') return '';
  return symbol.startsWith('1/') ? symbol.slice(1) : symbol;
}

/** A number and its unit, joined by a space. */
export function joined(text: string, symbol: string): string {
  const unit = unitText(symbol);
  return unit === '' ? text : `${text} ${unit}`;
}

/** A computed quantity as text, in a unit of its kind. */
export function quantityText(kind: Kind, value: number, symbol: string, digits: number): string {
  return joined(formatNumber(numberIn(kind, value, symbol), digits), symbol);
}

/** A given quantity as text: in full when it is short. */
export function givenText(kind: Kind, value: number, symbol: string, digits: number): string {
  return joined(formatGiven(numberIn(kind, value, symbol), digits), symbol);
}

/** The number of `symbol` in a quantity. */
export function numberIn(kind: Kind, value: number, symbol: string): number {
  const unit = unitOf(kind, symbol);
  if (unit === undefined) throw new RangeError(`a ${kind} is not written in ${symbol}`);
  return fromSi(value, unit);
}

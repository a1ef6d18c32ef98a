import { type Kind, siSymbol, type Unit, unitOf, units } from '../quantity/index.js';
import { fromSi } from '../quantity/quantity.js';
import { spellingsOf } from '../quantity/text.js';
import type { AmountField } from '../repair/case/table-field.js';
import { decimalPattern, type Upper } from './number-pattern.js';

/** A field that holds a quantity. */
export type QuantityField = AmountField & { readonly kind: Kind };

/**
 * The texts that a field takes for its quantity, as a pattern: a number, each unit of the kind in each of its spellings, and
 * the bounds as far as digits can say them: the sign, zero, and an upper bound where it is a round number of the unit.
 */
export function quantityPattern(field: QuantityField): string {
  const symbols = Object.keys(units[field.kind]);
  const options = symbols.map((symbol) => {
    const spelt = spellingsOf(field.kind, symbol).map(inAnyCase).join('|');
    const unit = symbol === '1' ? '(?:\\s+1)?' : `\\s*(?:${spelt})`;
    return `${numbersFor(field, unitOf(field.kind, symbol) as Unit)}${unit}`;
  });
  return `^\\s*(?:${options.join('|')})\\s*$`;
}

function numbersFor(field: QuantityField, unit: Unit): string {
  const { above, from, below, to } = field;
  const upper = upperIn(below ?? to, unit, to !== undefined);
  const least = above ?? from;
  if (field.kind === 'temperature') {
    const zero = fromSi(0, unit);
    // What lies below absolute zero, and where it is no temperature of a pipe absolute zero itself.
    const cold = zero === 0 ? '' : `|-${numbers({ limit: String(-zero), included: false }, false)}`;
    return `(?:\\+?${numbers(undefined, zero === 0)}${cold})`;
  }
  if (least === undefined) return `[+-]?${numbers(upper, false)}`;
  if (above !== undefined) return `\\+?${numbers(upper, true)}`;
  return `(?:\\+?${numbers(upper, false)}|-(?=\\.?0)0*\\.?0*)`;
}

/** Decimals with a modest exponent, and fractions as they are read on a rule; `not zero` where a digit has to say so. */
function numbers(upper: Upper | undefined, notZero: boolean): string {
  const some = notZero ? '(?=[0.\\s-]*[1-9])' : '';
  const exponent = upper === undefined ? '(?:[eE][+-]?\\d{1,2})?' : '(?:[eE]-\\d{1,2})?';
  const fraction = upper === undefined ? '(?:\\d+(?:[ \\t]+|-))?\\d+/0*[1-9]\\d*|' : '';
  return `${some}(?:${fraction}${decimalPattern(upper)}${exponent})`;
}

function upperIn(bound: number | undefined, unit: Unit, included: boolean): Upper | undefined {
  return bound === undefined ? undefined : { limit: String(fromSi(bound, unit)), included };
}

/** As a pattern: letters that may be small or capital, and marks that mean something to a pattern. */
function inAnyCase({ text, anyCase }: { readonly text: string; readonly anyCase: boolean }): string {
  return [...text].map((each) => charPattern(each, anyCase)).join('');
}

function charPattern(character: string, anyCase: boolean): string {
  if (/[\\^$.*+?()[\]{}|/]/u.test(character)) return `\\${character}`;
  const [small, capital] = [character.toLowerCase(), character.toUpperCase()];
  return anyCase && small !== capital ? `[${small}${capital}]` : character;
}

/** The unit that a message names first. */
export function unitsInWords(kind: Kind): string {
  const symbols = Object.keys(units[kind]).filter((symbol) => symbol !== '1');
  return symbols.length === 0 ? siSymbol(kind) : symbols.join(', ');
}

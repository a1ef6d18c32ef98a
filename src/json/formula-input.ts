import type { AnyFormula, InputKind } from '../formula/index.js';
import { exampleOf, type Kind, readQuantity } from '../quantity/index.js';
import { isKind } from '../quantity/units/index.js';
import { CaseError, type CaseIssue, shown } from './case-error.js';
import { nearMiss } from './near-miss.js';
import type { Typed } from './typed.js';

/** What reading an input takes from its declaration. */
interface Declared {
  readonly symbol: string;
  readonly name: string;
  readonly kind: InputKind;
  readonly default?: unknown;
  readonly optional?: true;
  readonly choices?: readonly string[];
  readonly columns?: Readonly<Record<string, InputKind>>;
}

/** The argument of a formula, read from text. */
export interface FormulaInput {
  /** What the formula's function takes. */
  readonly input: Readonly<Record<string, unknown>>;
  /** The quantities as they were typed, by the name of their input. */
  readonly typed: Readonly<Record<string, Typed>>;
}

/**
 * Reads the argument of a formula from text: quantities with their units, plain numbers and counts bare, words as they
 * are, lists as rows of such texts. An input is called by its name or by its symbol; one that has a default, or that is optional, may be left out.
 *
 * @param formula its declaration
 * @param given each input by its name or symbol
 * @param options.typedValues takes a bare number for a quantity too, as one in the coherent SI unit, which is what the
 *   constructors make (`gauge.psi(150)`); a file or a form never means that
 * @throws CaseError with every issue at once
 */
export function decodeFormulaInput(
  formula: AnyFormula,
  given: Readonly<Record<string, unknown>>,
  { typedValues = false }: { readonly typedValues?: boolean | undefined } = {},
): FormulaInput {
  const declarations = formula.inputs as Readonly<Record<string, Declared>>;
  const issues: CaseIssue[] = [];
  const texts = named(formula, given, issues);
  const input: Record<string, unknown> = {};
  const typed: Record<string, Typed> = {};
  for (const [name, declaration] of Object.entries(declarations)) {
    const text = texts.get(name);
    if (text !== undefined) {
      input[name] = readAs(declaration, text, name, { report: (issue) => issues.push(issue), typedValues });
      const entry = typeof text === 'string' && isKind(declaration.kind) ? typedAs(declaration.kind, text) : undefined;
      if (entry !== undefined) typed[name] = entry;
    } else if (declaration.default === undefined && declaration.optional !== true) {
      const { expected, example } = wanted(declaration);
      const message = `${name} is missing (${declaration.name}); expected ${expected}, for example ${example}`;
      issues.push({ path: name, value: undefined, expected, example, message });
    }
  }
  if (issues.length > 0) throw new CaseError(issues);
  return { input, typed };
}

/** The texts by the names of the inputs; a symbol stands for its name. */
function named(
  formula: AnyFormula,
  given: Readonly<Record<string, unknown>>,
  issues: CaseIssue[],
): ReadonlyMap<string, unknown> {
  const declarations = formula.inputs as Readonly<Record<string, Declared>>;
  const names = Object.keys(declarations);
  const texts = new Map<string, unknown>();
  for (const [key, text] of Object.entries(given)) {
    const name = Object.hasOwn(declarations, key) ? key : names.find((each) => declarations[each]?.symbol === key);
    if (name !== undefined && texts.has(name)) {
      const expected = 'each input once';
      issues.push({ path: key, value: text, expected, message: `${name} is given twice; give each input once` });
    } else if (name !== undefined) {
      texts.set(name, text);
    } else {
      const near = nearMiss(key, names);
      const expected = `one of ${names.join(', ')}`;
      const hint = near === undefined ? `it takes ${names.join(', ')}` : `did you mean ${near}?`;
      const message = `${key} (${shown(text)}) is not an input of ${formula.id}; ${hint}`;
      issues.push({ path: key, value: text, expected, ...(near === undefined ? {} : { example: near }), message });
    }
  }
  return texts;
}

/** How values are read, and who is told what is wrong with them. */
interface Reading {
  readonly report: (issue: CaseIssue) => void;
  readonly typedValues: boolean;
}

/** The value that a text stands for; where it stands for none, the issue is reported. */
function readAs(declaration: Declared, text: unknown, path: string, reading: Reading): unknown {
  const { kind, choices, columns } = declaration;
  const { report } = reading;
  if (kind === 'list') return rowsOf(columns ?? {}, text, path, reading);
  if (isKind(kind) && reading.typedValues && Number.isFinite(text)) return text;
  if (isKind(kind) && typeof text === 'string') {
    const read = readQuantity(kind, text);
    if (read.ok) return read.quantity;
    report({ path, value: text, expected: `a ${kind}`, message: `${path}: ${read.problem}` });
    return undefined;
  }
  // A list would pass as the text of its one member, and a symbol has none.
  const word = ['string', 'number', 'boolean'].includes(typeof text) ? String(text).trim() : '';
  if (kind === 'choice' && (choices === undefined || choices.includes(word))) return word;
  if (kind === 'flag' && /^(?:true|yes)$/iu.test(word)) return true;
  if (kind === 'flag' && /^(?:false|no)$/iu.test(word)) return false;
  if (kind === 'count' && /^\d+$/u.test(word) && Number.isSafeInteger(Number(word))) return Number(word);
  if (kind === 'number' && isNumber(word)) return Number(word);
  const { expected, example } = wanted(declaration);
  const near = choices && nearMiss(word, choices);
  const hint = near === undefined ? `, for example ${example}` : `; did you mean ${near}?`;
  report({ path, value: text, expected, example, message: `${path} is ${shown(text)}; expected ${expected}${hint}` });
  return undefined;
}

/** Rows of texts as rows of values. A list of bare values has the one column `value`. */
function rowsOf(columns: NonNullable<Declared['columns']>, given: unknown, path: string, reading: Reading) {
  const { report } = reading;
  const names = Object.keys(columns);
  const bare = names.length === 1 && names[0] === 'value';
  const expected = bare ? 'a list of values' : `a list of rows with ${names.join(', ')}`;
  if (!Array.isArray(given) || given.length === 0) {
    const is = Array.isArray(given) ? 'is empty' : `is ${shown(given)}`;
    const message = `${path} ${is}; expected ${expected}, for example ${path}=@FILE with a JSON array or a CSV table`;
    report({ path, value: given, expected, message });
    return undefined;
  }
  return given.map((row: unknown, index) => {
    const at = `${path}[${index}]`;
    const cells: unknown = bare && (typeof row !== 'object' || row === null) ? { value: row } : row;
    if (typeof cells !== 'object' || cells === null || Array.isArray(cells)) {
      report({ path: at, value: row, expected, message: `${at} is ${shown(row)}; expected ${expected}` });
      return undefined;
    }
    for (const key of Object.keys(cells)) {
      if (Object.hasOwn(columns, key)) continue;
      const near = nearMiss(key, names);
      const hint = near === undefined ? `it has ${names.join(', ')}` : `did you mean ${near}?`;
      report({ path: at, value: key, expected, message: `${at} has no column ${shown(key)}; ${hint}` });
    }
    const values = names.map((name) => {
      const kind = columns[name] ?? 'number';
      const cell = (cells as Readonly<Record<string, unknown>>)[name];
      const declaration: Declared = { symbol: name, name, kind };
      const where = bare ? at : `${at}.${name}`;
      if (cell !== undefined) return [name, readAs(declaration, cell, where, reading)] as const;
      const { expected: cellExpected, example } = wanted(declaration);
      const message = `${where} is missing; expected ${cellExpected}, for example ${example}`;
      report({ path: where, value: cell, expected: cellExpected, example, message });
      return [name, undefined] as const;
    });
    return bare ? values[0]?.[1] : Object.fromEntries(values);
  });
}

/** A decimal number and nothing else: `Number` would also take "", "0x10" and "Infinity". */
export function isNumber(word: string): boolean {
  return /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/iu.test(word) && Number.isFinite(Number(word));
}

function typedAs(kind: Kind, text: string): Typed | undefined {
  const reading = readQuantity(kind, text);
  return reading.ok ? { text, unit: reading.unit, kind } : undefined;
}

/** What an input takes, in words, and an example as it is typed. */
function wanted({ kind, choices }: Declared): { expected: string; example: string } {
  if (isKind(kind)) return { expected: `${article(kind)} ${kind} with its unit`, example: exampleOf(kind) };
  if (kind === 'choice') return { expected: `one of ${choices?.join(', ')}`, example: choices?.[0] ?? '' };
  if (kind === 'flag') return { expected: 'true or false', example: 'false' };
  if (kind === 'count') return { expected: 'a bare whole number', example: '3' };
  if (kind === 'list') return { expected: 'a list of rows', example: '@FILE, a JSON array or a CSV table' };
  return { expected: 'a bare number without a unit', example: '0.3' };
}

function article(word: string): string {
  return /^[aeiou]/u.test(word) ? 'an' : 'a';
}

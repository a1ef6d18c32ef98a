import { type Kind, type Quantity, readQuantity, siSymbol, writeQuantity } from '../quantity/index.js';
import { checkRuleSet, coefficientTable, patternOf, type RuleSet } from '../rules/index.js';
import { CaseError, type CaseIssue, shown } from './case-error.js';
import { parseJson } from './parse-json.js';

/**
 * Reads a rule set of a user's own from JSON: the same rules as in those of this library, each number that has a unit as text
 * with it, `"50 mm"`, each with its clause and its evidence.
 *
 * @param text the whole document
 * @throws CaseError where a number has no unit or one of another kind
 * @throws CalculationError `invalid-input` where it has not the shape of a rule set
 */
export function parseRuleSet(text: string): RuleSet {
  const issues: CaseIssue[] = [];
  const read = withQuantities(parseJson(text), '', (path, kind, value) => fromText(path, kind, value, issues));
  if (issues.length > 0) throw new CaseError(issues);
  return checkRuleSet(read as RuleSet);
}

/**
 * A rule set as JSON that `parseRuleSet` reads: what one of a user's own can be made from.
 *
 * @param rules of this library, or a user's own
 */
export function writeRuleSet(rules: RuleSet): string {
  const written = withQuantities(rules, '', (_, kind, value) =>
    typeof value === 'number' ? writeQuantity(kind, value as Quantity<Kind>, siSymbol(kind)) : value,
  );
  return `${JSON.stringify(written, undefined, 2)}\n`;
}

type Change = (path: string, kind: Kind, value: unknown) => unknown;

/** A copy of what holds rules, each with its value changed. */
function withQuantities(node: unknown, path: string, change: Change): unknown {
  if (!isObject(node)) return node;
  if ('clause' in node) return 'value' in node ? { ...node, value: changed(node['value'], path, change) } : node;
  return mapped(node, (key, child) => withQuantities(child, path === '' ? key : `${path}.${key}`, change));
}

/** A copy of the value of a rule, with every number that has a unit changed; `null` where the set has no such limit. */
function changed(value: unknown, path: string, change: Change): unknown {
  if (value === null) return value;
  const kind = kindAt(path);
  if (kind !== undefined) return change(path, kind, value);
  if (Array.isArray(value)) return value.map((row, index) => changed(row, `${path}[${index}]`, change));
  return isObject(value) ? mapped(value, (key, child) => changed(child, `${path}.${key}`, change)) : value;
}

function mapped(held: Readonly<Record<string, unknown>>, by: (key: string, child: unknown) => unknown): unknown {
  return Object.fromEntries(Object.entries(held).map(([key, child]) => [key, by(key, child)]));
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function kindAt(path: string): Kind | undefined {
  const pattern = patternOf(path);
  // Beside the coefficients: the step of temperature in which those of the factor are written.
  if (pattern === 'temperatureFactor.unit') return 'temperature difference';
  const kind = coefficientTable.get(pattern)?.kind;
  return kind === undefined || kind === 'number' || kind === 'count' ? undefined : kind;
}

function fromText(path: string, kind: Kind, value: unknown, issues: CaseIssue[]): unknown {
  const reading = typeof value === 'string' ? readQuantity(kind, value) : undefined;
  if (reading?.ok === true) return reading.quantity;
  const example = writeQuantity(kind, 1 as Quantity<Kind>, siSymbol(kind));
  const expected = `a ${kind} as text with a unit`;
  const message =
    reading === undefined
      ? `rules.${path} is ${shown(value)}; expected ${expected}, for example ${JSON.stringify(example)}`
      : `rules.${path}: ${reading.problem}`;
  issues.push({ path: `rules.${path}`, value, expected, example, message });
  return Number.NaN;
}

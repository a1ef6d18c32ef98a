import { refuse, type SourceTag, sourceTags } from '../formula/index.js';
import { brokenBound } from './bounds.js';
import { checkTables } from './check-tables.js';
import { type CoefficientShape, coefficientTable } from './coefficient-table.js';
import { type PlacedRule, patternOf, rulesOf } from './coefficients.js';
import { iso24817 } from './iso-24817.js';
import type { RuleSet } from './rule-set.js';

/** Rules whose value may be `null`: the set has no such limit, option or rule. */
const NULLABLE =
  /^(?:classes\.#\.highest(?:Pressure|Temperature)|leakFactorOption\.#|overlap\.hole|highRisk\.(?:si|us))$/u;

/**
 * A copy of a rule set of a user's own, which has the shape of those of this library: the same rules, each with a value of
 * its kind within its bounds, a clause and its evidence.
 *
 * @param given which stays as it is
 * @throws CalculationError `invalid-input`, which names the rule by its path
 */
export function checkRuleSet(given: RuleSet): RuleSet {
  for (const name of ['id', 'edition', 'heading'] as const)
    if (!isText(given[name])) wrong(name, given[name], 'must be text that is not empty');
  const rules = new Map(rulesOf(given).map(({ path, rule }) => [path, rule]));
  for (const { path, rule } of rulesOf(iso24817)) checkRule(path, rules.get(path), rule);
  const known = new Set(rulesOf(iso24817).map(({ path }) => path));
  for (const path of rules.keys())
    if (!known.has(path)) wrong(path, 'a rule', 'must be left out: no such rule is known');
  checkTables(given, 'rules.');
  return structuredClone(given);
}

function checkRule(path: string, given: PlacedRule['rule'] | undefined, like: PlacedRule['rule']): void {
  if (given === undefined) wrong(path, 'missing', 'must be a rule with its clause');
  if (!isText(given.clause)) wrong(`${path}.clause`, given.clause, 'must be text that is not empty');
  if (!('value' in like)) {
    if (!('unknown' in given))
      wrong(path, 'a value', 'must be `{ unknown, clause }`: nothing here can use a value of it');
    return;
  }
  if (!('value' in given)) wrong(path, 'unknown', 'must have a value: a design cannot do without it');
  const tag: unknown = given.evidence?.tag;
  if (!sourceTags.includes(tag as SourceTag))
    wrong(`${path}.evidence.tag`, tag, `must be one of ${sourceTags.join(', ')}`);
  checkValue(path, given.value, like.value);
}

function checkValue(path: string, given: unknown, like: unknown): void {
  const pattern = patternOf(path);
  if (given === null && NULLABLE.test(pattern)) return;
  const shape = coefficientTable.get(pattern);
  const parts = partsOf(pattern);
  if (pattern === 'temperatureFactor.unit') checkUnit(path, given);
  else if (shape !== undefined) checkNumber(`rules.${path}`, given, shape);
  else if (Array.isArray(like)) checkRows(path, given, like[0]);
  else if (parts.size > 0) {
    if (!isObject(given)) wrong(path, given, `must be an object with ${[...parts].join(', ')}`);
    for (const part of parts) checkValue(`${path}.${part}`, given[part], partOf(like, part));
    for (const key in given)
      if (!parts.has(key)) wrong(`${path}.${key}`, given[key], 'must be left out: no such value is known');
  } else if (typeof given !== typeof like) wrong(path, given, `must be of type ${typeof like}`);
  else if (pattern === 'mismatch' && given !== like) wrong(path, given, `must be ${JSON.stringify(like)}`);
}

/** The factor is written in kelvins or in degrees Fahrenheit: no document counts in anything else. */
function checkUnit(path: string, given: unknown): void {
  if (given !== 1 && given !== 5 / 9) wrong(path, given, 'must be the unit of the coefficients: 1 K, or 1 deltaF');
}

/** Rows of a table. */
function checkRows(path: string, given: unknown, like: unknown): void {
  if (!Array.isArray(given) || given.length === 0) wrong(path, given, 'must be a list of at least one row');
  for (const [index, row] of given.entries()) checkValue(`${path}[${index}]`, row, like);
}

/** @throws CalculationError where a number is none, or lies outside the bounds of its coefficient */
export function checkNumber(path: string, given: unknown, shape: CoefficientShape): void {
  if (typeof given !== 'number') unfit(path, given, `must be a finite number: a ${shape.kind} in SI`);
  const broken = brokenBound(shape, given);
  if (broken !== undefined) unfit(path, given, `must ${broken.must.replace('{0}', String(broken.bound))}`);
}

/** What the values at a path hold, by the table of the coefficients and by what is no coefficient. */
function partsOf(pattern: string): ReadonlySet<string> {
  const parts = new Set<string>();
  for (const known of coefficientTable.keys()) {
    if (!known.startsWith(`${pattern}.`)) continue;
    parts.add(known.slice(pattern.length + 1).replace(/[.[].*$/u, ''));
  }
  if (/^classes\.#$/u.test(pattern))
    for (const word of ['service', 'mayReachTemperature', 'safetyCritical', 'gasOrHazard']) parts.add(word);
  if (pattern === 'temperatureFactor') parts.add('unit');
  return parts;
}

/** The part of the set that this library ships; where that holds `null`, the shape alone says what it must be. */
function partOf(like: unknown, part: string): unknown {
  return isObject(like) ? like[part] : undefined;
}

function wrong(path: string, value: unknown, constraint: string): never {
  unfit(`rules.${path}`, value, constraint);
}

function unfit(parameter: string, value: unknown, constraint: string): never {
  const shown = value === undefined ? 'missing' : typeof value === 'object' ? JSON.stringify(value) : value;
  refuse({ code: 'invalid-input', parameter, value: shown, unit: '', constraint });
}

function isText(value: unknown): boolean {
  return typeof value === 'string' && /\S/u.test(value);
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

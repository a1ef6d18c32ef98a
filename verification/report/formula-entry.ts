import {
  type AnyFormula,
  type Definition,
  type Evidence,
  type InputDeclaration,
  type OutputDeclaration,
  type SourceReference,
  weakest,
} from '../../src/formula/index.js';
import type { Kind } from '../../src/quantity/index.js';
import { siSymbol, units } from '../../src/quantity/index.js';
import { cite } from '../../src/report/citation.js';
import { type Expression, parseExpression } from '../../src/report/expression.js';
import { symbolTex, toTex } from '../../src/report/tex.js';
import type { CaseInput, CaseRecord } from '../case.js';
import type { CaseResult } from '../runner/judge.js';
import type { CaseRow, EquationLine, FormulaEntry, SymbolRow } from './shape.js';

/** One formula as the report shows it. */

/** Sums of more terms than this are set in several lines, since a page has an edge. */
const TERMS = 5;

/** The terms of a sum with their signs. */
function termsOf(part: Expression, sign = '+'): { readonly sign: string; readonly term: Expression }[] {
  if (part.sort !== 'binary' || (part.operator !== '+' && part.operator !== '-')) return [{ sign, term: part }];
  return [...termsOf(part.left, sign), { sign: part.operator, term: part.right }];
}

function sumTex(left: string, whole: Expression): string {
  const terms = termsOf(whole);
  if (terms.length <= TERMS) return `${left} = ${toTex(whole)}`;
  const signed = terms.map(({ sign, term }, index) => {
    const isSum = term.sort === 'binary' && (term.operator === '+' || term.operator === '-');
    return `${index === 0 ? '' : `${sign} `}${isSum ? `\\left(${toTex(term)}\\right)` : toTex(term)}`;
  });
  const lines = Array.from({ length: Math.ceil(terms.length / TERMS) }, (_, index) =>
    signed.slice(index * TERMS, (index + 1) * TERMS).join(' '),
  );
  return `\\begin{aligned}${left} &= ${lines.join('\\\\ &\\quad ')}\\end{aligned}`;
}

function line(symbol: string, expression: string, note = ''): EquationLine {
  return {
    tex: sumTex(symbolTex(symbol), parseExpression(expression)),
    text: `${symbol} = ${expression}`,
    note,
  };
}

const defined = (where: readonly Definition[] = []): EquationLine[] =>
  where.map(({ symbol, expression }) => line(symbol, expression, 'where'));

function equationLines({ equation }: AnyFormula, symbol: string): EquationLine[] {
  if ('algorithm' in equation) return [];
  if ('residual' in equation) {
    const tex = `${toTex(parseExpression(equation.residual))} = 0`;
    return [{ tex, text: `${equation.residual} = 0`, note: `${symbol} is the root` }, ...defined(equation.where)];
  }
  if ('expression' in equation) return [line(symbol, equation.expression), ...defined(equation.where)];
  const branches = equation.branches.flatMap(({ when, expression, where }) => [
    line(symbol, expression, when === undefined ? 'otherwise' : `if ${when}`),
    ...defined(where),
  ]);
  return [...branches, ...defined(equation.where)];
}

function isKind(kind: string): kind is Kind {
  return Object.hasOwn(units, kind);
}

function unitOf(kind: string): string {
  if (!isKind(kind)) return '';
  const symbol = siSymbol(kind);
  return symbol === '1' ? '' : symbol;
}

/** A number in at most six digits, without padding. */
function short(value: number): string {
  const size = Math.abs(value);
  if (size !== 0 && (size >= 1e6 || size < 1e-3)) return value.toExponential(5).replace(/\.?0+e\+?/u, 'e');
  return String(Number(value.toPrecision(6)));
}

function shown(value: number | string | boolean | undefined): string {
  if (value === undefined) return '';
  return typeof value === 'number' ? short(value) : String(value);
}

function columnsText(columns: Readonly<Record<string, string>> | undefined): string {
  const parts = Object.entries(columns ?? {}).map(([name, kind]) => `${name}: ${unitOf(kind) || kind}`);
  return parts.length === 0 ? '' : ` (${parts.join(', ')})`;
}

function symbolRows(formula: AnyFormula): SymbolRow[] {
  const inputs = Object.values(formula.inputs as Record<string, InputDeclaration>).map((input): SymbolRow => {
    const { symbol, kind, name, sample, choices, columns } = input;
    return {
      symbol,
      tex: symbolTex(symbol),
      name: `${name}${columnsText(columns)}`,
      kind,
      unit: unitOf(kind),
      default: shown(input.default),
      span: choices === undefined ? (sample ?? []).map(short).join(' to ') : choices.join(', '),
      result: false,
    };
  });
  return [
    ...inputs,
    ...outputsOf(formula).map(
      ({ symbol, kind, name, columns }): SymbolRow => ({
        symbol,
        tex: symbolTex(symbol),
        name: `${name}${columnsText(columns)}`,
        kind,
        unit: unitOf(kind),
        default: '',
        span: '',
        result: true,
      }),
    ),
  ];
}

function outputsOf(formula: AnyFormula): readonly OutputDeclaration[] {
  const { output } = formula as { output: OutputDeclaration | Readonly<Record<string, OutputDeclaration>> };
  return typeof output.symbol === 'string' ? [output as OutputDeclaration] : Object.values(output);
}

/** Who stands behind the expected value of a case. */
function backing({ record }: CaseResult): string {
  const { source, route } = record;
  const named = source === null ? '' : `${source.key}, ${source.locator}`;
  return [named, route === undefined ? '' : `second route: ${route}`].filter((text) => text !== '').join('; ');
}

/** One input as the record holds it: a text, rows of a list, or the result of another formula. */
function inputText(given: CaseInput): string {
  if (typeof given === 'string') return given;
  if ('from' in given) {
    const { formula, inputs, output } = given.from;
    return `${output === undefined ? '' : `${output} of `}${formula} of (${namedText(inputs)})`;
  }
  const rows = given.map((row) => (typeof row === 'string' ? row : Object.values(row).join(' ')));
  const columns = given.flatMap((row) => (typeof row === 'string' ? [] : [Object.keys(row).join(' ')]))[0];
  return `${columns === undefined ? '' : `(${columns}) `}${rows.join('; ')}`;
}

const namedText = (inputs: Readonly<Record<string, CaseInput>>): string =>
  Object.entries(inputs)
    .map(([name, given]) => `${name} = ${inputText(given)}`)
    .join(', ');

/** What is put in, so that a reader can do the row again by hand. */
function inputsText({ inputs, vary = {} }: CaseRecord): string {
  const runs = Object.entries(vary).map(([name, values]) => `${name} = ${values.join('; ')} in turn`);
  return [namedText(inputs), ...runs].filter((text) => text !== '').join(', ');
}

export function caseRows(result: CaseResult): CaseRow[] {
  const { record, outcomes } = result;
  return outcomes.map(({ output, expected, computed, digits, verdict, because, moved }) => ({
    id: record.id,
    class: record.class,
    source: backing(result),
    inputs: inputsText(record),
    output,
    printed: expected,
    computed,
    digitsPrinted: digits?.printed ?? null,
    digitsAgreed: digits === undefined ? null : Math.floor(digits.agreed * 10) / 10,
    verdict,
    because:
      because ??
      (moved === undefined ? '' : `inputs moved by ${Number(moved.part.toPrecision(2))} of half a last place`),
  }));
}

export function formulaEntry(
  formula: AnyFormula,
  results: readonly CaseResult[],
  known: Pick<FormulaEntry, 'lines' | 'routes' | 'called'>,
): FormulaEntry {
  const evidence = Object.entries(formula.evidence as Readonly<Record<string, Evidence>>);
  return {
    id: formula.id,
    title: formula.title,
    equation: equationLines(formula, outputsOf(formula)[0]?.symbol ?? 'result'),
    algorithm: 'algorithm' in formula.equation ? formula.equation.algorithm : '',
    symbols: symbolRows(formula),
    limits: formula.limits.map(({ sort, text, source }) => ({
      sort,
      text,
      source: source === undefined ? '' : cite(source),
    })),
    inhomogeneous: formula.inhomogeneous ?? '',
    sources: formula.sources.map((source: SourceReference) => ({ key: source.key, text: cite(source) })),
    evidence: evidence.map(([of, { tag, derived, note }]) => ({ of, tag, derived: derived ?? '', note: note ?? '' })),
    tag: weakest(evidence.map(([, { tag }]) => tag)),
    ...known,
    cases: results.filter(({ record }) => record.formula === formula.id).flatMap(caseRows),
  };
}

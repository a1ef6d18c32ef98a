import type { AnyFormula, Branch, Definition } from '../formula/index.js';
import { parseExpression } from '../report/expression.js';
import { escapedHtml } from '../report/html-text.js';
import { equationMath, symbolMath } from '../report/mathml.js';
import { substitute } from '../report/substitute.js';
import { symbolTex } from '../report/tex.js';
import { lineTex, wordsTex } from './line-tex.js';

/** An equation for people: as text, as MathML for a page, as LaTeX for a document. */
export interface Typeset {
  /** In the grammar of the declarations. */
  readonly text: string;
  /** A whole `math` element. */
  readonly mathml: string;
  /** Without the signs that begin and end display mathematics. */
  readonly latex: string;
}

/** One line of an equation: what stands left of the sign, what stands right, and when. */
export interface Line {
  readonly left: string;
  /** An expression of the grammar, or a line of the arithmetic with its units. */
  readonly right: string;
  readonly note?: string | undefined;
}

/**
 * The equation of a formula, definitions first, each branch with its condition. What is found by search or by count has no
 * equation: its method stands in words.
 *
 * @param formula its declaration
 */
export function typesetEquation({ equation, output }: AnyFormula): Typeset {
  const { symbol = '' } = ('symbol' in output ? output : (Object.values(output)[0] ?? {})) as { symbol?: string };
  if ('algorithm' in equation) {
    const { algorithm } = equation;
    return { text: algorithm, mathml: mathOf(`<mtext>${escapedHtml(algorithm)}</mtext>`), latex: wordsTex(algorithm) };
  }
  const own = 'branches' in equation ? equation.branches.flatMap((branch) => branchLines(symbol, branch)) : [];
  const single: Line[] =
    'expression' in equation
      ? [{ left: symbol, right: equation.expression }]
      : 'residual' in equation
        ? [{ left: '0', right: equation.residual }]
        : [];
  return typesetLines([...definitionLines(equation.where), ...own, ...single]);
}

/** Lines of an equation, one under the other. */
export function typesetLines(lines: readonly Line[]): Typeset {
  const rows = lines.map(({ left, right, note }) => {
    const beside = note === undefined ? '' : `<mspace width="1em"/><mtext>${escapedHtml(note)}</mtext>`;
    const side = equationMath(right) ?? `<mtext>${escapedHtml(right)}</mtext>`;
    return `<mtr><mtd>${left === '' ? '' : symbolMath(left)}</mtd><mtd><mo>=</mo>${side}${beside}</mtd></mtr>`;
  });
  const latex = lines.map(({ left, right, note }) => {
    const beside = note === undefined ? '' : `\\quad ${wordsTex(note)}`;
    return `${left === '' ? '' : symbolTex(left)} &= ${lineTex(right)}${beside}`;
  });
  return {
    text: lines
      .map(({ left, right, note }) => `${left} = ${right}${note === undefined ? '' : `  (${note})`}`)
      .join('\n'),
    mathml: mathOf(`<mtable>${rows.join('')}</mtable>`),
    latex: `\\begin{aligned}${latex.join(' \\\\ ')}\\end{aligned}`,
  };
}

function definitionLines(definitions: readonly Definition[] | undefined): Line[] {
  return (definitions ?? []).map(({ symbol, expression }) => ({ left: symbol, right: expression }));
}

function branchLines(symbol: string, { when, where, expression }: Branch): Line[] {
  const note = when === undefined ? 'otherwise' : `if ${substitute(parseExpression(when))}`;
  return [...definitionLines(where), { left: symbol, right: expression, note }];
}

function mathOf(inside: string): string {
  return `<math xmlns="http://www.w3.org/1998/Math/MathML" display="block">${inside}</math>`;
}

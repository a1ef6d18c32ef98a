import { binding, type Expression, parseExpression } from './expression.js';
import { escapedHtml } from './html-text.js';
import { TIE } from './substitute.js';

const GREEK: Readonly<Record<string, string>> = {
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
  delta: 'δ',
  epsilon: 'ε',
  eps: 'ε',
  zeta: 'ζ',
  eta: 'η',
  theta: 'θ',
  kappa: 'κ',
  lambda: 'λ',
  mu: 'μ',
  nu: 'ν',
  xi: 'ξ',
  pi: 'π',
  rho: 'ρ',
  sigma: 'σ',
  tau: 'τ',
  phi: 'φ',
  chi: 'χ',
  psi: 'ψ',
  omega: 'ω',
  Gamma: 'Γ',
  Delta: 'Δ',
  Theta: 'Θ',
  Lambda: 'Λ',
  Sigma: 'Σ',
  Phi: 'Φ',
  Psi: 'Ψ',
  Omega: 'Ω',
};

const SIGNS: Readonly<Record<string, string>> = { '==': '=', '!=': '≠', '<=': '≤', '>=': '≥', '*': '·', '-': '−' };

const FUNCTIONS: Readonly<Record<string, string>> = {
  log: 'ln',
  asin: 'arcsin',
  acos: 'arccos',
  atan: 'arctan',
  asinh: 'arsinh',
  acosh: 'arcosh',
  atanh: 'artanh',
};

const ATOM = 9;

/** A piece of MathML, and how tightly it holds together. */
interface Printed {
  readonly math: string;
  readonly level: number;
}

/** A number that stands in an equation with its unit, by the name that takes its place while the equation is read. */
type Placed = ReadonlyMap<string, string>;

const NUMBER_WITH_UNIT = new RegExp(`\\d[\\d.]*(?:e[+-]?\\d+)?${TIE}[^\\s*×+,()=<>]+(?:${TIE}[^\\s*×+,()=<>]+)*`, 'gu');

/** A line of an equation, symbols or numbers with units, as MathML; nothing where it cannot be read as one. */
export function equationMath(text: string): string | undefined {
  const placed = new Map<string, string>();
  const readable = text
    .replaceAll(NUMBER_WITH_UNIT, (found) => {
      const name = `placed_${placed.size}_`;
      placed.set(name, found);
      return name;
    })
    .replaceAll('×', '*');
  try {
    return print(parseExpression(readable), placed).math;
  } catch {
    return undefined;
  }
}

/** A symbol of a declaration, `sigma_h`, as MathML. */
export function symbolMath(symbol: string): string {
  const [stem = '', ...subscripts] = symbol.split('_').filter((part) => part !== '');
  if (subscripts.length === 0) return word(stem);
  return `<msub>${word(stem)}<mrow>${subscripts.map(word).join('<mo>,</mo>')}</mrow></msub>`;
}

function word(text: string): string {
  const greek = GREEK[text];
  if (greek !== undefined) return `<mi>${greek}</mi>`;
  const parts = /^([A-Za-z]+)(\d+)$/u.exec(text);
  const [, stem = '', digits = ''] = parts ?? [];
  if (stem !== '' && (stem.length === 1 || GREEK[stem] !== undefined))
    return `<msub>${word(stem)}<mn>${digits}</mn></msub>`;
  if (/^\d+$/u.test(text)) return `<mn>${text}</mn>`;
  return text.length === 1 ? `<mi>${text}</mi>` : `<mi mathvariant="normal">${escapedHtml(text)}</mi>`;
}

function number(text: string): string {
  const [mantissa = '', exponent] = text.toLowerCase().split('e');
  if (exponent === undefined) return `<mn>${mantissa}</mn>`;
  const power = `<msup><mn>10</mn><mn>${String(Number(exponent)).replace('-', '−')}</mn></msup>`;
  return Number(mantissa) === 1 ? power : `<mn>${mantissa}</mn><mo>×</mo>${power}`;
}

/** A number and its unit: upright, with a thin gap, powers raised. */
function quantity(text: string): string {
  const [value = '', ...unit] = text.split(TIE);
  const units = unit
    .join(' ')
    .replaceAll('deg', '°')
    .replaceAll(/(?<=[a-z])([23])\b/gu, (_, power: string) => (power === '2' ? '²' : '³'));
  return `<mrow>${number(value)}<mspace width="0.17em"/><mtext>${escapedHtml(units)}</mtext></mrow>`;
}

const fenced = (math: string, open = '(', close = ')'): string =>
  `<mrow><mo fence="true">${open}</mo>${math}<mo fence="true">${close}</mo></mrow>`;

function wrap({ math, level }: Printed, least: number): string {
  return level < least ? fenced(math) : math;
}

function print(part: Expression, placed: Placed): Printed {
  switch (part.sort) {
    case 'number':
      return { math: `<mrow>${number(part.text)}</mrow>`, level: /e/iu.test(part.text) ? binding['*'] : ATOM };
    case 'word':
      return { math: `<mtext>${escapedHtml(part.text)}</mtext>`, level: ATOM };
    case 'name': {
      const found = placed.get(part.name);
      return found === undefined
        ? { math: symbolMath(part.name), level: ATOM }
        : { math: quantity(found), level: binding.unary };
    }
    case 'unary': {
      const inside = wrap(print(part.operand, placed), binding.unary);
      const sign = part.operator === '-' ? '<mo>−</mo>' : '<mtext>not </mtext>';
      return { math: `<mrow>${sign}${inside}</mrow>`, level: binding.unary };
    }
    case 'call':
      return call(
        part.name,
        part.args.map((each) => print(each, placed)),
      );
    case 'binary':
      return binary(part, placed);
  }
}

function call(name: string, args: readonly Printed[]): Printed {
  const first = args[0]?.math ?? '';
  if (name === 'sqrt') return { math: `<msqrt>${first}</msqrt>`, level: ATOM };
  if (name === 'cbrt') return { math: `<mroot><mrow>${first}</mrow><mn>3</mn></mroot>`, level: ATOM };
  if (name === 'exp') return { math: `<msup><mi>e</mi><mrow>${first}</mrow></msup>`, level: binding['^'] };
  if (name === 'abs') return { math: fenced(first, '|', '|'), level: ATOM };
  if (name === 'floor') return { math: fenced(first, '⌊', '⌋'), level: ATOM };
  if (name === 'ceil') return { math: fenced(first, '⌈', '⌉'), level: ATOM };
  const shown =
    name === 'log10' ? '<msub><mi>log</mi><mn>10</mn></msub>' : `<mi>${FUNCTIONS[name] ?? escapedHtml(name)}</mi>`;
  return {
    math: `<mrow>${shown}${fenced(args.map(({ math }) => math).join('<mo separator="true">,</mo>'))}</mrow>`,
    level: ATOM,
  };
}

function binary({ operator, left, right }: Extract<Expression, { sort: 'binary' }>, placed: Placed): Printed {
  const level = binding[operator];
  const a = print(left, placed);
  const b = print(right, placed);
  if (operator === '/') return { math: `<mfrac><mrow>${a.math}</mrow><mrow>${b.math}</mrow></mfrac>`, level: ATOM - 1 };
  if (operator === '^') return { math: `<msup><mrow>${wrap(a, ATOM)}</mrow><mrow>${b.math}</mrow></msup>`, level };
  const signed = level > binding['<'] && right.sort === 'unary';
  const least = signed ? ATOM : operator === '-' ? level + 1 : level;
  const sign = /^[a-z]/u.test(operator)
    ? `<mtext> ${operator} </mtext>`
    : `<mo>${escapedHtml(SIGNS[operator] ?? operator)}</mo>`;
  return { math: `<mrow>${wrap(a, level)}${sign}${wrap(b, least)}</mrow>`, level };
}

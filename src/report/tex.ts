import { binding, type Expression } from './expression.js';

const GREEK = new Set(
  'alpha beta gamma delta epsilon eps zeta eta theta kappa lambda mu nu xi pi rho sigma tau phi chi psi omega Gamma Delta Theta Lambda Sigma Phi Psi Omega'.split(
    ' ',
  ),
);

const RELATIONS: Readonly<Record<string, string>> = {
  '==': '=',
  '!=': '\\ne',
  '<': '<',
  '<=': '\\le',
  '>': '>',
  '>=': '\\ge',
  '+': '+',
  '-': '-',
  '*': '\\,',
  and: '\\;\\text{and}\\;',
  or: '\\;\\text{or}\\;',
};

const FUNCTIONS: Readonly<Record<string, string>> = {
  log: '\\ln',
  log10: '\\log_{10}',
  asin: '\\arcsin',
  acos: '\\arccos',
  atan: '\\arctan',
  asinh: '\\operatorname{arsinh}',
  acosh: '\\operatorname{arcosh}',
  atanh: '\\operatorname{artanh}',
  cbrt: '\\sqrt[3]',
};

function word(text: string): string {
  if (text === 'eps') return '\\varepsilon';
  if (GREEK.has(text)) return `\\${text}`;
  const greek = /^(?<stem>[A-Za-z]+)(?<digits>\d+)$/u.exec(text)?.groups;
  if (greek !== undefined && (GREEK.has(greek['stem'] ?? '') || greek['stem']?.length === 1))
    return `${word(greek['stem'] ?? '')}_{${greek['digits']}}`;
  return text.length === 1 || /^\d+$/u.test(text) ? text : `\\mathrm{${text}}`;
}

function subscript(text: string): string {
  return text.length > 1 && !GREEK.has(text) ? `\\mathrm{${text}}` : word(text);
}

/** A symbol of a declaration in TeX: `sigma_h` is a Greek letter with a subscript. */
export function symbolTex(symbol: string): string {
  const [stem = '', ...subscripts] = symbol.split('_').filter((part) => part !== '');
  if (subscripts.length === 0) return word(stem);
  return `${word(stem).replace(/_\{(\d+)\}$/u, '$1')}_{${subscripts.map(subscript).join(',')}}`;
}

/** A number of a declaration in TeX, with a power of ten for an exponent. */
function numberTex(text: string): string {
  const [mantissa = '', exponent] = text.toLowerCase().split('e');
  if (exponent === undefined) return mantissa;
  const power = `10^{${Number(exponent)}}`;
  return Number(mantissa) === 1 ? power : `${mantissa}\\times ${power}`;
}

const ATOM = 9;

/** Prints an expression as TeX: fractions, roots, Greek letters, subscripts. */
export function toTex(expression: Expression): string {
  return print(expression).tex;
}

interface Printed {
  readonly tex: string;
  readonly level: number;
}

function wrap({ tex, level }: Printed, least: number): string {
  return level < least ? `\\left(${tex}\\right)` : tex;
}

function print(part: Expression): Printed {
  switch (part.sort) {
    case 'number': {
      const tex = numberTex(part.text);
      return { tex, level: tex.includes('^') ? binding['*'] : ATOM };
    }
    case 'word':
      return { tex: `\\text{${part.text}}`, level: ATOM };
    case 'name':
      return { tex: symbolTex(part.name), level: ATOM };
    case 'unary': {
      const inside = wrap(print(part.operand), binding.unary);
      return { tex: part.operator === '-' ? `-${inside}` : `\\text{not }${inside}`, level: binding.unary };
    }
    case 'call':
      return printCall(part.name, part.args.map(print));
    case 'binary':
      return printBinary(part);
  }
}

function printCall(name: string, args: readonly Printed[]): Printed {
  const first = args[0]?.tex ?? '';
  if (name === 'sqrt' || name === 'cbrt') return { tex: `${FUNCTIONS[name] ?? '\\sqrt'}{${first}}`, level: ATOM };
  if (name === 'exp') return { tex: `e^{${first}}`, level: binding['^'] };
  if (name === 'abs') return { tex: `\\left|${first}\\right|`, level: ATOM };
  if (name === 'floor') return { tex: `\\left\\lfloor ${first}\\right\\rfloor`, level: ATOM };
  if (name === 'ceil') return { tex: `\\left\\lceil ${first}\\right\\rceil`, level: ATOM };
  const list = args.map(({ tex }) => tex).join(',\\;');
  return { tex: `${FUNCTIONS[name] ?? `\\${name}`}\\left(${list}\\right)`, level: ATOM };
}

function printBinary({ operator, left, right }: Extract<Expression, { sort: 'binary' }>): Printed {
  const level = binding[operator];
  const a = print(left);
  const b = print(right);
  if (operator === '/') return { tex: `\\frac{${a.tex}}{${b.tex}}`, level: ATOM - 1 };
  if (operator === '^') return { tex: `{${wrap(a, ATOM)}}^{${b.tex}}`, level };
  const least = operator === '-' || right.sort === 'unary' ? level + 2 : level;
  const rightTex = wrap(b, least);
  // Two numbers side by side would read as one.
  const sign = operator === '*' && /^[\d]/u.test(rightTex) ? '\\cdot ' : `${RELATIONS[operator] ?? operator} `;
  return { tex: `${wrap(a, level)} ${sign}${rightTex}`, level };
}

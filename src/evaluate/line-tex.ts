import { parseExpression } from '../report/expression.js';
import { TIE } from '../report/substitute.js';
import { toTex } from '../report/tex.js';

const NUMBER_WITH_UNIT = new RegExp(`\\d[\\d.]*(?:e[+-]?\\d+)?${TIE}[^\\s*×+,()=<>]+(?:${TIE}[^\\s*×+,()=<>]+)*`, 'gu');

/** A line that is nothing but a number with its unit. */
const RESULT = /^-?\d[\d.]*(?:e-?\d+)? [A-Za-z%/][^=()+*]*$/u;

/** A line of an equation, symbols or numbers with units, as LaTeX; as words where it cannot be read as one. */
export function lineTex(line: string): string {
  if (RESULT.test(line)) return quantityTex(line.replace(' ', TIE));
  const placed: string[] = [];
  const readable = line
    .replaceAll(NUMBER_WITH_UNIT, (found) => `placed_${placed.push(quantityTex(found)) - 1}`)
    .replaceAll('×', '*');
  try {
    const tex = toTex(parseExpression(readable));
    // Between two units a gap is no sign of multiplication.
    return (placed.length > 0 ? tex.replaceAll(' \\, ', ' \\cdot ') : tex).replaceAll(
      /\\mathrm\{placed\}_\{(\d+)\}/gu,
      (_, index: string) => placed[Number(index)] ?? '',
    );
  } catch {
    return wordsTex(line.replaceAll(TIE, ' '));
  }
}

/** A number and its unit: upright, with a thin gap. */
function quantityTex(text: string): string {
  const [value = '', ...unit] = text.split(TIE);
  const [mantissa, exponent] = value.split('e');
  const number = exponent === undefined ? mantissa : `${mantissa}\\times 10^{${Number(exponent)}}`;
  const written = unit
    .join('\\,')
    .replaceAll('%', '\\%')
    .replaceAll(/(?<=[a-z])([23])\b/gu, '^$1');
  return `${number}\\,\\mathrm{${written.replaceAll(/\bdeg([CF])/gu, '{}^{\\circ}$1')}}`;
}

const MARKS: Readonly<Record<string, string>> = { '\\': '\\textbackslash{}', '^': '\\^{}', '~': '\\~{}' };

/** Words in LaTeX, its own marks taken as they are. */
export function wordsTex(text: string): string {
  return `\\text{${text.replaceAll(/[\\{}$&#^_%~]/gu, (mark) => MARKS[mark] ?? `\\${mark}`)}}`;
}

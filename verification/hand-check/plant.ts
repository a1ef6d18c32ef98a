import type { AnyFormula, InputDeclaration } from '../../src/formula/index.js';
import { mainOutput } from '../../src/formula/outputs.js';
import { type Kind, unitOf, units } from '../../src/quantity/index.js';
import { fromSi } from '../../src/quantity/quantity.js';
import { drawInput } from '../oracles/draw.js';
import type { Random } from '../oracles/random.js';

/** A hand calculation with a slip in it, made on the texts that somebody would write, not by the list that looks for slips. */

/** Inputs as they would be written. */
export type Written = Readonly<Record<string, string>>;

export interface Planted {
  readonly slip: string;
  /** What the words of a check must hold to have named this slip. */
  readonly says: RegExp;
  /** What the person took, where the slip is one of inputs. */
  readonly taken: Written;
  /** What became of the result afterwards. */
  readonly after: (number: number) => number;
}

/** Units in which a hand calculation is written. */
const USUAL: Readonly<Partial<Record<Kind, string>>> = {
  length: 'mm',
  'gauge pressure': 'MPa',
  'absolute pressure': 'MPa',
  stress: 'MPa',
  modulus: 'GPa',
  temperature: 'degC',
  force: 'kN',
  time: 'h',
  angle: 'deg',
};

/** Pairs of units that are taken for each other. */
const TAKEN: readonly (readonly [of: string, as: string])[] = [
  ['mm', 'in'],
  ['MPa', 'psi'],
  ['MPa', 'bar'],
  ['degC', 'K'],
  ['kN', 'N'],
  ['h', 'min'],
  ['deg', 'rad'],
];

/** What is read of a declaration here. */
interface Said {
  readonly kind: string;
  readonly name: string;
}

/** What each slip is called by whoever names it. */
const SAYS: Readonly<Record<string, RegExp>> = {
  'radius for diameter': /radius/u,
  'in for mm': /inch/u,
  'psi for MPa': /psi/u,
  'bar for MPa': /bar/u,
  'K for degC': /kelvin/u,
  'N for kN': /kN/u,
  'min for h': /minutes/u,
  'rad for deg': /radians/u,
  'per cent for fraction': /per cent/u,
  'absolute for gauge': /absolute/u,
  swapped: /swapped/u,
  twice: /factor of 2 /u,
  half: /factor of 2 /u,
  '1000 times': /1000/u,
  'a thousandth': /1000/u,
  'times 25.4': /25\.4/u,
  'over 25.4': /25\.4/u,
  'pi forgotten': /\bpi\b/u,
  'what is left for what is lost': /remaining wall|depth of the loss/u,
  'the wall for the depth': /wall/u,
  '273 for 273.15': /273 /u,
  'degC under the equation': /Celsius/u,
  'exponent turned': /exponent/u,
  'root forgotten': /root/u,
};

const named = (slip: string): { readonly slip: string; readonly says: RegExp } => {
  const says = SAYS[slip];
  if (says === undefined) throw new Error(`nothing says how ${slip} is named`);
  return { slip, says };
};

const isKind = (kind: string): kind is Kind => Object.hasOwn(units, kind);

/** A drawn argument of a formula as texts of four digits; nothing where an input is no number with a usual unit. */
export function writtenDraw(formula: AnyFormula, random: Random): Written | undefined {
  const { input } = drawInput(formula, random);
  const texts: Record<string, string> = {};
  for (const [name, value] of Object.entries(input)) {
    const { kind } = (formula.inputs as Readonly<Record<string, InputDeclaration>>)[name] as InputDeclaration;
    const symbol = isKind(kind as string) ? (USUAL[kind as Kind] ?? '1') : '1';
    const unit = isKind(kind as string) ? unitOf(kind as Kind, symbol) : unitOf('ratio', '1');
    if (typeof value === 'string' || typeof value === 'boolean' || (kind as string) === 'count')
      texts[name] = String(value);
    else if (
      typeof value !== 'number' ||
      unit === undefined ||
      !(isKind(kind as string) || (kind as string) === 'number')
    )
      return undefined;
    else {
      const number = Number(fromSi(value, unit).toPrecision(4));
      texts[name] = symbol === '1' ? String(number) : `${number} ${symbol}`;
    }
  }
  return texts;
}

const isPure = (formula: AnyFormula): boolean => ['number', 'ratio'].includes(mainOutput(formula).declared.kind);
const same = (number: number): number => number;
const numberIn = (text: string): number => Number.parseFloat(text);
const withNumber = (text: string, number: number): string => text.replace(/^\S+/u, String(number));

/** Every slip that could be made with these texts. */
export function plantable(formula: AnyFormula, texts: Written): Planted[] {
  const declared = formula.inputs as Readonly<Record<string, Said>>;
  const planted: Planted[] = [];
  const take = (slip: string, changes: Written): void => {
    planted.push({ ...named(slip), taken: { ...texts, ...changes }, after: same });
  };
  const entries = Object.entries(texts);
  for (const [name, text] of entries) {
    const { kind, name: meaning } = declared[name] as Said;
    if (kind === 'length' && meaning.includes('diameter'))
      take('radius for diameter', { [name]: withNumber(text, numberIn(text) / 2) });
    for (const [of, as] of TAKEN)
      for (const [here, there] of [
        [of, as],
        [as, of],
      ] as const)
        if (text.endsWith(` ${here}`))
          take(`${there} for ${here}`, { [name]: `${text.slice(0, -here.length)}${there}` });
    if (kind === 'ratio') take('per cent for fraction', { [name]: String(numberIn(text) * 100) });
    if (kind === 'gauge pressure') take('absolute for gauge', { [name]: withNumber(text, numberIn(text) + 0.101325) });
    for (const [other, otherText] of entries)
      if (name < other && declared[other]?.kind === kind && otherText !== text && kind !== 'choice' && kind !== 'flag')
        take('swapped', { [name]: otherText, [other]: text });
  }
  for (const [name, text] of entries) {
    const meaning = declared[name]?.name ?? '';
    if (!text.endsWith(' mm') || !/depth|remaining/iu.test(meaning)) continue;
    for (const [wall, wallText] of entries)
      if (/^(?:nominal |measured )?wall/iu.test(declared[wall]?.name ?? '') && wallText.endsWith(' mm')) {
        const rest = numberIn(wallText) - numberIn(text);
        if (rest > 0) take('what is left for what is lost', { [name]: withNumber(text, rest) });
        if (/depth/iu.test(meaning)) take('the wall for the depth', { [name]: wallText });
      }
  }
  const warm = entries.filter(([, text]) => text.endsWith(' degC'));
  if (warm.length > 0)
    take('273 for 273.15', Object.fromEntries(warm.map(([name, text]) => [name, `${numberIn(text) + 273} K`])));
  if (warm.length > 1)
    take('degC under the equation', Object.fromEntries(warm.map(([name, text]) => [name, `${numberIn(text)} K`])));
  for (const [slip, factor] of [
    ['twice', 2],
    ['half', 1 / 2],
    ['1000 times', 1000],
    ['a thousandth', 1 / 1000],
    ['times 25.4', 25.4],
    ['over 25.4', 1 / 25.4],
  ] as const)
    planted.push({ ...named(slip), taken: texts, after: (number) => number * factor });
  const expression = 'expression' in formula.equation ? formula.equation.expression : '';
  if (/\bpi\b/u.test(expression) && /^pi \*/u.test(expression))
    planted.push({ ...named('pi forgotten'), taken: texts, after: (number) => number / Math.PI });
  // A result without a unit that is one exponential, or one root, of all that stands in its bracket.
  if (/^exp\([^()]*(?:\([^()]*\)[^()]*)*\)$/u.test(expression))
    planted.push({ ...named('exponent turned'), taken: texts, after: (number) => 1 / number });
  if (/^sqrt\([^()]*(?:\([^()]*\)[^()]*)*\)$/u.test(expression) && isPure(formula))
    planted.push({ ...named('root forgotten'), taken: texts, after: (number) => number ** 2 });
  return planted;
}

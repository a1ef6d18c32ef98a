import type { AnyFormula, InputKind } from '../../formula/index.js';
import type { Kind } from '../../quantity/index.js';
import { atmosphere, reread } from '../../quantity/slips.js';
import { isKind } from '../../quantity/units/index.js';

/**
 * Slips that people make in a hand calculation, tried one at a time: on what goes in, where the formula is computed anew, and
 * on what comes out.
 */

/** A slip: what it is in words, and how common: 1 is tried with three digits too, 2 from four digits on. */
export interface Slip {
  readonly words: string;
  readonly rank: 1 | 2;
}

export interface InputSlip extends Slip {
  /** The inputs with the slip in them, in SI. */
  readonly input: Readonly<Record<string, unknown>>;
}

/** On the number of the result, in the unit in which it is claimed. */
export interface ResultSlip extends Slip {
  readonly turn: (number: number) => number;
}

type Change = readonly [words: (name: string) => string, rank: 1 | 2, turn: (si: number) => number];

const WORDS: Readonly<Record<string, string>> = {
  in: 'inches',
  mm: 'millimetres',
  K: 'kelvin',
  degC: 'degrees Celsius',
  degF: 'degrees Fahrenheit',
  rad: 'radians',
  deg: 'degrees',
  h: 'hours',
  min: 'minutes',
};

/** The number was taken in one unit where it is in another. */
function mixed(kind: Kind, taken: string, is: string, rank: 1 | 2): Change {
  const [one, other] = [WORDS[taken] ?? taken, WORDS[is] ?? is];
  return [(name) => `${name} was taken in ${one} where it is in ${other}`, rank, (si) => reread(kind, si, is, taken)];
}

function scaled(words: (name: string) => string, rank: 1 | 2, factor: number): Change {
  return [words, rank, (si) => si * factor];
}

const lengthSlips: readonly Change[] = [
  mixed('length', 'in', 'mm', 1),
  mixed('length', 'mm', 'in', 1),
  scaled((name) => `${name} was taken 1000 times too large, as metres for millimetres`, 1, 1000),
  scaled((name) => `${name} was taken 1000 times too small, as millimetres for metres`, 1, 1 / 1000),
];

/** Of pressures, stresses and moduli alike, by the units of a pressure. */
const pressureSlips: readonly Change[] = [
  mixed('gauge pressure', 'MPa', 'bar', 1),
  mixed('gauge pressure', 'bar', 'MPa', 1),
  mixed('gauge pressure', 'MPa', 'psi', 1),
  mixed('gauge pressure', 'psi', 'MPa', 1),
  mixed('gauge pressure', 'bar', 'psi', 2),
  mixed('gauge pressure', 'psi', 'bar', 2),
  scaled((name) => `${name} was taken 1000 times too large, as MPa for kPa or ksi for psi`, 2, 1000),
  scaled((name) => `${name} was taken 1000 times too small, as kPa for MPa or psi for ksi`, 2, 1 / 1000),
];

const byKind: Readonly<Partial<Record<Kind | 'number', readonly Change[]>>> = {
  length: lengthSlips,
  'gauge pressure': [
    ...pressureSlips,
    [(name) => `${name} was taken as absolute: an atmosphere was added`, 1, (si) => si + atmosphere],
    [(name) => `an atmosphere was taken off ${name}, which is gauge already`, 2, (si) => si - atmosphere],
  ],
  'absolute pressure': [
    ...pressureSlips,
    [(name) => `${name} was taken as gauge: an atmosphere was taken off`, 1, (si) => si - atmosphere],
  ],
  stress: pressureSlips,
  modulus: pressureSlips,
  temperature: [
    mixed('temperature', 'K', 'degC', 1),
    [(name) => `273.15 was added to ${name} twice`, 2, (si) => reread('temperature', si, 'K', 'degC')],
    mixed('temperature', 'degC', 'degF', 1),
    mixed('temperature', 'degF', 'degC', 2),
  ],
  ratio: [
    scaled((name) => `${name} was taken in per cent, not as a fraction`, 1, 100),
    scaled((name) => `${name} was divided by 100 twice`, 2, 1 / 100),
    [(name) => `1 - ${name} was taken for ${name}`, 1, (si) => 1 - si],
  ],
  angle: [mixed('angle', 'rad', 'deg', 1)],
  force: [mixed('force', 'kN', 'N', 1), mixed('force', 'N', 'kN', 1)],
  time: [mixed('time', 'h', 'min', 1), mixed('time', 'min', 'h', 1)],
};

const isDiameter = (name: string): boolean => /diameter/iu.test(name);
const isRadius = (name: string): boolean => /radius/iu.test(name);

interface Declared {
  readonly kind: InputKind;
  readonly name: string;
}

/** Every slip on what goes in, for the inputs that a formula was given. */
export function inputSlips(formula: AnyFormula, input: Readonly<Record<string, unknown>>): InputSlip[] {
  const declared = Object.entries(formula.inputs as Readonly<Record<string, Declared>>);
  const numbers = declared.flatMap(([key, { kind, name }]) => {
    const value = input[key];
    return typeof value === 'number' && (kind === 'number' || isKind(kind)) ? [{ key, kind, name, value }] : [];
  });
  const slips: InputSlip[] = [];
  const put = (words: string, rank: 1 | 2, changes: Readonly<Record<string, number>>): void => {
    slips.push({ words, rank, input: { ...input, ...changes } });
  };
  for (const { key, kind, name, value } of numbers) {
    for (const [words, rank, turn] of byKind[kind] ?? []) put(words(name), rank, { [key]: turn(value) });
    if (kind === 'length' && isDiameter(name)) put(`the radius was taken for ${name}`, 1, { [key]: value / 2 });
    else if (kind === 'length' && isRadius(name)) put(`the diameter was taken for ${name}`, 1, { [key]: value * 2 });
    else if (kind !== 'temperature' && value !== 0) {
      put(`half of ${name} was taken`, 2, { [key]: value / 2 });
      put(`twice ${name} was taken`, 2, { [key]: value * 2 });
    }
    const rounded = Number(value.toPrecision(2));
    if (kind !== 'temperature' && rounded !== value) put(`${name} was rounded to two digits`, 2, { [key]: rounded });
  }
  for (const outside of numbers.filter(({ kind, name }) => kind === 'length' && isDiameter(name)))
    for (const wall of numbers.filter(({ kind, name }) => kind === 'length' && /wall|thickness/iu.test(name))) {
      put(`the inside diameter was taken for ${outside.name}`, 1, { [outside.key]: outside.value - 2 * wall.value });
      put(`the mean diameter was taken for ${outside.name}`, 2, { [outside.key]: outside.value - wall.value });
    }
  slips.push(...depthSlips(numbers, input), ...temperatureSlips(numbers, input));
  for (const [place, one] of numbers.entries())
    for (const other of numbers.slice(place + 1))
      if (one.kind === other.kind && one.value !== other.value)
        put(`${one.name} and ${other.name} were swapped`, 1, { [one.key]: other.value, [other.key]: one.value });
  return slips;
}

interface Given extends Declared {
  readonly key: string;
  readonly value: number;
}

const WALL = /^(?!.*(?:remaining|least|depth|loss)).*\bwall\b/iu;

/** What is left of a wall is taken for what is lost of it, the other way round, or the whole wall for either. */
function depthSlips(numbers: readonly Given[], input: InputSlip['input']): InputSlip[] {
  const lengths = numbers.filter(({ kind }) => kind === 'length');
  return lengths
    .filter(({ name }) => WALL.test(name))
    .flatMap((wall) =>
      lengths.flatMap(({ key, name, value }): InputSlip[] => {
        const isDepth = /depth/iu.test(name);
        if (!isDepth && !/remaining/iu.test(name)) return [];
        const rest = isDepth ? 'the remaining wall' : 'the depth of the loss';
        return [
          { words: `${rest} was taken for ${name}`, rank: 1, input: { ...input, [key]: wall.value - value } },
          { words: `${wall.name} was taken for ${name}`, rank: 1, input: { ...input, [key]: wall.value } },
        ];
      }),
    );
}

/** Whoever turns degrees into kelvin in one way does so with every temperature of the calculation. */
function temperatureSlips(numbers: readonly Given[], input: InputSlip['input']): InputSlip[] {
  const temperatures = numbers.filter(({ kind }) => kind === 'temperature');
  if (temperatures.length === 0) return [];
  const less = (by: number): InputSlip['input'] => ({
    ...input,
    ...Object.fromEntries(temperatures.map(({ key, value }) => [key, value - by])),
  });
  const inDegrees: InputSlip = {
    words: 'every temperature was taken in degrees Celsius where it is in kelvin',
    rank: 1,
    input: less(273.15),
  };
  return [
    { words: '273 was added to degrees Celsius in place of 273.15', rank: 2, input: less(0.15) },
    ...(temperatures.length > 1 ? [inDegrees] : []),
  ];
}

const times = (words: string, rank: 1 | 2, factor: number): ResultSlip => ({
  words,
  rank,
  turn: (number) => number * factor,
});

/** Every slip on what comes out. */
export const resultSlips: readonly ResultSlip[] = [
  times('a factor of 2 is too many', 1, 2),
  times('a factor of 2 is missing', 1, 1 / 2),
  times('a factor of 4 is too many', 2, 4),
  times('a factor of 4 is missing', 2, 1 / 4),
  times('a factor of 10 is too many', 1, 10),
  times('a factor of 10 is missing', 1, 1 / 10),
  times('a factor of 100 is too many, as of a per cent', 2, 100),
  times('a factor of 100 is missing, as of a per cent', 2, 1 / 100),
  times('a factor of 1000 is too many', 1, 1000),
  times('a factor of 1000 is missing', 1, 1 / 1000),
  times('a factor of 25.4 is too many, as of an inch', 1, 25.4),
  times('a factor of 25.4 is missing, as of an inch', 1, 1 / 25.4),
  { words: 'the result is upside down', rank: 2, turn: (number) => 1 / number },
  { words: 'a square is missing, or a root was taken once too often', rank: 2, turn: Math.sqrt },
  { words: 'a root is missing, or a square was taken once too often', rank: 2, turn: (number) => number * number },
];

import type { AnyFormula, InputDeclaration } from '../../formula/index.js';
import { type Kind, units } from '../../quantity/index.js';

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

const ATMOSPHERE = 101_325;
const PSI = 6894.757293168;

type Change = readonly [words: (name: string) => string, rank: 1 | 2, turn: (si: number) => number];

const scaled = (words: (name: string) => string, rank: 1 | 2, factor: number): Change => [
  words,
  rank,
  (si) => si * factor,
];

const lengthSlips: readonly Change[] = [
  scaled((name) => `${name} was taken in inches where it is in millimetres`, 1, 25.4),
  scaled((name) => `${name} was taken in millimetres where it is in inches`, 1, 1 / 25.4),
  scaled((name) => `${name} was taken 1000 times too large, as metres for millimetres`, 1, 1000),
  scaled((name) => `${name} was taken 1000 times too small, as millimetres for metres`, 1, 1 / 1000),
];
const pressureSlips: readonly Change[] = [
  scaled((name) => `${name} was taken in MPa where it is in bar`, 1, 10),
  scaled((name) => `${name} was taken in bar where it is in MPa`, 1, 1 / 10),
  scaled((name) => `${name} was taken in MPa where it is in psi`, 1, 1e6 / PSI),
  scaled((name) => `${name} was taken in psi where it is in MPa`, 1, PSI / 1e6),
  scaled((name) => `${name} was taken in bar where it is in psi`, 2, 1e5 / PSI),
  scaled((name) => `${name} was taken in psi where it is in bar`, 2, PSI / 1e5),
  scaled((name) => `${name} was taken 1000 times too large, as MPa for kPa or ksi for psi`, 2, 1000),
  scaled((name) => `${name} was taken 1000 times too small, as kPa for MPa or psi for ksi`, 2, 1 / 1000),
];
const temperatureSlips: readonly Change[] = [
  [(name) => `${name} was taken in kelvin where it is in degrees Celsius`, 1, (si) => si - 273.15],
  [(name) => `273.15 was added to ${name} twice`, 2, (si) => si + 273.15],
  [
    (name) => `${name} was taken in degrees Celsius where it is in degrees Fahrenheit`,
    1,
    (si) => ((si - 273.15) * 9) / 5 + 32 + 273.15,
  ],
  [
    (name) => `${name} was taken in degrees Fahrenheit where it is in degrees Celsius`,
    2,
    (si) => ((si - 273.15 - 32) * 5) / 9 + 273.15,
  ],
];

const byKind: Readonly<Partial<Record<Kind | 'number', readonly Change[]>>> = {
  length: lengthSlips,
  'gauge pressure': [
    ...pressureSlips,
    [(name) => `${name} was taken as absolute: an atmosphere was added`, 1, (si) => si + ATMOSPHERE],
    [(name) => `an atmosphere was taken off ${name}, which is gauge already`, 2, (si) => si - ATMOSPHERE],
  ],
  'absolute pressure': [
    ...pressureSlips,
    [(name) => `${name} was taken as gauge: an atmosphere was taken off`, 1, (si) => si - ATMOSPHERE],
  ],
  stress: pressureSlips,
  modulus: pressureSlips,
  temperature: temperatureSlips,
  ratio: [
    scaled((name) => `${name} was taken in per cent, not as a fraction`, 1, 100),
    scaled((name) => `${name} was divided by 100 twice`, 2, 1 / 100),
    [(name) => `1 - ${name} was taken for ${name}`, 1, (si) => 1 - si],
  ],
  angle: [scaled((name) => `${name} was taken in radians where it is in degrees`, 1, 180 / Math.PI)],
  force: [
    scaled((name) => `${name} was taken in kN where it is in N`, 1, 1000),
    scaled((name) => `${name} was taken in N where it is in kN`, 1, 1 / 1000),
  ],
  time: [
    scaled((name) => `${name} was taken in hours where it is in minutes`, 1, 60),
    scaled((name) => `${name} was taken in minutes where it is in hours`, 1, 1 / 60),
  ],
};

const isDiameter = (name: string): boolean => /diameter/iu.test(name);
const isRadius = (name: string): boolean => /radius/iu.test(name);

/** Every slip on what goes in, for the inputs that a formula was given. */
export function inputSlips(formula: AnyFormula, input: Readonly<Record<string, unknown>>): InputSlip[] {
  const declared = Object.entries(formula.inputs as Readonly<Record<string, InputDeclaration>>);
  const numbers = declared.flatMap(([key, { kind, name }]) => {
    const value = input[key];
    return typeof value === 'number' && ((kind as string) === 'number' || Object.hasOwn(units, kind as string))
      ? [{ key, kind: kind as Kind | 'number', name, value }]
      : [];
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
  for (const [place, one] of numbers.entries())
    for (const other of numbers.slice(place + 1))
      if (one.kind === other.kind && one.value !== other.value)
        put(`${one.name} and ${other.name} were swapped`, 1, { [one.key]: other.value, [other.key]: one.value });
  return slips;
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
  times('pi is missing', 2, 1 / Math.PI),
  times('pi is too many', 2, Math.PI),
  times('the logarithm to the base of 10 was taken for the natural one', 2, 1 / Math.LN10),
  times('the natural logarithm was taken for that to the base of 10', 2, Math.LN10),
  { words: 'the result is upside down', rank: 2, turn: (number) => 1 / number },
  { words: 'a square is missing, or a root was taken once too often', rank: 2, turn: Math.sqrt },
  { words: 'a root is missing, or a square was taken once too often', rank: 2, turn: (number) => number * number },
];

import { toStep } from '../quantity/format.js';
import { type Amount, type Kind, type Line, written } from '../quantity/index.js';
import { isKind } from '../quantity/units/index.js';
import { threeDigits, timeText } from './time-text.js';
import { numberIn, type UnitSystem, unitText } from './units.js';

/** Units as they stand on packs and tools; from a size on (in the first of them) the next larger serves better. */
const UNITS: Readonly<Record<UnitSystem, Partial<Record<Kind, readonly (readonly [unit: string, from: number])[]>>>> = {
  si: {
    length: [
      ['um', 0],
      ['mm', 0.3e3],
      ['m', 3e6],
    ],
    mass: [
      ['g', 0],
      ['kg', 1000],
    ],
    area: [
      ['mm2', 0],
      ['m2', 1e6],
    ],
    volume: [
      ['mL', 0],
      ['L', 1000],
      ['m3', 3e6],
    ],
    force: [
      ['N', 0],
      ['kN', 3000],
    ],
    energy: [
      ['J', 0],
      ['kJ', 1000],
      ['MJ', 1e6],
    ],
    moment: [['N m', 0]],
    'gauge pressure': [['bar', 0]],
    temperature: [['degC', 0]],
    'temperature difference': [['K', 0]],
    'areal weight': [['mg/m2', 0]],
    ratio: [['%', 0]],
  },
  us: {
    length: [
      ['mil', 0],
      ['in', 12],
      ['ft', 1.2e5],
    ],
    mass: [
      ['oz', 0],
      ['lb', 16],
    ],
    area: [
      ['in2', 0],
      ['ft2', 1440],
    ],
    volume: [['gal', 0]],
    force: [['lbf', 0]],
    energy: [['ft lbf', 0]],
    moment: [['lbf ft', 0]],
    'gauge pressure': [['psi', 0]],
    temperature: [['degF', 0]],
    'temperature difference': [['deltaF', 0]],
    'areal weight': [['mg/m2', 0]],
    ratio: [['%', 0]],
  },
};

/** A sentence with its amounts in the units of packs and tools: of the plan, or a reason of the site, of acceptance, as built. */
export function lineText(said: Line, system: UnitSystem): string {
  return written(said, (amount) => planAmountText(amount, system));
}

/** Steps of torque wrenches, in either unit, from a size on: chosen after the scales of common ones. */
const WRENCH_STEPS: readonly (readonly [from: number, step: number])[] = [
  [0, 0.01],
  [1, 0.05],
  [5, 0.1],
  [10, 0.5],
  [50, 1],
  [200, 5],
];

/** The unit in which a kind is read from an instrument. */
export function smallestUnit(kind: Kind, system: UnitSystem): string {
  return UNITS[system][kind]?.[0]?.[0] ?? '';
}

/** An amount as the crew reads it; what must be reached is rounded up, what must not be passed down. */
export function planAmountText({ kind, value, toward, on }: Amount, system: UnitSystem): string {
  if (kind === 'time') return timeText(value, toward);
  const choices = isKind(kind) ? UNITS[system][kind] : undefined;
  if (!isKind(kind) || choices === undefined) return threeDigits(value, toward);
  const size = Math.abs(numberIn(kind, value, choices[0]?.[0] ?? ''));
  const unit = choices.findLast(([, from]) => size >= from)?.[0] ?? choices[0]?.[0] ?? '';
  const number = numberIn(kind, value, unit);
  return `${numberText(number, toward, stepOf(kind, number, unit, on))} ${unitText(unit)}`;
}

/** The finest step in which a number is written: that of a thermometer, of a wrench, of the scale; none where three digits do. */
function stepOf(kind: Kind, number: number, unit: string, on: Amount['on']): number | undefined {
  if (on === 'torque wrench') return WRENCH_STEPS.findLast(([from]) => number >= from)?.[1];
  if (on !== undefined) return scaleStepBelow(numberIn(kind, on.scale, unit));
  return kind === 'temperature' ? 0.1 : undefined;
}

/** Scales show steps of 1, 2 or 5 and a power of ten. */
function scaleStepBelow(coarsest: number): number {
  const decade = 10 ** Math.floor(Math.log10(coarsest) + 1e-12);
  const digit = [5, 2, 1].find((each) => each * decade <= coarsest * (1 + 1e-12)) ?? 1;
  return digit * decade;
}

function numberText(number: number, toward: Amount['toward'], step: number | undefined): string {
  if (step === undefined) return threeDigits(number, toward);
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-12));
  return toStep(number, step, toward).toFixed(decimals);
}

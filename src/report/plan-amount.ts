import { type Amount, type Kind, type Line, written } from '../quantity/index.js';
import { isKind } from '../quantity/units/index.js';
import { toStep } from './number.js';
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

/** An amount as the crew reads it; what must be reached is rounded up, what must not be passed down. */
export function planAmountText({ kind, value, toward }: Amount, system: UnitSystem): string {
  if (kind === 'time') return timeText(value, toward);
  const choices = isKind(kind) ? UNITS[system][kind] : undefined;
  if (!isKind(kind) || choices === undefined) return threeDigits(value, toward);
  const size = Math.abs(numberIn(kind, value, choices[0]?.[0] ?? ''));
  const unit = choices.findLast(([, from]) => size >= from)?.[0] ?? choices[0]?.[0] ?? '';
  const number = numberIn(kind, value, unit);
  const text = kind === 'temperature' ? toStep(number, 0.1, toward).toFixed(1) : threeDigits(number, toward);
  return `${text} ${unitText(unit)}`;
}

import { type Amount, exactly, type Line, roundedDown, roundedUp } from './line.js';
import { fromSi, type Kind, toSi, type Unit } from './quantity.js';
import { unitOf } from './units/index.js';

/** What a strange number would be without a slip of the pen, and the slips that would explain it. */
export interface Slip {
  readonly value: number;
  /** What was written for what was meant: "psi for ksi". */
  readonly ways: readonly string[];
}

/** Units of a kind that are written for one another, the one for the other either way; `chosen`. */
const CONFUSED: Partial<Readonly<Record<Kind, string>>> = {
  length: 'm~mm,cm~mm,in~mm,mil~mm,um~mm,um~mil,ft~m,ft~in',
  time: 's~min,min~h,s~h,h~day,h~year,day~year',
  mass: 'g~kg,lb~kg,lb~g',
  force: 'N~kN,lbf~N,lbf~kN',
  moment: 'N m~kN m,N mm~N m,lbf ft~N m,lbf in~lbf ft',
  'gauge pressure': 'Pa~MPa,kPa~MPa,kPa~bar,bar~MPa,psi~bar,psi~MPa',
  'absolute pressure': 'Pa~kPa,Pa~mbar,kPa~bar,mbar~bar,psi~kPa,psi~bar',
  stress: 'Pa~MPa,kPa~MPa,psi~ksi,ksi~MPa,psi~MPa',
  modulus: 'MPa~GPa,Pa~GPa,psi~Msi,ksi~Msi,Msi~GPa,ksi~GPa',
  density: 'g/cm3~kg/m3,lb/ft3~kg/m3,lb/ft3~lb/gal',
  'areal weight': 'g/m2~kg/m2,oz/yd2~g/m2,mg/m2~g/m2',
  'energy release rate': 'J/m2~kJ/m2,in lbf/in2~J/m2,in lbf/in2~kJ/m2',
  temperature: 'K~degC,degF~degC',
  'temperature difference': 'deltaF~K',
  'thermal expansion': '1/K~1e-6/K,1/degF~1e-6/degF,1/K~1e-6/degF',
  ratio: '1~%',
  strain: '1~%,microstrain~%,microstrain~1',
  'corrosion rate': 'mm/year~mil/year,um/year~mm/year,in/year~mil/year,m/s~mm/year',
  speed: 'm/s~m/min,ft/min~m/min,ft/min~m/s',
  'mass flow': 'kg/s~kg/min,g/min~kg/min,kg/h~kg/min,kg/h~g/min',
  'activation energy': 'J/mol~kJ/mol,kcal/mol~kJ/mol,J/mol~kcal/mol',
  'molar mass': 'kg/mol~g/mol',
};

/** By which gauge and absolute pressures are mixed up [Pa]. */
export const atmosphere = /* @__PURE__ */ toSi(1, unitOf('absolute pressure', 'atm') as Unit);

/**
 * The slips that would bring a number from outside the usual span of its field into it.
 *
 * @param unit in which it was written, where that is known
 */
export function slipsInto(
  kind: Kind | 'number' | 'count',
  value: number,
  [least, most]: readonly [least: number, most: number],
  unit?: string,
): Slip[] {
  const slips: { value: number; ways: string[] }[] = [];
  const propose = (corrected: number, way: string): void => {
    if (!(corrected >= least && corrected <= most)) return;
    const same = slips.find((slip) => isSame(slip.value, corrected));
    if (same === undefined) slips.push({ value: corrected, ways: [way] });
    else same.ways.push(way);
  };
  if (kind === 'number' || kind === 'count') return slips;
  for (const pair of CONFUSED[kind]?.split(',') ?? []) {
    const [one, other] = pair.split('~') as [string, string];
    for (const [written, meant] of [
      [one, other],
      [other, one],
    ] as const) {
      // Two symbols of one unit, as psi and psig, are one slip.
      if (unit !== undefined && !isSame(reread(kind, value, unit, written), value)) continue;
      propose(reread(kind, value, written, meant), `${inWords(written)} for ${inWords(meant)}`);
    }
  }
  if (kind === 'gauge pressure') propose(value - atmosphere, 'an absolute pressure for a gauge pressure');
  if (kind === 'absolute pressure') propose(value + atmosphere, 'a gauge pressure for an absolute pressure');
  return slips;
}

/** The ends of a sentence that names slips, from the given mark on: "; perhaps psi for ksi (then {3})". */
export function slipsInWords(slips: readonly Slip[], mark: number): string {
  if (slips.length === 0) return '';
  return `; perhaps ${slips.map(({ ways }, index) => `${ways.join(' or ')} (then {${mark + index}})`).join(', ')}`;
}

/** The sentence on a value outside its usual span, with the slips that would explain it. */
export function outsideUsual(
  name: string,
  kind: Kind | 'number' | 'count',
  value: number,
  usual: readonly [least: number, most: number],
): Line {
  const [least, most] = usual;
  const is = value < least ? roundedDown(name, kind, value) : roundedUp(name, kind, value);
  const span: [Amount, ...Amount[]] = [is, exactly(name, kind, least), exactly(name, kind, most)];
  return withSlips(`${name} is {0}, outside the usual {1} to {2}`, span, slipsInto(kind, value, usual));
}

/** A sentence on a strange value, which is its first amount, and at its end the slips that would explain it. */
export function withSlips(text: string, amounts: readonly [Amount, ...Amount[]], slips: readonly Slip[]): Line {
  const [{ name, kind }] = amounts;
  return {
    text: text + slipsInWords(slips, amounts.length),
    amounts: [...amounts, ...slips.map(({ value }) => exactly(name, kind, value))],
  };
}

/** The same number, whatever a conversion has done to its last digits. */
export function isSame(one: number, other: number): boolean {
  return Math.abs(one - other) <= 1e-9 * Math.abs(other);
}

/** What a value would be, had its number stood before another unit. */
export function reread(kind: Kind, value: number, written: string, meant: string): number {
  return toSi(fromSi(value, unitOf(kind, written) as Unit), unitOf(kind, meant) as Unit);
}

/** A pure number has no unit to name. */
function inWords(symbol: string): string {
  return symbol === '1' ? 'a fraction' : symbol === '%' ? 'per cent' : symbol;
}

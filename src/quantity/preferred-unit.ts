import type { Kind } from './quantity.js';
import { siSymbol, unitOf } from './units/index.js';

/** The two systems a sheet can be written in. */
export type UnitSystem = 'si' | 'us';

/** Units of a sheet: a system, and what is to differ from it. Nothing is ever scaled by its size. */
export interface UnitPreferences {
  /** The system that holds where nothing else is said. */
  readonly system: UnitSystem;
  /** Unit for every quantity of a kind. */
  readonly kinds?: Partial<Readonly<Record<Kind, string>>> | undefined;
  /** Unit for one quantity, by the name of the input or output in the code: `{ life: 'day' }`. */
  readonly names?: Readonly<Record<string, string>> | undefined;
}

const SI: Partial<Readonly<Record<Kind, string>>> = {
  length: 'mm',
  area: 'mm2',
  volume: 'L',
  time: 'h',
  mass: 'g',
  'gauge pressure': 'MPa',
  'absolute pressure': 'kPa',
  stress: 'MPa',
  modulus: 'GPa',
  density: 'g/cm3',
  'areal weight': 'g/m2',
  'leak severity': 'MPa m^(1/2)',
  temperature: 'degC',
  strain: '%',
  angle: 'deg',
  'corrosion rate': 'mm/year',
  speed: 'm/min',
  'volume flow': 'L/min',
  'mass flow': 'g/min',
  'activation energy': 'kJ/mol',
  'rate constant': '1/h',
  'molar mass': 'g/mol',
  'molar enthalpy': 'kJ/mol',
  'specific energy': 'kJ/kg',
  'specific heat': 'kJ/(kg K)',
  conductivity: 'uS/cm',
  'line load': 'N/mm',
  'extensional stiffness': 'N/mm',
};

const US: Partial<Readonly<Record<Kind, string>>> = {
  ...SI,
  length: 'in',
  area: 'in2',
  volume: 'gal',
  mass: 'lb',
  force: 'lbf',
  moment: 'lbf ft',
  energy: 'ft lbf',
  'gauge pressure': 'psi',
  'absolute pressure': 'psi',
  stress: 'ksi',
  modulus: 'Msi',
  density: 'lb/in3',
  'areal weight': 'oz/yd2',
  'energy release rate': 'in lbf/in2',
  'line load': 'lbf/in',
  'line moment': 'lbf in/in',
  curvature: '1/in',
  'extensional stiffness': 'lbf/in',
  'coupling stiffness': 'lbf',
  'bending stiffness': 'lbf in',
  temperature: 'degF',
  'temperature difference': 'deltaF',
  'thermal expansion': '1/degF',
  'corrosion rate': 'mil/year',
  speed: 'ft/min',
  'volume flow': 'gal/min',
  'mass flow': 'lb/h',
};

/** Quantities that the trade counts in another unit than the rest of their kind. */
const NAMES: readonly { kind: Kind; name: RegExp; si: string; us: string }[] = [
  { kind: 'time', name: /\bpot\b|potLife|working|gel|mixing|soak/iu, si: 'min', us: 'min' },
  { kind: 'time', name: /life|years|corrosion/iu, si: 'year', us: 'year' },
  {
    kind: 'length',
    name: /^(?!.*(?:width|thick|diameter)).*(?:(?:tape|sheet|roll)Length|\b(?:tape laid|tape or sheet|rolls?|wrap takes|with waste|test section|line under test|distance to keep)\b)/iu,
    si: 'm',
    us: 'ft',
  },
  { kind: 'length', name: /profile/iu, si: 'um', us: 'mil' },
  { kind: 'areal weight', name: /\bsalts?\b/iu, si: 'mg/m2', us: 'mg/m2' },
  { kind: 'area', name: /fabric|tape|sheet|covere?[ds]?\b|surface/iu, si: 'm2', us: 'ft2' },
  { kind: 'speed', name: /\bjet\b/iu, si: 'm/s', us: 'ft/min' },
  { kind: 'ratio', name: /overlap|waste|humidity/iu, si: '%', us: '%' },
];

const SYSTEMS: Readonly<Record<UnitSystem, Partial<Readonly<Record<Kind, string>>>>> = { si: SI, us: US };

/**
 * The unit in which a quantity is shown: by its name, else by its kind, else by the system.
 *
 * @param kind of the quantity
 * @param name of the input or output in the code
 * @param preferences the system, and what is to differ from it
 * @param words  what it is in words, which may say more than its name in the code
 * @returns symbol of the unit
 */
export function preferredUnit(kind: Kind, name: string, preferences: UnitPreferences, words = ''): string {
  const wanted = preferences.names?.[name] ?? preferences.kinds?.[kind];
  if (wanted !== undefined) {
    if (unitOf(kind, wanted) === undefined) throw new RangeError(`a ${kind} is not written in ${wanted}`);
    return wanted;
  }
  const byName = NAMES.find((each) => each.kind === kind && each.name.test(`${name} ${words}`))?.[preferences.system];
  return byName ?? SYSTEMS[preferences.system][kind] ?? siSymbol(kind);
}

/** One coefficient as a person typed it in from the notes: where it stands, its value with its unit, its clause, and whence. */
export type Coefficient = readonly [
  /** Where it stands in the set; `{1,2}` stands for each of these. */
  path: string,
  value: string,
  /** As the rule set names it. */
  clause: string,
  /** What the notes say beyond the value, and where it was chosen here. */
  note: string,
];

/** Powers of ten, put behind the digits as they stand, so that 0.35 % is 0.0035 to the last bit. */
const powers: Readonly<Record<string, number>> = {
  '': 0,
  '%': -2,
  MPa: 6,
  GPa: 9,
  kPa: 3,
  Pa: 0,
  K: 0,
  m: 0,
  mm: -3,
  um: -6,
  s: 0,
  N: 0,
  '/MK': -6,
  kg: 0,
  MJ: 6,
  'J/kg': 0,
  'J/(kg K)': 0,
  'kg/(m2 S)': 0,
  'kJ/mol': 3,
  'J/(mol K)': 0,
  'mg/m2': -6,
  'kg/m3': 0,
  'N m': 0,
  'N/kg': 0,
  'Pa m^0.5': 0,
};

/** Other factors and zero points, written out here and not taken from the library, which is what is checked. */
const units: Readonly<Record<string, (x: number) => number>> = {
  psi: (x) => (x * 44_482_216_152_605) / 6_451_600_000,
  degC: (x) => x + 273.15,
  degF: (x) => ((x + 459.67) * 5) / 9,
  '/degF': (x) => x * 1.8,
  '/min': (x) => x / 60,
  min: (x) => x * 60,
  day: (x) => x * 86_400,
  h: (x) => x * 3600,
  year: (x) => x * 31_557_600,
  deg: (x) => (x * Math.PI) / 180,
};

const words: Readonly<Record<string, unknown>> = { none: null, yes: true, no: false, 'not known': undefined };

/** The value of a row in SI; a word that is no number stands for itself. */
export function inSi(text: string): unknown {
  if (text in words) return words[text];
  const [, digits = '', exponent = '0', under, unit = ''] =
    /^(-?\d+(?:\.\d+)?)(?:e(-?\d+))?(?:\/(\d+))?(?: (.+))?$/u.exec(text) ?? [];
  if (digits === '') return text;
  const power = powers[unit];
  if (power !== undefined) return Number(`${digits}e${Number(exponent) + power}`) / Number(under ?? 1);
  const convert = units[unit];
  if (convert === undefined) throw new Error(`${text}: the unit ${unit} is not in the list`);
  return convert(Number(`${digits}e${exponent}`));
}

/** The paths that a path with alternatives stands for. */
export function pathsOf(path: string): string[] {
  const [whole, choices] = /\{([^}]*)\}/u.exec(path) ?? [];
  if (whole === undefined || choices === undefined) return [path];
  return choices.split(',').flatMap((choice) => pathsOf(path.replace(whole, choice)));
}

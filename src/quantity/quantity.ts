/**
 * What a number means: a float64 in the coherent SI unit that carries its kind in its type.
 *
 * Kinds, not dimensions: gauge pressure, absolute pressure, stress and modulus are all pascals, and mixing two of them is
 * a real mistake. The brand exists only for the compiler; at run time a quantity is a plain number.
 */

/** Every kind of quantity, with its coherent SI unit. */
export interface SiUnits {
  length: 'm';
  area: 'm2';
  volume: 'm3';
  time: 's';
  mass: 'kg';
  force: 'N';
  moment: 'N m';
  energy: 'J';
  'gauge pressure': 'Pa';
  'absolute pressure': 'Pa';
  stress: 'Pa';
  modulus: 'Pa';
  density: 'kg/m3';
  'areal weight': 'kg/m2';
  'energy release rate': 'J/m2';
  'leak severity': 'Pa m^(1/2)';
  temperature: 'K';
  'temperature difference': 'K';
  'thermal expansion': '1/K';
  ratio: '1';
  strain: '1';
  angle: 'rad';
  'corrosion rate': 'm/s';
  speed: 'm/s';
  acceleration: 'N/kg';
  'volume flow': 'm3/s';
  'mass flow': 'kg/s';
  'activation energy': 'J/mol';
  'rate constant': '1/s';
  'molar mass': 'kg/mol';
  'specific energy': 'J/kg';
  'specific heat': 'J/(kg K)';
  conductivity: 'S/m';
  'molar heat capacity': 'J/(mol K)';
  'molar enthalpy': 'J/mol';
  'thermal conductivity': 'W/(m K)';
  'temperature coefficient': '1/K';
  'salt conductance factor': 'kg/(m2 S)';
  'line load': 'N/m';
  'line moment': 'N m/m';
  curvature: '1/m';
  'extensional stiffness': 'N/m';
  'coupling stiffness': 'N';
  'bending stiffness': 'N m';
}

/** The name of a kind of quantity. */
export type Kind = keyof SiUnits;

/** A number in the coherent SI unit of kind `K`. The unit stands in the brand so that compiler messages show it. */
export type Quantity<K extends Kind> = number & {
  /** Kind and unit, for the compiler alone: at run time there is only the number. */
  readonly '~kind': `${K} [${SiUnits[K]}]`;
};

/** A number that is not a quantity already: what a constructor takes, so that `length.mm(length.inch(3))` does not compile. */
export type PlainNumber = number & {
  /** Absent: a number that has it is a quantity already. */
  readonly '~kind'?: never;
};

/** The kind of a quantity type. */
export type KindOf<Q> = Q extends {
  /** Where the type of a quantity says its kind. */
  readonly '~kind': `${infer K extends Kind} [${string}]`;
}
  ? K
  : never;

/**
 * One unit: the exact ratio to the coherent SI unit, and for a temperature scale the shift that comes first.
 * A value v stands for (v + shift) * numerator / denominator in SI.
 */
export type Unit = readonly [numerator: number, denominator: number, shift?: number];

/** The units of one kind by their written symbol; the first is the SI unit. */
export type UnitTable = Readonly<Record<string, Unit>>;

/**
 * From a value in `unit` to SI. The ratio is kept as two integers, since 254 / 10000 rounds once and 0.0254 twice.
 * What is no number is NaN, which every formula refuses by the name of its input: `null` would count as 0, `'16'` and a shift
 * make the text `'160'`.
 */
export function toSi(value: number, [numerator, denominator, shift = 0]: Unit): number {
  return typeof value === 'number' ? ((value + shift) * numerator) / denominator : Number.NaN;
}

/** From SI to a value in `unit`. */
export function fromSi(value: number, [numerator, denominator, shift = 0]: Unit): number {
  return (value * denominator) / numerator - shift;
}

import type { Kind } from '../quantity/index.js';

/** What a coefficient of a rule set is, and which way it is on the safe side. */
export interface CoefficientShape {
  /** Kind of the number. */
  readonly kind: Kind | 'number' | 'count';
  /** Every value lies above it; what lies outside the bounds can never be right. */
  readonly above?: number;
  /** The least value there can be. */
  readonly from?: number;
  /** Every value lies below it. */
  readonly below?: number;
  /** Of two values the one that never makes a repair thinner, shorter or wider in its use; for some it depends on the case. */
  readonly safer: 'lower' | 'higher' | 'depends on the case';
}

/**
 * Whether a value may make a repair thinner, shorter or wider in its use than another.
 *
 * @param shape of the coefficient, with its safe side
 * @param value in SI
 * @param than the value that it is held against, in SI
 */
export function isLessConservative({ safer }: CoefficientShape, value: number, than: number): boolean {
  if (safer === 'lower') return value > than;
  if (safer === 'higher') return value < than;
  return value !== than;
}

const share = { kind: 'number', above: 0, below: 1, safer: 'lower' } as const;
const factorOnSize = { kind: 'number', from: 1, safer: 'higher' } as const;
const strain = { kind: 'strain', above: 0, below: 0.05, safer: 'lower' } as const;
const life = { kind: 'time', above: 0, safer: 'lower' } as const;
const margin = { kind: 'temperature difference', from: 0, safer: 'higher' } as const;
const length = { kind: 'length', above: 0, safer: 'higher' } as const;
const strains = { life, hoop: strain, axial: strain, softAxial: strain } as const;
const risks = {
  pressure: { kind: 'gauge pressure', above: 0, safer: 'lower' },
  highestTemperature: { kind: 'temperature', above: 0, safer: 'lower' },
  lowestTemperature: { kind: 'temperature', above: 0, safer: 'higher' },
  leakSeverity: { kind: 'leak severity', above: 0, safer: 'lower' },
  holeOverDiameter: share,
} as const;

/** The coefficients below one path. */
function below(path: string, shapes: Readonly<Record<string, CoefficientShape>>): [string, CoefficientShape][] {
  return Object.entries(shapes).map(([name, shape]) => [`${path}.${name}`, shape]);
}

/**
 * Every number of a rule set by its path: the path of the rule, then that within its value; `#` is a repair class, `[]` a row.
 * A test holds it equal to the numbers of both sets. What has no place here is a word or a unit, and nobody's to change.
 */
export const coefficientTable: ReadonlyMap<string, CoefficientShape> = /* @__PURE__ */ new Map<
  string,
  CoefficientShape
>([
  ['classes.#.highestPressure', { kind: 'gauge pressure', above: 0, safer: 'lower' }],
  ['classes.#.highestTemperature', { kind: 'temperature', above: 0, safer: 'lower' }],
  ['longestLife', life],
  ['throughWallBelow', length],
  .../* @__PURE__ */ below('defaultStrains.rare.#[]', strains),
  .../* @__PURE__ */ below('defaultStrains.continuous.#[]', strains),
  ['modulusShare', { kind: 'number', above: 0, safer: 'depends on the case' }],
  ['leastFailureStrain', { kind: 'strain', above: 0, below: 0.2, safer: 'higher' }],
  ['temperatureFactor.quadratic', { kind: 'number', from: 0, safer: 'lower' }],
  ['temperatureFactor.linear', { kind: 'number', from: 0, safer: 'lower' }],
  ['temperatureFactor.constant', share],
  ['cyclic.slope', { kind: 'number', above: 0, safer: 'higher' }],
  ['cyclic.intercept', { kind: 'number', from: 0, safer: 'lower' }],
  ['cyclic.freeCycles', { kind: 'number', from: 0, safer: 'lower' }],
  ['cyclic.lastCycles', { kind: 'number', above: 0, safer: 'lower' }],
  ['temperatureMargin.glassTransition.notLeaking', margin],
  ['temperatureMargin.glassTransition.leaking', margin],
  ['temperatureMargin.heatDeflection.notLeaking', margin],
  ['temperatureMargin.heatDeflection.leaking', margin],
  .../* @__PURE__ */ below('performance.survivalTest.#[]', { life, factor: share }),
  .../* @__PURE__ */ below('performance.designLifeTest.#[]', { life, factor: share }),
  ['leakFactor.#.firstYear', share],
  ['leakFactor.#.decay', { kind: 'number', from: 0, safer: 'higher' }],
  ['leakFactorOption.#.firstYear', share],
  ['leakFactorOption.#.decay', { kind: 'number', from: 0, safer: 'higher' }],
  ['hole.leastDiameter', length],
  ['hole.validity', { kind: 'number', above: 0, safer: 'lower' }],
  ['hole.aspectRatio', { kind: 'number', from: 1, safer: 'lower' }],
  ['overlap.geometry.coefficient', { kind: 'number', above: 0, safer: 'higher' }],
  ['overlap.geometry.divisor', { kind: 'number', above: 0, safer: 'lower' }],
  ['overlap.minimum', length],
  ['overlap.hole.multiple', { kind: 'number', above: 0, safer: 'higher' }],
  ['overlap.hole.share', { kind: 'number', above: 0, safer: 'higher' }],
  ['overlap.adhesiveFactor', factorOnSize],
  ['overlap.bondStrains.life', life],
  .../* @__PURE__ */ below('overlap.bondStrains.table[]', {
    life: { ...life, safer: 'higher' },
    hoop: { ...strain, safer: 'higher' },
    axial: { ...strain, safer: 'higher' },
    softAxial: { ...strain, safer: 'higher' },
  }),
  ['overlap.leastAvailable', length],
  ['overlap.taper', { kind: 'number', above: 0, safer: 'higher' }],
  ['thinLaminateRatio', { kind: 'number', above: 0, safer: 'higher' }],
  ['leastPlies', { kind: 'count', from: 1, safer: 'higher' }],
  ['lapShear.required', { kind: 'stress', above: 0, safer: 'higher' }],
  ['lapShear.withWarning', { kind: 'stress', above: 0, safer: 'higher' }],
  ['components.bend', factorOnSize],
  ['components.flange', factorOnSize],
  ['components.overlayExponent', { kind: 'number', from: 0, safer: 'higher' }],
  ['systemTest.factor', factorOnSize],
  ['systemTest.hold', { kind: 'time', above: 0, safer: 'higher' }],
  .../* @__PURE__ */ below('highRisk.si', risks),
  .../* @__PURE__ */ below('highRisk.us', risks),
]);

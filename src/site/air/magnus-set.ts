import { oneOf, refuse, type SourceKey, type SourceTag } from '../../formula/index.js';
import type { Temperature } from '../../quantity/index.js';

/** Names of the coefficient sets for the vapour pressure over water. */
export type MagnusSetName = 'sonntag' | 'alduchov-eskridge' | 'bolton' | 'tetens';

/** Coefficients of e_s = e_0 exp(b t/(c + t)), t in degrees Celsius, with the temperatures for which they hold. */
export interface MagnusSet {
  /** Name by which the set is asked for. */
  readonly name: MagnusSetName | 'sonntag-ice';
  /** e_0 [Pa]. */
  readonly atZero: number;
  /** b, without a unit. */
  readonly b: number;
  /** c [degC]. */
  readonly c: number;
  /** Span [degC]. */
  readonly from: number;
  /** End of that span [degC]. */
  readonly to: number;
  /** Where the coefficients were printed. */
  readonly source: SourceKey;
  /** How that source was reached. */
  readonly tag: SourceTag;
  /** How the span was reached. */
  readonly rangeTag: SourceTag;
}

/** Over water: Sonntag, as the WMO guide adopts it, is the default; the choice moves a dew point by hundredths of a kelvin. */
export const magnusSets: readonly MagnusSet[] = [
  {
    name: 'sonntag',
    atZero: 611.2,
    b: 17.62,
    c: 243.12,
    from: -45,
    to: 60,
    source: 'sonntag-1990',
    tag: 'secondary',
    rangeTag: 'secondary',
  },
  {
    name: 'alduchov-eskridge',
    atZero: 610.94,
    b: 17.625,
    c: 243.04,
    from: -40,
    to: 50,
    source: 'alduchov-eskridge-1996',
    tag: 'secondary',
    rangeTag: 'recalled',
  },
  {
    name: 'bolton',
    atZero: 611.2,
    b: 17.67,
    c: 243.5,
    from: -30,
    to: 35,
    source: 'bolton-1980',
    tag: 'secondary',
    rangeTag: 'secondary',
  },
  // 7.5 ln 10; the upper end is ours, that of the widest of the others.
  {
    name: 'tetens',
    atZero: 610.78,
    b: 17.269388197455342,
    c: 237.3,
    from: 0,
    to: 60,
    source: 'tetens-1930',
    tag: 'secondary',
    rangeTag: 'chosen',
  },
  {
    name: 'sonntag-ice',
    atZero: 611.2,
    b: 22.46,
    c: 272.62,
    from: -65,
    to: 0.01,
    source: 'wmo-8',
    tag: 'recalled',
    rangeTag: 'recalled',
  },
];

/** The coefficients over water by name. */
export function magnusSet(name: MagnusSetName): MagnusSet {
  oneOf(name, ['sonntag', 'alduchov-eskridge', 'bolton', 'tetens'], 'set');
  return magnusSets.find((set) => set.name === name) as MagnusSet;
}

/** Sonntag's coefficients over ice. */
export const iceSet: MagnusSet = magnusSets[4] as MagnusSet;

const ZERO = 273.15;

/** Degrees Celsius of a temperature in the span of a set; refuses the rest. */
export function celsiusWithin(set: MagnusSet, temperature: number, parameter: string): number {
  const t = temperature - ZERO;
  if (!(t >= set.from - 1e-9 && t <= set.to + 1e-9)) {
    refuse({
      code: Number.isFinite(temperature) && temperature > 0 ? 'outside-validity' : 'invalid-input',
      parameter,
      value: temperature,
      unit: 'K',
      constraint: `must lie within the span of the coefficients (${set.name}), ${set.from} to ${set.to} degC`,
    });
  }
  return t;
}

/** Vapour pressure at saturation [Pa] by a set, at degrees Celsius. */
export function saturation({ atZero, b, c }: MagnusSet, celsius: number): number {
  return atZero * Math.exp((b * celsius) / (c + celsius));
}

/** Temperature [K] at which a vapour of e_0 exp(g) is saturated; refuses what lies outside the span of the set. */
export function saturatedAt(set: MagnusSet, g: number, parameter: string): Temperature {
  // From b on there is no such temperature: the quotient is endless, or lies below -c.
  const t = (set.c * g) / (set.b - g);
  if (!(t >= set.from - 1e-9 && t <= set.to + 1e-9)) {
    refuse({
      code: 'outside-validity',
      parameter,
      value: g < set.b ? t : 'beyond any',
      unit: 'degC at saturation',
      constraint: `must lie within the span of the coefficients (${set.name}), ${set.from} to ${set.to} degC`,
    });
  }
  return (ZERO + t) as Temperature;
}

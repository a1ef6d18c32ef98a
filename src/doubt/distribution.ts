import { finite, positive, refuse } from '../formula/index.js';
import { normalBelow } from '../numeric/index.js';

/** How a number of a case is spread, in SI; of a temperature the standard deviation is in K. Whoever states it answers for it. */
export type Distribution =
  | { readonly shape: 'normal'; readonly mean: number; readonly standardDeviation: number }
  /** Mean and standard deviation of the number itself, not of its logarithm. */
  | { readonly shape: 'lognormal'; readonly mean: number; readonly standardDeviation: number }
  | { readonly shape: 'uniform'; readonly least: number; readonly most: number }
  /** Of the least of many: 1 - exp(-((x - location)/scale)^exponent). */
  | {
      readonly shape: 'Weibull minimum';
      readonly location: number;
      readonly scale: number;
      readonly exponent: number;
    };

/** The value of a distribution at the standard normal number that lies as high in its own. */
export type ValueAt = (u: number) => number;

/**
 * The distribution as a function of a standard normal number u: F(x) = Phi(u).
 *
 * @param path names the number in a refusal
 * @throws CalculationError `invalid-input` for a parameter that no such distribution has
 */
export function valueAt(path: string, distribution: Distribution): ValueAt {
  switch (distribution.shape) {
    case 'normal': {
      const { mean, standardDeviation } = distribution;
      finite(mean, `${path}, mean`, '');
      positive(standardDeviation, `${path}, standard deviation`, '');
      return (u) => mean + standardDeviation * u;
    }
    case 'lognormal': {
      const { mean, standardDeviation } = distribution;
      positive(mean, `${path}, mean`, '');
      positive(standardDeviation, `${path}, standard deviation`, '');
      const spread = Math.sqrt(Math.log1p((standardDeviation / mean) ** 2));
      const middle = Math.log(mean) - spread ** 2 / 2;
      return (u) => Math.exp(middle + spread * u);
    }
    case 'uniform': {
      const { least, most } = distribution;
      finite(least, `${path}, least`, '');
      finite(most, `${path}, most`, '');
      if (!(least < most)) unfit(`${path}, most`, most, `must be above the least, ${least}`);
      return (u) => least + (most - least) * normalBelow(u);
    }
    case 'Weibull minimum': {
      const { location, scale, exponent } = distribution;
      finite(location, `${path}, location`, '');
      positive(scale, `${path}, scale`, '');
      positive(exponent, `${path}, exponent`, '');
      return (u) => location + scale * (-Math.log(normalBelow(-u))) ** (1 / exponent);
    }
    default:
      return unfit(
        path,
        (distribution as { readonly shape: unknown }).shape,
        'must be normal, lognormal, uniform or Weibull minimum',
      );
  }
}

function unfit(parameter: string, value: unknown, constraint: string): never {
  refuse({ code: 'invalid-input', parameter, value, unit: '', constraint });
}

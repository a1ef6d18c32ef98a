import { finite, positive, refuse } from '../formula/index.js';
import { normalBelow } from '../numeric/index.js';

/** How a number of a case is spread, in SI; of a temperature the standard deviation is in K. Whoever states it answers for it. */
export type Distribution =
  | {
      /** Symmetric about its mean. */
      readonly shape: 'normal';
      /** Also its middle. */
      readonly mean: number;
      /** Above 0. */
      readonly standardDeviation: number;
    }
  | {
      /** Its logarithm is normal. */
      readonly shape: 'lognormal';
      /** Of the number itself, not of its logarithm; above 0. */
      readonly mean: number;
      /** Of the number itself, not of its logarithm; above 0. */
      readonly standardDeviation: number;
    }
  | {
      /** Every value between its ends is as likely as any other. */
      readonly shape: 'uniform';
      /** Its lower end. */
      readonly least: number;
      /** Its upper end. */
      readonly most: number;
    }
  | {
      /** Of the least of many: 1 - exp(-((x - location)/scale)^exponent). */
      readonly shape: 'Weibull minimum';
      /** The least value there can be. */
      readonly location: number;
      /** Distance from there to the value that 63.2 per cent lie below; above 0. */
      readonly scale: number;
      /** The larger, the narrower it is; above 0. */
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

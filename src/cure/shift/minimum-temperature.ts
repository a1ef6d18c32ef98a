import { positive, refuse } from '../../formula/index.js';

/** Refuses a temperature below the one at which the maker lets the resin cure: there it stalls, and waiting does not help. */
export function notBelowMinimum(temperature: number, minimumTemperature: number): void {
  positive(temperature, 'temperature', 'K');
  positive(minimumTemperature, 'minimumTemperature', 'K');
  if (temperature < minimumTemperature) {
    refuse({
      code: 'outside-validity',
      parameter: 'temperature',
      value: temperature,
      unit: 'K',
      constraint:
        'must be at least the minimum cure temperature, {limit}: below it the cure stalls, so heat the pipe or wait for a warmer hour',
      limit: minimumTemperature,
    });
  }
}

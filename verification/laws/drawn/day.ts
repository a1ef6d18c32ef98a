import { length, ratio, temperature, time } from '../../../src/quantity/index.js';
import type { RepairCase } from '../../../src/repair/index.js';
import type { Random } from '../../oracles/random.js';
import { between, often, oneOf } from './draw.js';

/** The day of the work: steel, air, the hours that were foreseen, the surface. */

type Site = RepairCase['site'];

/** The steel over the hours of the work: mostly colder than at its start, under a blanket warmer, and now and then too short. */
function hoursOf(random: Random, steel: number): Site['history'] {
  if (often(random, 0.2))
    return [{ duration: time.hour(400), temperature: temperature.degC(Math.min(40, steel + between(random, 0, 25))) }];
  const long = often(random, 0.85) ? 400 : between(random, 20, 120);
  return [
    { duration: time.hour(between(random, 4, 24)), temperature: temperature.degC(steel) },
    { duration: time.hour(long), temperature: temperature.degC(Math.max(11, steel - between(random, 0, 8))) },
  ];
}

/** Air and steel over the coming hours: dry, a damp stretch, dry again. */
function forecastOf(random: Random, steel: number, humidity: number): Site['forecast'] {
  const hour = (hours: number, colder: number, percent: number) => ({
    duration: time.hour(hours),
    pipeTemperature: temperature.degC(Math.max(11, steel - colder)),
    airTemperature: temperature.degC(Math.max(11, steel - colder) - between(random, 0, 2)),
    relativeHumidity: ratio.percent(percent),
  });
  return [
    hour(between(random, 2, 60), 0, humidity),
    hour(between(random, 2, 12), between(random, 0, 5), often(random, 0.5) ? 92 : humidity),
    hour(often(random, 0.9) ? 400 : between(random, 10, 60), between(random, 0, 8), humidity),
  ];
}

export function dayOf(random: Random, steel: number): Site {
  const humidity = between(random, 35, 75);
  const foreseen = random();
  return {
    pipeTemperature: temperature.degC(steel),
    airTemperature: temperature.degC(steel + between(random, -2, 1)),
    relativeHumidity: ratio.percent(humidity),
    ...(foreseen < 0.25 ? { history: hoursOf(random, steel) } : {}),
    ...(foreseen > 0.75 ? { forecast: forecastOf(random, steel, humidity) } : {}),
    ...(often(random, 0.2)
      ? { instruments: { temperatureError: between(random, 0, 3), humidityError: between(random, 0, 0.03) } as never }
      : {}),
    ...(often(random, 0.3)
      ? { surface: { grade: oneOf(random, ['Sa 2', 'Sa 2 1/2', 'Sa 3'] as const), profile: length.um(80) } }
      : {}),
  };
}

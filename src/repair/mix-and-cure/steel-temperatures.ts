import { type TemperatureStep, warmestBehindReading } from '../../cure/index.js';
import { step } from '../../formula/index.js';
import type { Temperature, TemperatureDifference } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import type { Site } from '../case/case.js';
import type { Workbook } from '../job/workbook.js';

/** The steel over the hours of the work: as the case foresees it, else as the forecast does. */
export function steelOverTime({ history, forecast }: Site): readonly TemperatureStep[] | undefined {
  return history ?? forecast?.map(({ duration, pipeTemperature }) => ({ duration, temperature: pipeTemperature }));
}

/** Whether the steel is foreseen over the hours of the work; else it stays as it is read. */
export function steelIsForeseen({ history, forecast }: Site): boolean {
  return history !== undefined || forecast !== undefined;
}

/** The coldest steel on which the laminate may set. */
export function coldestWhileCuring(site: Site): Temperature {
  const { history, forecast = [] } = site;
  let coldest: number = Number.POSITIVE_INFINITY;
  for (const { temperature } of history ?? []) coldest = Math.min(coldest, temperature);
  if (history === undefined) for (const hours of forecast) coldest = Math.min(coldest, hours.pipeTemperature);
  return (coldest === Number.POSITIVE_INFINITY ? site.pipeTemperature : coldest) as Temperature;
}

/** The coldest that the steel is read or foreseen to be. */
export function coldestSteel({ pipeTemperature, history = [], forecast = [] }: Site): Temperature {
  let coldest: number = pipeTemperature;
  for (const { temperature } of history) coldest = Math.min(coldest, temperature);
  for (const hours of forecast) coldest = Math.min(coldest, hours.pipeTemperature);
  return coldest as Temperature;
}

/** The warmest that the steel is read or foreseen to be; a heating blanket stands in the foreseen hours. */
export function warmestSteel({ pipeTemperature, history = [], forecast = [] }: Site): Temperature {
  let warmest: number = pipeTemperature;
  for (const { temperature } of history) warmest = Math.max(warmest, temperature);
  for (const hours of forecast) warmest = Math.max(warmest, hours.pipeTemperature);
  return warmest as Temperature;
}

/** The warmest that a resin may meet, on the steel or in the air, behind readings that have their error. */
export function warmestForResin({ recorder, case: { site } }: Workbook): Temperature {
  const error = thermometerErrorOf(site);
  const reading = warmestReading(site);
  return step(recorder, 'cure/warmest-behind-reading', warmestBehindReading, { reading, error });
}

/** Error of the thermometer, as the case states it. */
export function thermometerErrorOf({ instruments }: Site): TemperatureDifference {
  return instruments?.temperatureError ?? practice.thermometerError.value;
}

/** The warmest that is read or foreseen: a maker's own rows are rows of readings. */
export function warmestReading(site: Site): Temperature {
  let warmest: number = Math.max(warmestSteel(site), site.airTemperature);
  for (const { airTemperature } of site.forecast ?? []) warmest = Math.max(warmest, airTemperature);
  return warmest as Temperature;
}

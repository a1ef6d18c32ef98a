import {
  coldestBehindHistory,
  coldestBehindReading,
  type TemperatureStep,
  warmestBehindReading,
} from '../../cure/index.js';
import { type Recorder, step } from '../../formula/index.js';
import { agree } from '../../numeric/index.js';
import type { Temperature, TemperatureDifference } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import type { Site } from '../case/case.js';
import { assume, type Workbook } from '../job/workbook.js';

/**
 * The steel over the hours of the work, as the case foresees it, else as the forecast does: as cold as it may be behind readings
 * that have their error, since waits count from it.
 */
export function steelOverTime(site: Site, recorder?: Recorder): readonly TemperatureStep[] | undefined {
  const { history, forecast } = site;
  const steps =
    history ?? forecast?.map(({ duration, pipeTemperature }) => ({ duration, temperature: pipeTemperature }));
  if (steps === undefined) return undefined;
  const error = thermometerErrorOf(site);
  return step(recorder, 'cure/coldest-behind-history', coldestBehindHistory, { steps, error }).steps;
}

/** The coldest that the steel may be where it stays as it is read. */
export function steelBehindReading({ recorder, case: { site } }: Workbook): Temperature {
  const input = { reading: site.pipeTemperature, error: thermometerErrorOf(site) };
  return step(recorder, 'cure/coldest-behind-reading', coldestBehindReading, input);
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

/** Steel and the air beside it. */
export interface SteelInAir {
  readonly steel: Temperature;
  readonly air: Temperature;
}

/**
 * Foreseen steel that is warmer than the air by more than the day leaves in it. The hours of a history are not those of a forecast:
 * its coldest counts beside the coldest air, its warmest beside the warmest.
 */
export function warmerThanAir({ history, forecast, airTemperature }: Site): SteelInAir | undefined {
  const isKeptWarm = ({ steel, air }: SteelInAir): boolean =>
    steel > air && !agree(steel, air, practice.steelOverAir.value);
  const foreseen = forecast?.map(({ pipeTemperature: steel, airTemperature: air }) => ({ steel, air }));
  if (history === undefined) return foreseen?.find(isKeptWarm);
  const steel = history.map(({ temperature }) => temperature);
  const air = foreseen?.map((hours) => hours.air) ?? [airTemperature];
  return [Math.min, Math.max]
    .map((of) => ({ steel: of(...steel) as Temperature, air: of(...air) as Temperature }))
    .find(isKeptWarm);
}

/** The warmest that a resin may meet, on the steel or in the air, behind readings that have their error. */
export function warmestForResin(work: Workbook): Temperature {
  const { site } = work.case;
  const reading = warmestReading(site);
  // Every wait and working time counts it, so that a design says once that nobody stated it.
  const error = assume(work, site.instruments?.temperatureError, practice.thermometerError);
  return step(work.recorder, 'cure/warmest-behind-reading', warmestBehindReading, { reading, error });
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

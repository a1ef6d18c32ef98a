import type { CureSheet, Job } from './read-job.js';

const R = 8.31446261815324;

/** Steel over the hours: its history, else its forecast, else none. */
export function steelOverHours({
  site,
}: Job): readonly { readonly duration: number; readonly temperature: number }[] | undefined {
  if (site.history !== undefined) return site.history;
  return site.forecast?.map(({ duration, pipeTemperature }) => ({ duration, temperature: pipeTemperature }));
}

/** The same as cold as it may be behind the error of its thermometer. */
function coldHours(job: Job): ReturnType<typeof steelOverHours> {
  const off = thermometerError(job);
  return steelOverHours(job)?.map(({ duration, temperature }) => ({ duration, temperature: temperature - off }));
}

/** Activation energies that are tried where the maker gives none. */
const BOUNDS = [40e3, 50e3, 60e3];

function energiesOf(sheet: Extract<CureSheet, { mechanism: 'two-part reaction' }>): readonly number[] {
  return sheet.activationEnergy === undefined ? BOUNDS : [sheet.activationEnergy];
}

/** How much faster than at the reference temperature. */
function faster(energy: number, at: number, reference: number): number {
  return Math.exp((energy / R) * (1 / reference - 1 / at));
}

/** What curing a material means on this steel, for the hour at which it is laid; undefined where the hours run out. */
type Wait = (laidAt: number) => number | undefined;

export interface Cure {
  readonly workingTime: number;
  readonly wait: Wait;
  readonly law: Readonly<Record<string, number | string>>;
}

/** The warmest reading of steel or air, at the start and over the hours. */
export function warmestReading(job: Job): number {
  const { pipeTemperature, airTemperature, history = [], forecast = [] } = job.site;
  return Math.max(
    pipeTemperature,
    airTemperature,
    ...history.map(({ temperature }) => temperature),
    ...forecast.flatMap((step) => [step.pipeTemperature, step.airTemperature]),
  );
}

const THERMOMETER_ERROR = 0.5;

export function thermometerError({ site }: Job): number {
  return site.instruments?.temperatureError ?? THERMOMETER_ERROR;
}

/** Time over a history from an hour on until it has done what `required` does at the reference temperature. */
function waitOverHours(
  hours: readonly { readonly duration: number; readonly temperature: number }[],
  laidAt: number,
  rate: (temperature: number) => number,
  required: number,
): number | undefined {
  let begins = 0;
  let done = 0;
  for (const { duration, temperature } of hours) {
    const ends = begins + duration;
    const from = Math.max(begins, laidAt);
    begins = ends;
    if (ends <= from) continue;
    const speed = rate(temperature);
    if (done + speed * (ends - from) >= required * (1 - 1e-12) && speed > 0)
      return from - laidAt + (required - done) / speed;
    done += speed * (ends - from);
  }
  return undefined;
}

/** Rows of the maker, none of them flattering: slower to cure, and quicker to stiffen, than any hour of this site. */
function moistureCure(job: Job, rows: Extract<CureSheet, { mechanism: 'moisture' }>['rows']): Cure {
  const { pipeTemperature, relativeHumidity, forecast = [] } = job.site;
  const later = forecast.map((step) => step.relativeHumidity);
  const coldest = Math.min(pipeTemperature, ...(steelOverHours(job) ?? []).map(({ temperature }) => temperature));
  const driest = Math.min(relativeHumidity, ...later);
  const warmest = warmestReading(job);
  const dampest = Math.max(relativeHumidity, ...later);
  const slower = rows.filter((row) => row.temperature <= coldest && row.humidity <= driest);
  const quicker = rows.filter((row) => row.temperature >= warmest && row.humidity >= dampest);
  const wait = slower.length === 0 ? undefined : Math.min(...slower.map((row) => row.cureTime));
  return {
    workingTime: quicker.length === 0 ? Number.NaN : Math.max(...quicker.map((row) => row.workingTime)),
    wait: () => wait,
    law: wait === undefined ? {} : { sort: 'same at every hour', wait },
  };
}

export function cureOf(job: Job, sheet: CureSheet): Cure {
  if (sheet.mechanism === 'moisture') return moistureCure(job, sheet.rows);
  const { referenceTemperature: ref, minimumTemperature, testedFrom, testedTo, cureTime, activationEnergy } = sheet;
  const warm = warmestReading(job) + thermometerError(job);
  const energies = energiesOf(sheet);
  const workingTime = Math.min(...energies.map((energy) => sheet.workingTime / faster(energy, warm, ref)));
  const hours = coldHours(job);
  if (hours === undefined) {
    const cold = job.site.pipeTemperature - thermometerError(job);
    const wait = Math.max(...energies.map((energy) => cureTime / faster(energy, cold, ref)));
    return { workingTime, wait: () => wait, law: { sort: 'same at every hour', wait } };
  }
  return {
    workingTime,
    wait: (laidAt) => {
      const waits = energies.map((energy) =>
        waitOverHours(
          hours,
          laidAt,
          (T) => (T < minimumTemperature ? 0 : faster(energy, Math.min(T, testedTo), ref)),
          cureTime,
        ),
      );
      return waits.some((wait) => wait === undefined) ? undefined : Math.max(...(waits as number[]));
    },
    law: {
      sort: 'over the history',
      mechanism: sheet.mechanism,
      requiredTime: cureTime,
      referenceTemperature: ref,
      minimumTemperature,
      testedFrom,
      testedTo,
      ...(activationEnergy === undefined ? {} : { activationEnergy }),
    },
  };
}

/** What thermometers must show at most for a working time; undefined for moisture, or where the resin would stall first. */
export function coolestReading(job: Job, sheet: CureSheet, workingTime: number): number | undefined {
  if (sheet.mechanism === 'moisture') return undefined;
  const { referenceTemperature: ref } = sheet;
  const needed = Math.log(workingTime / sheet.workingTime);
  const at = Math.min(...energiesOf(sheet).map((energy) => 1 / (1 / ref + (R * needed) / energy)));
  return at < sheet.minimumTemperature ? undefined : at - thermometerError(job);
}

/** In service and over the hours that are foreseen. */
export function coldestSteel({ service, site }: Job): number {
  const nights = (site.forecast ?? []).map(({ pipeTemperature }) => pipeTemperature);
  return Math.min(
    service.designTemperature,
    service.lowestTemperature ?? service.designTemperature,
    ...nights,
    ...(site.history ?? []).map(({ temperature }) => temperature),
  );
}

import { thermometerError } from './cure.js';
import type { CureSheet, Job } from './read-job.js';
import { type Schedule, stepOf } from './schedule.js';

/** Magnus over water and over ice after Sonntag and WMO-No. 8 (cure-and-site.md, 3.1); degC and hPa. */
const saturation = (c: number): number => 6.112 * Math.exp((17.62 * c) / (243.12 + c));
const overIce = (c: number): number => 6.112 * Math.exp((22.46 * c) / (272.62 + c));

const pressureShare = (c: number, humidity: number): number => Math.log((humidity * saturation(c)) / 6.112);

/** Dew point in degC, over water whatever the cold. */
function dewPointOf(c: number, humidity: number): number {
  const g = pressureShare(c, humidity);
  return (243.12 * g) / (17.62 - g);
}

/** Where moisture settles: the dew point, and below freezing the frost point, which lies higher. */
function settlingPointOf(c: number, humidity: number): number {
  const g = pressureShare(c, humidity);
  return g >= 0 ? (243.12 * g) / (17.62 - g) : (272.62 * g) / (22.46 - g);
}

/** Humidity at steel of a temperature under air of a dew or frost point. */
function atSteelOf(dew: number, steel: number): number {
  return (dew >= 0 ? saturation(dew) : overIce(dew)) / saturation(steel);
}

/** Air and steel at an hour, as they are read. */
interface Hour {
  readonly steel: number;
  readonly air: number;
  readonly humidity: number;
}

/** What a checked hygrometer reaches (3.1: 3 per cent). */
const HUMIDITY_ERROR = 0.03;
const MARGIN = 3;
const HIGHEST_HUMIDITY = 0.85;
const SALTS = 20e-6;
const LEAST_PROFILE = 60e-6;

interface Worst {
  readonly frost: boolean;
  readonly margin: number;
  readonly humidity: number;
  readonly atSteel: number;
  readonly coldest: number;
}

/** The numbers of an hour with every instrument against the crew. */
function worstOf({ steel, air, humidity }: Hour, error: number, humidityError: number): Worst {
  const dew = settlingPointOf(air - 273.15 + error, Math.min(1, humidity + humidityError));
  const coldest = steel - error;
  return {
    frost: dew < 0,
    margin: coldest - 273.15 - dew,
    humidity,
    atSteel: atSteelOf(dew, coldest - 273.15),
    coldest,
  };
}

/** The coldest at which every resin of the job still cures. */
function resinNeeds(sheets: readonly (CureSheet | undefined)[]): number | undefined {
  const needs = sheets.flatMap((sheet) =>
    sheet === undefined
      ? []
      : sheet.mechanism === 'moisture'
        ? [Math.min(...sheet.rows.map((row) => row.temperature))]
        : [sheet.minimumTemperature],
  );
  return needs.length === 0 ? undefined : Math.max(...needs);
}

export function siteOf(job: Job, schedule: Schedule | undefined): Record<string, unknown> {
  const { site } = job;
  const error = thermometerError(job);
  const humidityError = site.instruments?.humidityError ?? HUMIDITY_ERROR;
  const now: Hour = { steel: site.pipeTemperature, air: site.airTemperature, humidity: site.relativeHumidity };
  // Without a timeline the readings of the day alone are judged.
  const gate = schedule === undefined ? 0 : stepOf(schedule, 'gate').startsAt;
  const cured = schedule === undefined ? 0 : stepOf(schedule, 'cure').endsAt;
  const between = ['filler', 'filler-wait', 'surface-again', 'wrap', 'cure'];
  const known = schedule?.steps.every(({ id, duration }) => !between.includes(id) || duration.known);
  const hold = cured - gate;

  const dew = dewPointOf(now.air - 273.15, now.humidity);
  const highest = settlingPointOf(now.air - 273.15 + error, Math.min(1, now.humidity + humidityError));
  // The reading stands for the first step of the forecast until that step ends; each later step from its beginning.
  let begins = 0;
  const hours: { readonly from: number; readonly at: number; readonly to: number; readonly hour: Hour }[] = [];
  for (const [index, step] of (schedule === undefined ? [] : (site.forecast ?? [])).entries()) {
    const to = begins + step.duration;
    const at = index === 0 ? to - 1 : begins;
    hours.push({
      from: begins,
      at,
      to,
      hour: { steel: step.pipeTemperature, air: step.airTemperature, humidity: step.relativeHumidity },
    });
    begins = to;
  }
  const first = hours[0];
  const over = (from: number, to: number): readonly Hour[] => [
    ...(first === undefined || from < first.at ? [now] : []),
    ...hours.filter((each) => each.from <= to && each.to > from).map((each) => each.hour),
  ];
  const needs = resinNeeds([job.filler?.cure, job.laminate.cure]);
  const seen = over(gate, cured);
  const all = (seen.length === 0 ? [now] : seen).map((hour) => worstOf(hour, error, humidityError));
  const passes = (list: readonly Worst[]): boolean =>
    list.every(
      ({ margin, humidity, atSteel, coldest }) =>
        margin >= MARGIN &&
        humidity <= HIGHEST_HUMIDITY &&
        atSteel <= HIGHEST_HUMIDITY &&
        coldest > 273.15 &&
        (needs === undefined || coldest >= needs),
    );
  const starts = [gate, ...hours.map(({ at }) => at).filter((at) => at > gate)];
  const earliestStart = starts.find(
    (from) =>
      (first === undefined || from + hold <= begins) &&
      passes(over(from, from + hold).map((hour) => worstOf(hour, error, humidityError))),
  );
  const { surface } = site;
  const qualified = surface?.qualified;
  const requiredProfile = qualified?.profile ?? LEAST_PROFILE;
  const coldest = Math.min(...all.map((each) => each.coldest));
  const worst = all.reduce((a, b) => (b.margin < a.margin ? b : a));
  return {
    dewPoint: dew + 273.15,
    highestDewPoint: highest + 273.15,
    margin: now.steel - error - 273.15 - highest,
    steelNeeded: highest + 273.15 + MARGIN + error,
    humidityAtSteel: atSteelOf(settlingPointOf(now.air - 273.15, now.humidity), now.steel - 273.15),
    holdTime: known ? { time: hold } : { atLeast: hold },
    ...(earliestStart === undefined ? {} : { earliestStart }),
    requiredProfile,
    reasons: [
      {
        check: worst.frost ? 'steel above the frost point' : 'steel above the dew point',
        found: worst.margin,
        limit: MARGIN,
      },
      { check: 'humidity of the air', found: Math.max(...all.map((each) => each.humidity)), limit: HIGHEST_HUMIDITY },
      { check: 'humidity at the steel', found: Math.max(...all.map((each) => each.atSteel)), limit: HIGHEST_HUMIDITY },
      { check: 'steel not too cold for the resin', found: coldest, ...(needs === undefined ? {} : { limit: needs }) },
      { check: 'no ice on the steel', found: coldest, limit: 273.15 },
      ...(first === undefined
        ? [{ check: 'forecast', limit: hold }]
        : begins < gate + hold
          ? [{ check: 'forecast long enough', found: begins - 1 - gate, limit: hold }]
          : []),
      ...(surface === undefined ? [{ check: 'steel prepared', limit: requiredProfile }] : []),
      ...(surface === undefined ? [] : [{ check: 'profile', found: surface.profile, limit: requiredProfile }]),
      ...(surface?.salts === undefined ? [] : [{ check: 'soluble salts', found: surface.salts, limit: SALTS }]),
    ],
  };
}

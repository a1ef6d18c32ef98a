import { heading, isCalculationError, step } from '../../formula/index.js';
import { fromFirstStart } from '../../quantity/clock.js';
import type { Amount, ArealWeight, Length, Ratio, Temperature, Time } from '../../quantity/index.js';
import {
  dewPoint,
  elapsedTime,
  type GateDecision,
  type GateReason,
  hardest,
  humidityAtSteel,
  steelMargin,
  surfaceGate,
  type WeatherGateInput,
  type WeatherHour,
  weatherGate,
  weatherHours,
} from '../../site/index.js';
import type { CureSheet, PreparationGrade, RepairCase, Site } from '../case/case.js';
import type { AsFound } from '../design/design.js';
import type { SiteDesign, SiteReason } from '../design/design-work.js';
import type { Workbook } from '../job/workbook.js';
import { type Duration, leastOf } from '../timeline/duration.js';
import { endOf, type Timeline } from '../timeline/timeline.js';

/** Grade and profile where the system was not qualified on others; a lighter grade takes a qualification on it. */
const REQUIRED_GRADE: PreparationGrade = 'Sa 2 1/2';
const REQUIRED_PROFILE = 60e-6 as Length;

/** Salts on the steel, the stricter of the limits that people work to. */
const SALT_LIMIT = 20e-6 as ArealWeight;

/**
 * Whether work may start at the pipe, by the readings and the forecast of the case. The crew reads again on the day: the
 * answer is a hold point of the plan and changes nothing in the design.
 */
export function judgeSite(work: Workbook, { found, timeline, late = 0 as Time }: SiteDemand): SiteDesign {
  const { throughWall } = found;
  heading(work.recorder, 'Site');
  const holdTime = holdTimeOf(work, timeline);
  const gate = fromFirstStart(late, endOf(timeline, 'gate'));
  const required = requiredSurface(work.case, throughWall);
  const steel = steelReasons(work.case.site, required);
  const climate = climateOf(work, gate, holdTime);
  const reasons = [...climate.reasons, ...steel];
  const [weather, onSteel] = [decisionOf(climate.reasons), decisionOf(steel)];
  const { reasons: _, ...read } = climate;
  return {
    decision: hardest([weather, onSteel]),
    weather,
    steel: onSteel,
    reasons,
    ...read,
    holdTime,
    ...required,
  };
}

/** What stands on the hours: when the gate stands, and how long what follows it takes. */
export interface SiteDemand {
  readonly found: AsFound;
  readonly timeline: Timeline;
  /** How much later than the forecast the timeline starts. */
  readonly late?: Time | undefined;
}

/** How long the climate has to hold: from the gate, where resin is opened, to the end of the last cure. */
function holdTimeOf({ recorder }: Workbook, hours: Timeline): Duration {
  const from = endOf(hours, 'gate');
  // An hour that was entered for the wrap may lie before the gate: then nothing is left to hold.
  const to = Math.max(from, endOf(hours, 'cure')) as Time;
  const time = step(recorder, 'site/elapsed-time', elapsedTime, { from, to }, 'climate that has to hold');
  for (const { takes, duration } of hours.steps) {
    if ('cure' in takes && !duration.known) return { known: false, because: duration.because, atLeast: time };
  }
  return { known: true, time };
}

const decisionOf = (reasons: readonly SiteReason[]): GateDecision => hardest(reasons.map(({ decision }) => decision));

type Required = Pick<SiteDesign, 'requiredGrade' | 'requiredProfile' | 'surfaceFrom'>;

function requiredSurface({ site, repair }: RepairCase, throughWall: boolean): Required {
  const qualified = site.surface?.qualified;
  if (qualified !== undefined) {
    return { requiredGrade: qualified.grade, requiredProfile: qualified.profile, surfaceFrom: 'qualification' };
  }
  const surfaceFrom = throughWall && repair.class === 1 ? 'leak' : 'class';
  return { requiredGrade: REQUIRED_GRADE, requiredProfile: REQUIRED_PROFILE, surfaceFrom };
}

type Climate = Pick<
  SiteDesign,
  'dewPoint' | 'highestDewPoint' | 'margin' | 'steelNeeded' | 'humidityAtSteel' | 'isFrost' | 'earliestStart'
> & { readonly reasons: readonly SiteReason[] };

/** Readings that the dew-point equation does not reach are no reason to drop the design: they are read again. */
function climateOf(work: Workbook, gate: Time, holdTime: Duration): Climate {
  try {
    return readClimate(work, gate, holdTime);
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    const because = `the climate cannot be judged: ${error.message}`;
    return { reasons: [{ check: 'climate', decision: 'wait', because, change: 'read air and steel again' }] };
  }
}

function readClimate({ recorder, case: repairCase }: Workbook, gate: Time, holdTime: Duration): Climate {
  const { site } = repairCase;
  const hours = hoursFrom(site, gate);
  const [atGate] = hours;
  if (atGate === undefined) return { reasons: [gateBeyondForecast(gate)] };
  const { steelTemperature, airTemperature, humidity } = atGate;
  const errors = {
    steelError: site.instruments?.temperatureError,
    temperatureError: site.instruments?.temperatureError,
    humidityError: site.instruments?.humidityError,
  };
  const margin = step(recorder, 'site/steel-margin', steelMargin, {
    steelTemperature,
    airTemperature,
    humidity,
    ...errors,
  });
  const dew = step(recorder, 'site/dew-point', dewPoint, { temperature: airTemperature, humidity });
  const atSteel = step(recorder, 'site/humidity-at-steel', humidityAtSteel, { steelTemperature, dewPoint: dew });
  const input: WeatherGateInput = {
    forecast: hours,
    holdTime: site.forecast === undefined ? (0 as Time) : leastOf(holdTime),
    minimumTemperature: coldestForCure(repairCase),
    ...errors,
  };
  const { reasons, earliestStart } = weatherGate(input);
  return {
    reasons: [
      ...reasons.map(asSiteReason),
      ...(site.forecast === undefined ? [noForecast(leastOf(holdTime))] : []),
      ...(holdTime.known ? [] : [cureBeyondForecast(holdTime.because)]),
    ],
    dewPoint: dew,
    highestDewPoint: margin.highestPoint,
    margin: margin.worstMargin,
    steelNeeded: margin.steelNeeded,
    humidityAtSteel: atSteel as Ratio,
    isFrost: margin.isFrost,
    ...(earliestStart === undefined || !holdTime.known ? {} : { earliestStart }),
  };
}

function gateBeyondForecast(gate: Time): SiteReason {
  return {
    check: 'forecast',
    decision: 'wait',
    found: { name: 'hour of the gate', kind: 'time', value: gate },
    because: 'the gate stands behind the end of the forecast',
    change: 'a forecast that reaches from the gate to the end of the cure',
  };
}

function cureBeyondForecast(because: string): SiteReason {
  return {
    check: 'forecast to the end of the cure',
    decision: 'wait',
    because: `how long the climate has to hold is not known: ${because}`,
    change: 'a forecast that reaches further, or warmer steel',
  };
}

function noForecast(holdTime: Time): SiteReason {
  return {
    check: 'forecast',
    decision: 'wait',
    limit: { name: 'time that the climate has to hold', kind: 'time', value: holdTime },
    because: 'the case gives no forecast, and the climate has to hold to the end of the cure',
    change: 'a forecast of air, humidity and steel over that time',
  };
}

/** The hours that the gate looks at: from where it stands, on the forecast of the case. */
function hoursFrom(
  { airTemperature, relativeHumidity, pipeTemperature, forecast = [] }: Site,
  from: Time,
): WeatherHour[] {
  const now = { airTemperature, humidity: relativeHumidity, steelTemperature: pipeTemperature };
  const stretches = forecast.map((each) => ({
    duration: each.duration,
    airTemperature: each.airTemperature,
    humidity: each.relativeHumidity,
    steelTemperature: each.pipeTemperature,
  }));
  return weatherHours(now, stretches, from);
}

/** The coldest steel on which every material of the job still cures. */
export function coldestForCure({ laminate, filler }: RepairCase): Temperature {
  const sheets: CureSheet[] = filler === 'none' ? [laminate.cure] : [laminate.cure, filler.cure];
  const coldest = sheets.map((cure) =>
    cure.mechanism === 'moisture'
      ? Math.min(...cure.rows.map(({ temperature }) => temperature))
      : cure.minimumTemperature,
  );
  return Math.max(...coldest) as Temperature;
}

function steelReasons(site: Site, required: Required): SiteReason[] {
  const { surface } = site;
  const { requiredGrade, requiredProfile } = required;
  if (surface === undefined) {
    return [
      {
        check: 'steel prepared',
        decision: 'wait',
        limit: { name: 'profile required', kind: 'length', value: requiredProfile },
        because: `the case does not hold the prepared steel; ${requiredGrade} is required`,
        change: 'prepare the steel, then record grade, profile and salts',
      },
    ];
  }
  // Cleanness and freshness are seen on the day, at the hold point: here the record is judged.
  const judged = surfaceGate({
    requiredGrade,
    grade: surface.grade,
    requiredProfile,
    profile: surface.profile,
    isFreeOfOil: true,
    hasRustBloom: false,
    sincePreparation: 0 as Time,
    openTime: 1 as Time,
    saltLimit: surface.salts === undefined ? undefined : SALT_LIMIT,
    saltReadings: surface.salts === undefined ? undefined : [surface.salts],
  });
  const recorded = ['preparation grade', 'profile', 'soluble salts'];
  return judged.reasons.filter(({ check }) => recorded.includes(check)).map(asSiteReason);
}

function asSiteReason({ value, limit, kind, check, decision, because, change }: GateReason): SiteReason {
  const amount = (name: string, number: number | undefined): Amount | undefined =>
    number === undefined || kind === undefined ? undefined : { name, kind, value: number };
  const [found, bound] = [amount(check, value), amount('limit', limit)];
  return {
    check,
    decision,
    ...(found === undefined ? {} : { found }),
    ...(bound === undefined ? {} : { limit: bound }),
    because,
    change,
  };
}

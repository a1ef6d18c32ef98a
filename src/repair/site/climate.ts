import { isCalculationError, step } from '../../formula/index.js';
import { exactly, type Ratio, roundedUp, type Time } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import {
  checkHour,
  dewPoint,
  gateOver,
  humidityAtSteel,
  looksAt,
  steelMargin,
  type WeatherLimits,
} from '../../site/index.js';
import type { ForecastStep, Site } from '../case/case.js';
import type { SiteDesign, SiteReason } from '../design/design-work.js';
import { refusalLine } from '../job/refusal-line.js';
import type { Workbook } from '../job/workbook.js';
import { type Duration, leastOf } from '../timeline/duration.js';
import { asSiteReason } from './reason.js';
import { coldestForCure } from './span-of-cure.js';

/** Air and steel as read, with the gate over the hours that they have to hold. */
export interface Climate {
  readonly reasons: readonly SiteReason[];
  /** Absent where the readings cannot be judged. */
  readonly read?: Pick<
    SiteDesign,
    'dewPoint' | 'highestDewPoint' | 'margin' | 'steelNeeded' | 'humidityAtSteel' | 'isFrost' | 'earliestStart'
  >;
}

/** Readings that the dew-point equation does not reach are no reason to drop the design: they are read again. */
export function judgeClimate(work: Workbook, gate: Time, holdTime: Duration, openHours: string | undefined): Climate {
  try {
    return readClimate(work, gate, holdTime, openHours);
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    const because = refusalLine('the climate cannot be judged', error);
    const change = { text: 'read air and steel again' };
    return { reasons: [{ check: 'climate', decision: 'wait', because, change }] };
  }
}

function readClimate(
  { recorder, case: repairCase, climates }: Workbook,
  gateAt: Time,
  holdTime: Duration,
  openHours: string | undefined,
): Climate {
  const { site } = repairCase;
  const looks = looksAt<Weather, ForecastStep>(site, site.forecast ?? [], gateAt);
  const [atGate] = looks;
  if (atGate === undefined) return { reasons: [gateBeyondForecast(gateAt)] };
  const { steelTemperature, airTemperature, humidity } = climateOf(atGate.climate);
  const { instruments } = site;
  const [temperatureError, humidityError] = [instruments?.temperatureError, instruments?.humidityError];
  const margin = step(recorder, 'site/steel-margin', steelMargin, {
    steelTemperature,
    airTemperature,
    humidity,
    requiredMargin: practice.dewPointMargin.value,
    steelError: temperatureError,
    temperatureError,
    humidityError,
  });
  const dew = step(recorder, 'site/dew-point', dewPoint, { temperature: airTemperature, humidity });
  const atSteel = step(recorder, 'site/humidity-at-steel', humidityAtSteel, { steelTemperature, dewPoint: dew });
  const hasForecast = site.forecast !== undefined;
  const limits: WeatherLimits = {
    minimumTemperature: coldestForCure(repairCase),
    requiredMargin: practice.dewPointMargin.value,
    humidityLimit: practice.highestHumidity.value,
    steelHumidityLimit: practice.highestHumidity.value,
    steelError: temperatureError,
    temperatureError,
    humidityError,
  };
  const span = hasForecast ? leastOf(holdTime) : (0 as Time);
  const gate = gateOver(looks, span, limits, (weather) => checkHour(climateOf(weather), limits), climates);
  const reasons = gate.reasons.map(asSiteReason);
  if (!hasForecast) reasons.push(noForecast(holdTime));
  if (openHours !== undefined) reasons.push(cureBeyondForecast(openHours));
  const read = {
    dewPoint: dew,
    highestDewPoint: margin.highestPoint,
    margin: margin.worstMargin,
    steelNeeded: margin.steelNeeded,
    humidityAtSteel: atSteel as Ratio,
    isFrost: margin.isFrost,
  };
  const { earliestStart } = gate;
  const knowsStart = earliestStart !== undefined && openHours === undefined;
  return { reasons, read: knowsStart ? { ...read, earliestStart } : read };
}

function gateBeyondForecast(gate: Time): SiteReason {
  return {
    check: 'forecast',
    decision: 'wait',
    found: exactly('hour of the gate', 'time', gate),
    because: { text: 'the gate stands beyond the end of the forecast' },
    change: { text: 'a forecast that reaches from the gate to the end of the cure' },
  };
}

function cureBeyondForecast(because: string): SiteReason {
  return {
    check: 'forecast to the end of the cure',
    decision: 'wait',
    because: { text: `how long the climate has to hold is not known: ${because}` },
    change: {
      text: 'a forecast that reaches further, warmer steel, the speed of the crew, or what the design still lacks',
    },
  };
}

function noForecast(holdTime: Duration): SiteReason {
  const because = { text: 'the case gives no forecast, and the climate has to hold to the end of the cure' };
  const change = { text: 'a forecast of air, humidity and steel over that time' };
  const least = leastOf(holdTime);
  if (least === 0) return { check: 'forecast', decision: 'wait', because, change };
  const limit = roundedUp('time that the climate has to hold', 'time', least);
  return { check: 'forecast', decision: 'wait', limit, because, change };
}

/** What the case reads now, and foresees for each stretch. */
type Weather = Pick<Site, 'airTemperature' | 'relativeHumidity' | 'pipeTemperature'>;

function climateOf({ airTemperature, relativeHumidity, pipeTemperature }: Weather) {
  return { airTemperature, humidity: relativeHumidity, steelTemperature: pipeTemperature };
}

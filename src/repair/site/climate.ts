import { isCalculationError, step } from '../../formula/index.js';
import { type Ratio, roundedUp, type Time } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import {
  dewPoint,
  humidityAtSteel,
  steelMargin,
  type WeatherHour,
  weatherGate,
  weatherHours,
} from '../../site/index.js';
import type { Site } from '../case/case.js';
import type { SiteDesign, SiteReason } from '../design/design-work.js';
import { refusalLine } from '../job/refusal-line.js';
import type { Workbook } from '../job/workbook.js';
import { coldestForCure } from './coldest-for-cure.js';
import { asSiteReason } from './reason.js';

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
export function judgeClimate(work: Workbook, holdTime: Time): Climate {
  try {
    return readClimate(work, holdTime);
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    const because = refusalLine('the climate cannot be judged', error);
    const change = { text: 'read air and steel again' };
    return { reasons: [{ check: 'climate', decision: 'wait', because, change }] };
  }
}

function readClimate({ recorder, case: repairCase }: Workbook, holdTime: Time): Climate {
  const { site } = repairCase;
  const { pipeTemperature: steelTemperature, airTemperature, relativeHumidity: humidity, instruments } = site;
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
  const gate = weatherGate({
    forecast: hoursOf(site),
    holdTime: hasForecast ? holdTime : (0 as Time),
    minimumTemperature: coldestForCure(repairCase),
    requiredMargin: practice.dewPointMargin.value,
    humidityLimit: practice.highestHumidity.value,
    steelHumidityLimit: practice.highestHumidity.value,
    steelError: temperatureError,
    temperatureError,
    humidityError,
  });
  const reasons = gate.reasons.map(asSiteReason);
  if (!hasForecast) reasons.push(noForecast(holdTime));
  const read = {
    dewPoint: dew,
    highestDewPoint: margin.highestPoint,
    margin: margin.worstMargin,
    steelNeeded: margin.steelNeeded,
    humidityAtSteel: atSteel as Ratio,
    isFrost: margin.isFrost,
  };
  const { earliestStart } = gate;
  return { reasons, read: earliestStart === undefined ? read : { ...read, earliestStart } };
}

function noForecast(holdTime: Time): SiteReason {
  return {
    check: 'forecast',
    decision: 'wait',
    limit: roundedUp('time that the climate has to hold', 'time', holdTime),
    because: { text: 'the case gives no forecast, and the climate has to hold to the end of the cure' },
    change: { text: 'a forecast of air, humidity and steel over that time' },
  };
}

function hoursOf({ airTemperature, relativeHumidity, pipeTemperature, forecast = [] }: Site): WeatherHour[] {
  return weatherHours(
    { airTemperature, humidity: relativeHumidity, steelTemperature: pipeTemperature },
    forecast.map((each) => ({
      duration: each.duration,
      airTemperature: each.airTemperature,
      humidity: each.relativeHumidity,
      steelTemperature: each.pipeTemperature,
    })),
  );
}

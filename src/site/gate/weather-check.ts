import { positive, within } from '../../formula/index.js';
import {
  exactly,
  type Line,
  line,
  type Ratio,
  roundedDown,
  roundedUp,
  type Temperature,
  type TemperatureDifference,
  type Time,
} from '../../quantity/index.js';
import { dewPoint } from '../air/dew-point.js';
import { humidityAtSteel } from '../air/humidity-at-steel.js';
import { relativeHumidity } from '../air/relative-humidity.js';
import { type SteelMargin, steelMargin } from '../air/steel-margin.js';
import type { GateReason } from './gate-reason.js';

/** The climate at the pipe at one hour, measured or forecast. */
export interface WeatherHour extends Climate {
  /** From now. */
  readonly time: Time;
}

/** Air and steel at one time. */
export interface Climate {
  /** Of the air at the pipe. */
  readonly airTemperature: Temperature;
  /** Relative humidity of that air. */
  readonly humidity: Ratio;
  /** Of the steel: a cold fluid sets it, not the air. */
  readonly steelTemperature: Temperature;
}

/** What the climate is judged by. */
export interface WeatherLimits {
  /** Lowest temperature of the steel at which the maker lets the resin cure; no default. */
  readonly minimumTemperature: Temperature;
  /** Highest temperature of the steel at which the resin may be put on. */
  readonly maximumTemperature?: Temperature | undefined;
  /** 3 K when absent. */
  readonly requiredMargin?: TemperatureDifference | undefined;
  /** Of the air, as read; 0.85 when absent. */
  readonly humidityLimit?: Ratio | undefined;
  /** At the steel, at the worst edge; 0.85 when absent, lower to hold a blasted surface. */
  readonly steelHumidityLimit?: Ratio | undefined;
  /** Error of the thermometer on the steel; 0.5 K when absent. */
  readonly steelError?: TemperatureDifference | undefined;
  /** Error of the thermometer in the air; 0.5 K when absent. */
  readonly temperatureError?: TemperatureDifference | undefined;
  /** Error of the hygrometer; 0.03 when absent. */
  readonly humidityError?: Ratio | undefined;
}

/**
 * A check of one hour; `excess` is above 0 when it fails, in its own unit. The words are made on demand: of the checks of
 * all hours only the worst of each sort is ever read.
 */
export interface HourCheck {
  readonly check: string;
  readonly excess: number;
  readonly value: number;
  readonly limit: number;
  readonly kind: 'temperature' | 'temperature difference' | 'ratio';
  readonly words: () => Pick<GateReason, 'because' | 'change'>;
}

/** Refuses limits that cannot be. */
export function checkWeatherLimits(limits: WeatherLimits): void {
  const { minimumTemperature, maximumTemperature } = limits;
  const { humidityLimit = 0.85, steelHumidityLimit = 0.85 } = limits;
  positive(minimumTemperature, 'minimumTemperature', 'K');
  if (maximumTemperature !== undefined) {
    within(maximumTemperature, minimumTemperature, Number.MAX_VALUE, 'maximumTemperature', 'K');
  }
  within(humidityLimit, 0, 1, 'humidityLimit', '');
  within(steelHumidityLimit, 0, 1, 'steelHumidityLimit', '');
}

/**
 * Every check of one hour, in a fixed order.
 *
 * @internal
 */
export function checkHour(hour: Climate, limits: WeatherLimits): HourCheck[] {
  const { steelTemperature, airTemperature, humidity } = hour;
  const { requiredMargin, steelError, temperatureError, humidityError } = limits;
  const margin = steelMargin({
    steelTemperature,
    airTemperature,
    humidity,
    requiredMargin,
    steelError,
    temperatureError,
    humidityError,
  });
  return [
    marginCheck(margin, limits.requiredMargin ?? 3, hour, limits),
    airCheck(humidity, limits.humidityLimit ?? 0.85),
    steelHumidityCheck(hour, limits),
    ...temperatureChecks(steelTemperature, limits),
  ];
}

function marginCheck(margin: SteelMargin, required: number, hour: Climate, limits: WeatherLimits): HourCheck {
  const { worstMargin, highestPoint, steelNeeded, isFrost } = margin;
  const what = isFrost ? 'frost point' : 'dew point';
  const words = (): Pick<GateReason, 'because' | 'change'> => {
    return {
      because: line(
        `at the worst edge of the instruments the steel is {0} above the ${what} of {1}; {2} are needed${isFrost ? '; what settles is frost' : ''}`,
        roundedDown('margin', 'temperature difference', worstMargin),
        roundedUp(what, 'temperature', highestPoint),
        roundedUp('least margin', 'temperature difference', required),
      ),
      change: warmOrDry(steelNeeded, dryEnough(highestPoint + worstMargin - required, hour, limits)),
    };
  };
  return {
    check: `steel above the ${what}`,
    excess: required - worstMargin,
    value: worstMargin,
    limit: required,
    kind: 'temperature difference',
    words,
  };
}

function warmOrDry(steelNeeded: Temperature, dry: number | undefined): Line {
  const again = 'look again at each batch and when the weather turns';
  const steel = roundedUp('least reading of the steel', 'temperature', steelNeeded);
  if (dry === undefined) return line(`steel that reads at least {0}; ${again}`, steel);
  return line(
    `steel that reads at least {0}, or dry the air to {1} by the hygrometer; ${again}`,
    steel,
    roundedDown('humidity to dry to', 'ratio', dry),
  );
}

/** The reading of the hygrometer at which a dew point is no higher than this; none where drying cannot do it. */
function dryEnough(point: number, { airTemperature }: Climate, limits: WeatherLimits): number | undefined {
  const air = airTemperature + (limits.temperatureError ?? 0.5);
  if (!(point < air && point > 273.15)) return undefined;
  const reading =
    relativeHumidity({ temperature: air as Temperature, dewPoint: point as Temperature }) -
    (limits.humidityError ?? 0.03);
  return reading > 0.05 ? reading : undefined;
}

function airCheck(humidity: number, limit: number): HourCheck {
  return {
    check: 'humidity of the air',
    excess: humidity - limit,
    value: humidity,
    limit,
    kind: 'ratio',
    words: () => ({
      because: line(
        'the air reads {0}; at most {1} are allowed',
        roundedUp('humidity', 'ratio', humidity),
        roundedDown('highest humidity', 'ratio', limit),
      ),
      change: line(
        'air that reads at most {0}: another hour, a tent with warm or dried air',
        roundedDown('highest humidity', 'ratio', limit),
      ),
    }),
  };
}

function steelHumidityCheck(hour: Climate, limits: WeatherLimits): HourCheck {
  const { temperatureError = 0.5, humidityError = 0.03, steelError = 0.5, steelHumidityLimit: limit = 0.85 } = limits;
  const dew = dewPoint({
    temperature: (hour.airTemperature + temperatureError) as Temperature,
    humidity: Math.min(1, hour.humidity + humidityError) as Ratio,
  });
  const atSteel = humidityAtSteel({
    steelTemperature: (hour.steelTemperature - steelError) as Temperature,
    dewPoint: dew,
  });
  return {
    check: 'humidity at the steel',
    excess: atSteel - limit,
    value: atSteel,
    limit,
    kind: 'ratio',
    words: () => ({
      because: line(
        'at the worst edge the air on the steel is at {0}; at most {1} are allowed',
        roundedUp('humidity at the steel', 'ratio', atSteel),
        roundedDown('highest humidity', 'ratio', limit),
      ),
      change: { text: 'warmer steel or drier air' },
    }),
  };
}

function temperatureChecks(steel: number, limits: WeatherLimits): HourCheck[] {
  const { minimumTemperature: low, maximumTemperature: high, steelError = 0.5 } = limits;
  const cold: HourCheck = {
    check: 'steel not too cold for the resin',
    excess: low - (steel - steelError),
    value: steel - steelError,
    limit: low,
    kind: 'temperature',
    words: () => ({
      because: line(
        'the steel may be as cold as {0}; the resin needs {1}',
        roundedDown('coldest steel', 'temperature', steel - steelError),
        roundedUp('lowest temperature for the resin', 'temperature', low),
      ),
      change: line(
        'steel that reads at least {0}: heat the pipe, or a warmer hour',
        roundedUp('least reading of the steel', 'temperature', low + steelError),
      ),
    }),
  };
  const icy: HourCheck = {
    check: 'no ice on the steel',
    excess: 273.15 - (steel - steelError),
    value: steel - steelError,
    limit: 273.15,
    kind: 'temperature',
    words: () => ({
      because: line(
        'the steel may be as cold as {0}; at or below {1} it carries frost or ice',
        roundedDown('coldest steel', 'temperature', steel - steelError),
        exactly('freezing', 'temperature', 273.15),
      ),
      change: { text: 'thaw, dry and warm the steel' },
    }),
  };
  if (high === undefined) return [cold, icy];
  const hot: HourCheck = {
    check: 'steel not too hot for the resin',
    excess: steel + steelError - high,
    value: steel + steelError,
    limit: high,
    kind: 'temperature',
    words: () => ({
      because: line(
        'the steel may be as hot as {0}; the resin may be put on up to {1}',
        roundedUp('hottest steel', 'temperature', steel + steelError),
        roundedDown('highest temperature for the resin', 'temperature', high),
      ),
      change: line(
        'steel that reads at most {0}: shade, a cooler hour, less flow of hot fluid',
        roundedDown('highest reading of the steel', 'temperature', high - steelError),
      ),
    }),
  };
  return [cold, icy, hot];
}

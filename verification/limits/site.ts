import type { LimitRow, Numbers } from './limit.js';

const span = 'Only within the span of temperature of the coefficients';
const magnus = 'site/saturation-pressure site/absolute-humidity';
/** Spans of the four sets in degrees Celsius: three as their authors give them, the upper end of Tetens as chosen here. */
const spans = [
  ['sonntag', -45, 60],
  ['alduchov-eskridge', -40, 50],
  ['bolton', -30, 35],
  ['tetens', 0, 60],
] as const;
const drier = { humidity: 0.5 };
const least = { steelTemperature: 293.15, airTemperature: 293.15, humidity: 0.5 };
const bound = (of: string, input: string, accepts: LimitRow['accepts'], limit: number): LimitRow => ({
  of,
  input,
  accepts,
  limit,
  code: 'invalid-input',
  where: least,
});
/** Vapour pressure over water by the default set, at degrees Celsius. */
const vapour = (t: number): number => 611.2 * Math.exp((17.62 * t) / (243.12 + t));

/** Limits of the formulas about the site. */
export const siteLimits: readonly LimitRow[] = [
  ...spans.flatMap(([set, from, to]): LimitRow[] => [
    {
      of: magnus,
      says: span,
      input: 'temperature',
      accepts: 'from',
      limit: 273.15 + from,
      code: 'outside-validity',
      where: { ...drier, set },
    },
    {
      of: magnus,
      says: span,
      input: 'temperature',
      accepts: 'up to',
      limit: 273.15 + to,
      code: 'outside-validity',
      where: { ...drier, set },
    },
    {
      of: 'site/dew-point site/relative-humidity site/humidity-at-steel',
      says: span,
      input: 'temperature',
      put: (T) => ({ temperature: T, steelTemperature: T, dewPoint: T - 5, humidity: 0.9 }),
      names: set,
      accepts: 'up to',
      limit: 273.15 + to,
      code: 'outside-validity',
      where: { set },
    },
  ]),
  {
    of: 'site/dew-point-from-vapour-pressure',
    says: span,
    input: 'vapourPressure',
    accepts: 'up to',
    limit: vapour(60),
    code: 'outside-validity',
    where: { set: 'sonntag' },
  },
  {
    of: 'site/dew-point-from-vapour-pressure',
    says: span,
    input: 'vapourPressure',
    accepts: 'from',
    limit: vapour(-45),
    code: 'outside-validity',
    where: { set: 'sonntag' },
  },
  {
    of: 'site/dew-point',
    says: 'The dew point lies below 0 degC',
    input: 'humidity',
    accepts: 'from',
    limit: vapour(0) / vapour(20),
    code: 'note',
    where: { temperature: 293.15, set: 'sonntag' },
  },
  {
    of: 'site/condensation-point',
    says: 'What settles is frost',
    input: 'humidity',
    accepts: 'from',
    limit: vapour(0) / vapour(20),
    code: 'note',
    where: { temperature: 293.15 },
    step: 2e-3,
  },
  {
    of: 'site/dew-point-band',
    says: 'Not in air drier than the hygrometer can tell',
    input: 'humidity',
    accepts: 'from',
    limit: 0.03,
    code: 'outside-validity',
    where: { temperature: 323.15, humidityError: 0.03, temperatureError: 0.01, set: 'sonntag' },
    step: 0.01,
  },
  {
    // Over ice at saturation the air of 0.01 degC is the last that gives frost.
    of: 'site/frost-point',
    says: 'Only where frost forms',
    input: 'humidity',
    accepts: 'up to',
    limit: vapour(0.01) / vapour(10),
    code: 'outside-validity',
    where: { temperature: 283.15 },
    step: 1e-4,
  },
  {
    of: 'site/humidity-at-steel',
    says: 'The steel is at or below the dew point',
    input: 'steelTemperature',
    accepts: 'from',
    limit: 290,
    code: 'note',
    where: { dewPoint: 290 },
  },
  {
    of: 'site/vapour-pressure-from-wet-bulb',
    says: 'Only with water on the wet bulb',
    input: 'wetBulb',
    accepts: 'from',
    limit: 273.15,
    code: 'outside-validity',
    where: { dryBulb: 276, pressure: 101_325 },
  },
  {
    of: 'site/moist-air-from-wet-bulb',
    says: 'Only with water on the wet bulb',
    input: 'wetBulb',
    accepts: 'from',
    limit: 273.16,
    code: 'outside-validity',
    step: 2e-6,
    where: { dryBulb: 276, pressure: 101_325 },
  },
  {
    of: 'site/saturation-pressure-ashrae',
    says: 'Only from -100 to 200 degC',
    input: 'temperature',
    accepts: 'from',
    limit: 173.15,
    code: 'outside-validity',
  },
  {
    of: 'site/saturation-pressure-ashrae',
    says: 'Only from -100 to 200 degC',
    input: 'temperature',
    accepts: 'up to',
    limit: 473.15,
    code: 'outside-validity',
  },
  {
    of: 'site/saturation-pressure-over-ice',
    says: 'Only from -65 degC',
    input: 'temperature',
    accepts: 'from',
    limit: 208.15,
    code: 'outside-validity',
  },
  {
    of: 'site/saturation-pressure-over-ice',
    says: 'Only from -65 degC',
    input: 'temperature',
    accepts: 'up to',
    limit: 273.16,
    code: 'outside-validity',
  },
  {
    // Instruments without error: the margin is the steel less the dew point.
    of: 'site/steel-margin',
    says: 'The steel is not far enough above the dew point',
    input: 'steelTemperature',
    accepts: 'from',
    limit: (_: Numbers) =>
      273.15 + 3 + (243.12 * Math.log(vapour(20) / 2 / 611.2)) / (17.62 - Math.log(vapour(20) / 2 / 611.2)),
    code: 'note',
    where: { ...least, steelError: 0, temperatureError: 0, humidityError: 0, requiredMargin: undefined },
  },
  bound('site/steel-margin', 'steelTemperature', 'from', 173.15),
  bound('site/steel-margin', 'steelTemperature', 'up to', 773.15),
  bound('site/steel-margin', 'requiredMargin', 'up to', 100),
  bound('site/steel-margin', 'steelError', 'up to', 20),
  {
    ...bound('site/steel-margin', 'temperatureError', 'up to', 20),
    where: { ...least, airTemperature: 303.15, humidity: 0.9 },
  },
  {
    ...bound('site/steel-margin site/dew-point-band', 'humidityError', 'up to', 0.5),
    where: { ...least, temperature: 293.15, humidity: 0.9 },
  },
  bound('site/absolute-humidity', 'vapourGasConstant', 'from', 1),
  bound('site/absolute-humidity', 'vapourGasConstant', 'up to', 1e6),
  {
    of: 'site/frost-point',
    input: 'humidity',
    accepts: 'up to',
    limit: 1,
    code: 'invalid-input',
    where: { temperature: 260 },
  },
];

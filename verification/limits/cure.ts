import type { LimitRow } from './limit.js';

/** Tested from 10 to 35 degC, no cure below 8 degC. */
const span = { testedFrom: 283.15, testedTo: 308.15, minimumTemperature: 281.15, referenceTemperature: 296.15 };
const settled = {
  ...span,
  activationEnergy: 50_000,
  mechanism: 'two-part reaction',
  requiredTime: 3600,
  creditedTime: 0,
};
const at = 'cure/remaining-time cure/time-at-temperature cure/cure-wait cure/overcoat-window';
const atAny = `${at} cure/pot-life cure/working-time`;
const steps = 'cure/equivalent-time cure/cure-wait-over-history';
const swings = 'cure/equivalent-time-swing cure/cure-wait-over-swing';
const leaves = (what: string): string => `${what} leaves the span in which the times were measured`;
const oneStep = (temperature: number) => ({
  steps: [
    { duration: 1e6, temperature: 296.15 },
    { duration: 1e6, temperature },
  ],
});
const swinging = (temperature: number) => ({ meanTemperature: 298.15, swing: 2 * Math.abs(temperature - 298.15) });
const colder = { ...settled, testedFrom: 270 };
const rows = [
  { temperature: 283.15, humidity: 0.4, time: 7200 },
  { temperature: 303.15, humidity: 0.9, time: 3600 },
];
const dry = { rows, temperature: 303.15, humidity: 0.9, purpose: 'wait' };

const both = (row: Omit<LimitRow, 'accepts' | 'limit'>): LimitRow[] => [
  { ...row, accepts: 'up to', limit: 308.15 },
  { ...row, accepts: 'from', limit: 283.15 },
];
const fraction = (of: string, input: string, more: Partial<LimitRow> = {}): LimitRow => ({
  ...more,
  of,
  input,
  accepts: 'up to',
  limit: 1,
  code: 'invalid-input',
});

/** Limits of the formulas about the cure. */
export const cureLimits: readonly LimitRow[] = [
  ...both({ of: atAny, says: leaves('The temperature'), input: 'temperature', code: 'note', where: settled }),
  ...both({ of: steps, says: leaves('A step'), input: 'steps', put: oneStep, code: 'note', where: settled }),
  {
    of: 'cure/equivalent-time-ramp',
    says: leaves('The ramp'),
    input: 'endTemperature',
    accepts: 'up to',
    limit: 308.15,
    code: 'note',
    where: { ...settled, startTemperature: 290, duration: 3600 },
  },
  {
    of: 'cure/equivalent-time-ramp',
    says: leaves('The ramp'),
    input: 'startTemperature',
    accepts: 'from',
    limit: 283.15,
    code: 'note',
    where: { ...settled, endTemperature: 290, duration: 3600 },
  },
  {
    of: swings,
    says: leaves('The swing'),
    input: 'swing',
    put: swinging,
    accepts: 'up to',
    limit: 308.15,
    code: 'note',
    where: settled,
  },
  {
    of: at,
    says: 'Not below the minimum cure temperature',
    input: 'temperature',
    accepts: 'from',
    limit: 281.15,
    code: 'outside-validity',
    where: colder,
  },
  {
    of: steps,
    says: 'Part of the history is below the minimum',
    input: 'steps',
    put: oneStep,
    accepts: 'from',
    limit: 281.15,
    code: 'note',
    where: colder,
  },
  {
    of: 'cure/equivalent-time-ramp',
    says: 'Part of the ramp is below the minimum',
    input: 'startTemperature',
    accepts: 'from',
    limit: 281.15,
    code: 'note',
    where: { ...colder, endTemperature: 290, duration: 3600 },
  },
  {
    of: swings,
    says: 'Some hours are below the minimum',
    input: 'swing',
    put: (temperature) => ({ meanTemperature: 291.15, swing: 2 * (291.15 - temperature) }),
    accepts: 'from',
    limit: 281.15,
    code: 'note',
    where: { ...colder, testedTo: 320, duration: 7 * 86_400, requiredTime: 86_400, sinceColdest: 0 },
  },
  {
    of: 'cure/pot-life',
    says: 'The batch is heavier than the mass that was tested',
    input: 'batchMass',
    accepts: 'up to',
    limit: 0.1,
    code: 'note',
    where: { ...settled, testedMass: 0.1 },
  },
  {
    of: 'cure/isoconversional-time',
    says: 'The temperature lies outside the two',
    input: 'temperature',
    accepts: 'up to',
    limit: 310,
    code: 'note',
    where: { firstTemperature: 290, secondTemperature: 310, firstTime: 7200, secondTime: 1800 },
  },
  {
    of: 'cure/isoconversional-time',
    says: 'The temperature lies outside the two',
    input: 'temperature',
    accepts: 'from',
    limit: 290,
    code: 'note',
    where: { firstTemperature: 290, secondTemperature: 310, firstTime: 7200, secondTime: 1800 },
  },
  {
    of: 'cure/isoconversional-time cure/activation-energy-from-times',
    says: 'The hotter of the two must take the shorter time',
    input: 'secondTime',
    accepts: 'up to',
    limit: 7200,
    code: 'outside-validity',
    where: { firstTemperature: 290, secondTemperature: 310, firstTime: 7200 },
  },
  {
    of: 'cure/activation-energy-from-rates',
    says: 'The hotter of the two must be the faster',
    input: 'secondRate',
    accepts: 'from',
    limit: 1e-4,
    code: 'outside-validity',
    where: { firstTemperature: 290, secondTemperature: 310, firstRate: 1e-4 },
  },
  {
    of: 'cure/arrhenius-fit',
    says: 'The rates must rise with temperature',
    input: 'rows',
    accepts: 'from',
    limit: 1e-4,
    put: (rate) => ({
      rows: [
        { temperature: 290, rate: 1e-4 },
        { temperature: 310, rate },
      ],
    }),
    code: 'outside-validity',
  },
  { of: 'cure/activation-energy-from-q10', input: 'factor', accepts: 'from', limit: 1, code: 'invalid-input' },
  {
    of: 'cure/gel-conversion',
    says: 'Two groups on each side only make chains',
    input: 'hardenerFunctionality',
    accepts: 'from',
    limit: 2,
    code: 'no-solution',
    where: { epoxyFunctionality: 2 },
  },
  {
    of: 'cure/gel-conversion',
    input: 'epoxyFunctionality',
    names: 'epoxyFunctionality less 1',
    accepts: 'from',
    limit: 1,
    stoppedInside: true,
    code: 'invalid-input',
  },
  {
    of: 'cure/gel-conversion',
    input: 'hardenerFunctionality',
    names: 'hardenerFunctionality less 1',
    accepts: 'from',
    limit: 1,
    stoppedInside: true,
    code: 'invalid-input',
  },
  { of: 'cure/gel-conversion', input: 'epoxyFunctionality', accepts: 'up to', limit: 100, code: 'invalid-input' },
  { of: 'cure/gel-conversion', input: 'hardenerFunctionality', accepts: 'up to', limit: 100, code: 'invalid-input' },
  ...both({
    of: 'cure/makers-time',
    says: 'Nothing outside the temperatures',
    input: 'temperature',
    code: 'outside-validity',
    where: dry,
  }).map((row): LimitRow => ({ ...row, limit: row.accepts === 'from' ? 283.15 : 303.15 })),
  {
    of: 'cure/makers-time',
    says: 'Nothing outside the temperatures',
    input: 'humidity',
    accepts: 'up to',
    limit: 0.9,
    code: 'outside-validity',
    where: dry,
  },
  {
    of: 'cure/makers-time',
    says: 'Nothing outside the temperatures',
    input: 'humidity',
    accepts: 'from',
    limit: 0.4,
    code: 'outside-validity',
    where: dry,
  },
  fraction('cure/makers-time', 'humidity', { where: dry, stoppedInside: true }),
  {
    of: 'cure/makers-time',
    input: 'rows',
    names: 'rows[1].humidity',
    accepts: 'up to',
    limit: 1,
    put: (humidity) => ({ rows: [rows[0], { temperature: 303.15, humidity, time: 3600 }] }),
    code: 'invalid-input',
    where: dry,
  },

  // Exponents and constants of the kinetic laws: what no resin has.
  {
    of: 'cure/autocatalytic-conversion cure/autocatalytic-time cure/kamal-time',
    input: 'm',
    accepts: 'up to',
    limit: 5,
    code: 'invalid-input',
  },
  {
    of: 'cure/autocatalytic-conversion cure/autocatalytic-time cure/kamal-time',
    input: 'n',
    accepts: 'up to',
    limit: 10,
    code: 'invalid-input',
  },
  { of: 'cure/autocatalytic-time-closed', input: 'm', accepts: 'up to', limit: 2, code: 'invalid-input' },
  {
    of: 'cure/nth-order-conversion cure/nth-order-time',
    input: 'order',
    accepts: 'up to',
    limit: 10,
    code: 'invalid-input',
  },
  {
    of: 'cure/autocatalytic-conversion',
    input: 'diffusionConstant',
    accepts: 'up to',
    limit: 200,
    code: 'invalid-input',
  },
  {
    of: 'cure/autocatalytic-conversion',
    input: 'criticalConversion',
    accepts: 'from',
    limit: -1,
    code: 'invalid-input',
  },
  {
    of: 'cure/autocatalytic-conversion',
    input: 'criticalConversion',
    accepts: 'up to',
    limit: 2,
    code: 'invalid-input',
  },
  fraction('cure/autocatalytic-conversion cure/degree-of-cure', 'startConversion'),
  fraction('cure/autocatalytic-time', 'startConversion', { stoppedInside: true }),
  fraction('cure/autocatalytic-time cure/kamal-time cure/nth-order-time', 'conversion'),
  fraction('cure/required-cure-temperature cure/logarithmic-transition', 'lambda'),
  {
    of: swings,
    input: 'swing',
    accepts: 'up to',
    limit: 600,
    code: 'invalid-input',
    where: { ...settled, meanTemperature: 300, duration: 86_400, requiredTime: 60, sinceColdest: 43_200 },
  },
];

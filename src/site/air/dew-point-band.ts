import { formula, nonNegative, positive, refuse, within } from '../../formula/index.js';
import type { Ratio, Temperature, TemperatureDifference } from '../../quantity/index.js';
import { dewPoint } from './dew-point.js';
import type { MagnusSetName } from './magnus-set.js';

export interface DewPointBandInput {
  readonly temperature: Temperature;
  readonly humidity: Ratio;
  readonly temperatureError?: TemperatureDifference | undefined;
  readonly humidityError?: Ratio | undefined;
  readonly set?: MagnusSetName | undefined;
}

export interface DewPointBand {
  readonly highest: Temperature;
  readonly nominal: Temperature;
  readonly lowest: Temperature;
}

/**
 * Dew point with the band that the errors of thermometer and hygrometer leave.
 *
 * $$t_{d,max} = t_d(t + \delta t,\ RH + \delta RH), \qquad t_{d,min} = t_d(t - \delta t,\ RH - \delta RH)$$
 *
 * @param input.temperature      T, of the air [K]
 * @param input.humidity         RH, above 0 and up to 1
 * @param input.temperatureError dT, of the thermometer; 0.5 K when absent, >= 0
 * @param input.humidityError    dRH, of the hygrometer; 3 per cent of humidity when absent, from 0 up to 0.5
 * @param input.set              name of the coefficients; Sonntag (WMO) when absent
 * @returns highest, nominal and lowest dew point [K]
 * @throws CalculationError `invalid-input`; `outside-validity` when the air is drier than the hygrometer can tell
 * @remarks Both errors to the same side, not their root of squares: the worst edge is what a gate is judged by. Humidity
 *   past saturation is taken as saturation, since air holds no more.
 * @see Sonntag 1990 and WMO-No. 8, Annex 4.B, as public pages give them
 */
export function dewPointBand(input: DewPointBandInput): DewPointBand {
  const { temperature: T, humidity: RH, set = 'sonntag' } = input;
  const { temperatureError: dT = 0.5 as TemperatureDifference, humidityError: dRH = 0.03 as Ratio } = input;
  positive(T, 'temperature', 'K');
  within(RH, 0, 1, 'humidity', '');
  nonNegative(dT, 'temperatureError', 'K');
  within(dRH, 0, 0.5, 'humidityError', '');
  if (!(RH > dRH)) {
    refuse({
      code: RH > 0 ? 'outside-validity' : 'invalid-input',
      parameter: 'humidity',
      value: RH,
      unit: '',
      constraint: `must be above the error of the hygrometer, ${dRH}: in drier air it tells nothing`,
    });
  }
  const at = (temperature: number, humidity: number): Temperature =>
    dewPoint({ temperature: temperature as Temperature, humidity: humidity as Ratio, set });
  return { highest: at(T + dT, Math.min(1, RH + dRH)), nominal: at(T, RH), lowest: at(T - dT, RH - dRH) };
}

export const dewPointBandFormula = /* @__PURE__ */ formula<DewPointBandInput, DewPointBand>({
  id: 'site/dew-point-band',
  title: 'Dew point with the band of the instruments',
  search: ['hygrometer error', 'condensation', 'sweating'],
  compute: dewPointBand,
  equation: {
    algorithm:
      'The dew point rises with temperature and with humidity, so its ends are those at both errors up and both errors down; humidity ends at saturation.',
  },
  inputs: {
    temperature: { symbol: 'T', kind: 'temperature', name: 'air temperature', sample: [278.15, 306.15] },
    humidity: { symbol: 'RH', kind: 'ratio', name: 'relative humidity', sample: [0.25, 1] },
    temperatureError: {
      symbol: 'dT',
      kind: 'temperature difference',
      name: 'error of the thermometer',
      sample: [0.1, 1],
      default: 0.5,
    },
    humidityError: {
      symbol: 'dRH',
      kind: 'ratio',
      name: 'error of the hygrometer',
      sample: [0.01, 0.05],
      default: 0.03,
    },
    set: {
      symbol: 'set',
      kind: 'choice',
      name: 'coefficients',
      choices: ['sonntag', 'alduchov-eskridge', 'bolton', 'tetens'],
      default: 'sonntag',
    },
  },
  output: {
    highest: { symbol: 'T_d_max', kind: 'temperature', name: 'highest dew point' },
    nominal: { symbol: 'T_d', kind: 'temperature', name: 'dew point as read' },
    lowest: { symbol: 'T_d_min', kind: 'temperature', name: 'lowest dew point' },
  },
  sources: [
    { key: 'sonntag-1990', locator: 'Magnus form over water' },
    { key: 'wmo-8', locator: 'Annex 4.B' },
  ],
  evidence: { form: { tag: 'secondary' }, dT: { tag: 'practice' }, dRH: { tag: 'practice' } },
  limits: [{ sort: 'stop', text: 'Not in air drier than the hygrometer can tell.' }],
  inhomogeneous: 'the coefficients are tied to degrees Celsius and to the pascal',
});

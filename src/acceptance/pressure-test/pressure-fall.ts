import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Ratio, Temperature, TemperatureDifference, Volume } from '../../quantity/index.js';
import { blockedLinePressure } from './blocked-line-pressure.js';
import { pressureAfter } from './blocked-water.js';
import { pipeStretchFactor } from './pipe-stretch-factor.js';
import { pipeWarmingFactor } from './pipe-warming-factor.js';
import { waterCompressionFactor } from './water-compression-factor.js';
import { waterDensity, waterDensityRatioError } from './water-density.js';
import { waterSwelling } from './water-swelling.js';

/** What a fall of the test pressure was. */
export type PressureFallVerdict = 'only cooling' | 'undecided' | 'leak';

export interface PressureFall {
  readonly fallExpected: GaugePressure;
  readonly verdict: PressureFallVerdict;
  /** Least fall that the temperatures allow, at the worst edge of their errors. */
  readonly fallLeast: GaugePressure;
  readonly fallMost: GaugePressure;
  readonly fallSeen: GaugePressure;
  /** Water that is missing, measured without pressure at 60 degF; below 0 where the line holds more than it did. */
  readonly waterLost: Volume;
}

export interface PressureFallInput {
  readonly startPressure: GaugePressure;
  readonly endPressure: GaugePressure;
  readonly startTemperature: Temperature;
  readonly endTemperature: Temperature;
  /** Error of one reading, either way. */
  readonly pressureError: GaugePressure;
  readonly temperatureError: TemperatureDifference;
  /** Fall beyond that of cooling that the test procedure lets pass. */
  readonly allowedFall: GaugePressure;
  readonly volume: Volume;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
}

/**
 * Whether the pressure of a blocked line full of water fell by cooling alone, or water was lost.
 *
 * @param input.startPressure    P_1, pressure when the line was blocked [Pa], >= 0
 * @param input.endPressure      P_2, pressure at the end of the hold [Pa], >= 0
 * @param input.startTemperature T_1, temperature of the water at the start [K], 35 to 100 degF
 * @param input.endTemperature   T_2, temperature of the water at the end [K], 35 to 100 degF
 * @param input.pressureError    e_P, error of one pressure reading [Pa], >= 0
 * @param input.temperatureError e_T, error of one temperature reading [K], >= 0
 * @param input.allowedFall      P_a, fall beyond cooling that passes [Pa], >= 0
 * @param input.volume           V, water that fills the line [m3], > 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @returns fall that cooling explains with its bounds, fall seen, water lost, and the verdict
 * @throws CalculationError `invalid-input`; `outside-validity` where the error of the density of water is not stated; `no-solution`
 *   where cooling alone takes all pressure
 * @remarks `only cooling`: even at the worst edge of the errors no more than the allowed fall is unexplained. `leak`: even at
 *   the best edge some is. The edges hold the 3e-6 by which the ratio of two densities may be off. Fresh water only. Else `undecided`: hold longer, read better, or wait until the temperature stands still. A
 *   pressure above what the temperatures explain is undecided too, since then they are not those of the water.
 * @see Pipeline Rules of Thumb Handbook, pp. 140 to 142, for compression and pipe; Kell 1975 for the density of water
 */
export function pressureFall(input: PressureFallInput): PressureFall {
  const { startPressure, endPressure, startTemperature, endTemperature, outsideDiameter, wallThickness } = input;
  const { pressureError, temperatureError, allowedFall, volume } = input;
  nonNegative(startPressure, 'startPressure', 'Pa');
  nonNegative(endPressure, 'endPressure', 'Pa');
  positive(startTemperature, 'startTemperature', 'K');
  positive(endTemperature, 'endTemperature', 'K');
  nonNegative(pressureError, 'pressureError', 'Pa');
  nonNegative(temperatureError, 'temperatureError', 'K');
  nonNegative(allowedFall, 'allowedFall', 'Pa');
  positive(volume, 'volume', 'm3');
  below(temperatureError, startTemperature, 'the temperature', 'temperatureError', 'K');
  const pipe = { outsideDiameter, wallThickness };
  const states = (T1: Temperature, T2: Temperature, share = 0) => ({
    ...pipe,
    pressure: startPressure,
    startTemperature: T1,
    endTemperature: T2,
    startWaterFactor: swollen(T1),
    // Water that ends as warm as it began is as dense, whatever its density is.
    endWaterFactor: (swollen(T2) * (T1 === T2 ? 1 : 1 + share * waterDensityRatioError)) as Ratio,
  });
  const fallExpected = startPressure - blockedLinePressure(states(startTemperature, endTemperature));
  let [fallLeast, fallMost] = [fallExpected, fallExpected];
  for (const T1 of edges(startTemperature, temperatureError)) {
    for (const T2 of edges(endTemperature, temperatureError)) {
      fallLeast = Math.min(fallLeast, startPressure - pressureAfter(states(T1, T2, 1)));
      fallMost = Math.max(fallMost, startPressure - pressureAfter(states(T1, T2, -1)));
    }
  }
  const fallSeen = startPressure - endPressure;
  const unexplainedMost = fallSeen + 2 * pressureError - fallLeast;
  const unexplainedLeast = fallSeen - 2 * pressureError - fallMost;
  const water = (pressure: GaugePressure, temperature: Temperature): number =>
    (waterCompressionFactor({ pressure }) *
      pipeStretchFactor({ ...pipe, pressure, temperature }) *
      pipeWarmingFactor({ temperature })) /
    swollen(temperature);
  const waterLost = volume * (water(startPressure, startTemperature) - water(endPressure, endTemperature));
  finite(waterLost, 'water lost', 'm3');
  return {
    fallExpected: fallExpected as GaugePressure,
    verdict: verdictOf(unexplainedLeast, unexplainedMost, allowedFall),
    fallLeast: fallLeast as GaugePressure,
    fallMost: fallMost as GaugePressure,
    fallSeen: fallSeen as GaugePressure,
    waterLost: waterLost as Volume,
  };
}

function verdictOf(least: number, most: number, allowed: number): PressureFallVerdict {
  if (most < 0) return 'undecided';
  if (most <= allowed) return 'only cooling';
  return least > 0 ? 'leak' : 'undecided';
}

function swollen(temperature: Temperature): Ratio {
  return waterSwelling({ density: waterDensity({ temperature }) });
}

/**
 * Where a full pipe holds most water [K]: below it cold water swells faster than the pipe shrinks. It moves by less than a
 * hundredth of a kelvin with pressure and pipe.
 */
const turn = 279.687 as Temperature;

/** Both ends of a reading with its error, and where the fall turns between them: the extremes lie at one of these. */
function edges(temperature: Temperature, error: TemperatureDifference): Temperature[] {
  const [low, high] = [(temperature - error) as Temperature, (temperature + error) as Temperature];
  return low < turn && turn < high ? [low, turn, high] : [low, high];
}

export const pressureFallFormula = /* @__PURE__ */ formula<PressureFallInput, PressureFall>({
  id: 'acceptance/pressure-fall',
  title: 'Fall of the test pressure: leak or cooling',
  search: ['hydrotest', 'pressure drop', 'leak test', 'holding pressure'],
  compute: pressureFall,
  equation: {
    algorithm:
      'Pressure at which the water of the start fits the line at the end temperature, at the readings and at every edge of their errors and of that of the density of water; the fall seen, with the error of both pressure readings, is set against the least and the greatest of these.',
  },
  inputs: {
    startPressure: { symbol: 'P_1', kind: 'gauge pressure', name: 'pressure at the start', sample: [5e6, 15e6] },
    endPressure: { symbol: 'P_2', kind: 'gauge pressure', name: 'pressure at the end', sample: [4e6, 15e6] },
    startTemperature: { symbol: 'T_1', kind: 'temperature', name: 'water at the start', sample: [286, 294] },
    endTemperature: { symbol: 'T_2', kind: 'temperature', name: 'water at the end', sample: [286, 294] },
    pressureError: { symbol: 'e_P', kind: 'gauge pressure', name: 'error of a pressure reading', sample: [0, 5e4] },
    temperatureError: {
      symbol: 'e_T',
      kind: 'temperature difference',
      name: 'error of a temperature reading',
      sample: [0, 1],
    },
    allowedFall: { symbol: 'P_a', kind: 'gauge pressure', name: 'fall beyond cooling that passes', sample: [0, 5e5] },
    volume: { symbol: 'V', kind: 'volume', name: 'water that fills the line', sample: [0.1, 1000] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.06, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.002, 0.025] },
  },
  output: {
    fallExpected: { symbol: 'dP', kind: 'gauge pressure', name: 'fall by cooling' },
    verdict: { symbol: 'verdict', kind: 'choice', name: 'what the fall was' },
    fallLeast: { symbol: 'dP_min', kind: 'gauge pressure', name: 'least fall by cooling' },
    fallMost: { symbol: 'dP_max', kind: 'gauge pressure', name: 'greatest fall by cooling' },
    fallSeen: { symbol: 'dP_s', kind: 'gauge pressure', name: 'fall seen' },
    waterLost: { symbol: 'V_l', kind: 'volume', name: 'water lost' },
  },
  sources: [
    { key: 'rules-of-thumb', locator: 'pp. 140 to 142, compression and pipe' },
    { key: 'kell-1975', locator: 'p. 97, density of water' },
  ],
  evidence: {
    form: { tag: 'chosen', derived: 'grid over the errors, with bisection on the volumes' },
    factors: { tag: 'published' },
    density: { tag: 'recalled', derived: 'formula of the CIPM (Tanaka, 2001), within 3e-6 in ratios' },
    waterDensityRatioError: {
      tag: 'chosen',
      derived: 'greatest difference of the ratios by Kell and by the CIPM',
    },
  },
  limits: [{ sort: 'stop', text: 'Fresh water from 35 to 100 degF.' }],
  inhomogeneous: 'the density of water is tied to degrees Celsius',
});

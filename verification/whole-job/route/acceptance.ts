import type { Extent } from './extent.js';
import type { LaminateFigures } from './laminate.js';
import type { Found } from './pipe-as-found.js';
import type { Job } from './read-job.js';
import { ruleOf } from './rules.js';

const PSI = 4.4482216152605 / 0.0254 ** 2;

/** Barcol readings of a reinforced laminate by hardness (ASTM D2583, table 1, as recalled). */
const BARCOL: readonly (readonly [number, number])[] = [
  [30, 29],
  [40, 22],
  [50, 16],
  [60, 10],
  [70, 5],
];

export interface Acceptance {
  readonly hardness?: Readonly<Record<string, number | string>>;
  readonly leastThickness: number;
  readonly leastOverlap: number;
  readonly highestWrinkle: number;
  readonly needsSecondMethod: boolean;
  readonly pressureTest: Readonly<Record<string, number | string>>;
}

/** Density of water at 1 atm (Kell 1975), kg/m3 by degC. */
function waterDensity(c: number): number {
  const upper = [999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12];
  return upper.reduceRight((sum, each) => sum * c + each, 0) / (1 + 16.87985e-3 * c);
}

const toF = (kelvin: number): number => (kelvin - 273.15) * 1.8 + 32;

/** How the volume of the filled line goes with pressure and temperature: F_wp F_pp F_pt/F_wt of the handbook. */
function lineFactor(found: Found, modulus: number, pressure: number, kelvin: number): number {
  const P = pressure / PSI;
  const T = toF(kelvin);
  const byPressure = 1 / (1 - (4.5e-5 * P) / 14.73);
  const byStretch = 1 + ((found.outsideDiameter / found.wall) * 0.91 * pressure) / modulus + 3.6e-6 * (T - 60);
  const byWarmth = ((1 + 18.2e-6 * (T - 60)) * waterDensity(kelvin - 273.15)) / waterDensity((60 - 32) / 1.8);
  return byPressure * byStretch * byWarmth;
}

function hardnessOf({ acceptance }: Job): Acceptance['hardness'] {
  if (acceptance === undefined) return undefined;
  const { hardnessScale: scale, qualifiedHardness: qualified } = acceptance;
  const leastMean = 0.9 * qualified;
  const row = [...BARCOL].reverse().find(([hardness]) => hardness <= leastMean);
  const readings = scale === 'Shore D' ? 5 : row?.[1];
  return { scale, qualified, leastMean, leastSingle: 0.8 * qualified, ...(readings === undefined ? {} : { readings }) };
}

export function acceptanceOf(
  job: Job,
  found: Found,
  laminate: LaminateFigures,
  extent: Extent,
  onTheDay: number,
): Acceptance {
  const hardness = hardnessOf(job);
  const { acceptance, service, site, pipe } = job;
  const D = found.outsideDiameter;
  const pressure = ruleOf(job, 'systemTest.factor') * service.designPressure;
  const common = { pressure, resistance: onTheDay, hold: ruleOf(job, 'systemTest.hold') };
  const test = acceptance?.pressureTest;
  const medium = test === undefined ? 'not stated' : test === 'none' ? 'none' : test.medium;
  const least = Math.max(laminate.thickness.value, laminate.leastPlies * job.laminate.plyThickness);
  const base = {
    ...(hardness === undefined ? {} : { hardness }),
    leastThickness: least,
    leastOverlap: extent.overlap.value,
    highestWrinkle: Math.min(2.5e-3, 0.2 * laminate.laidThickness),
    needsSecondMethod: laminate.laidThickness > 0.08 * 0.0254,
  };
  if (test === undefined || test === 'none') return { ...base, pressureTest: { ...common, medium } };
  const bore = D - 2 * found.wall;
  const volume = (Math.PI / 4) * bore * bore * test.length;
  if (test.medium === 'gas') {
    const absolute = pressure + test.atmosphere;
    const k = 1.4;
    const storedEnergy = ((absolute * volume) / (k - 1)) * (1 - (test.atmosphere / absolute) ** ((k - 1) / k));
    const tntEquivalent = storedEnergy / 4_266_920;
    const byMass = 20 * (2 * tntEquivalent) ** (1 / 3);
    const least = storedEnergy <= 135.5e6 ? 30 : storedEnergy <= 271e6 ? 60 : 0;
    return {
      ...base,
      pressureTest: { ...common, medium, volume, storedEnergy, tntEquivalent, distance: Math.max(least, byMass) },
    };
  }
  const modulus = pipe.material.modulus ?? 207e9;
  const testTemperature = site.pipeTemperature;
  const stretch = ((D / found.wall) * 0.91 * pressure) / modulus;
  const waterToAdd = volume * ((1 / (1 - (4.5e-5 * pressure) / PSI / 14.73)) * (1 + stretch) - 1);
  const storedEnergy =
    (pressure ** 2 * volume) / (2 * 2.2e9) +
    pressure ** 2 * volume * ((bore / 2 / (found.wall * modulus)) * (5 / 4 - 0.3));
  return {
    ...base,
    pressureTest: {
      ...common,
      medium,
      ...(test.liquid === undefined ? {} : { liquid: test.liquid }),
      volume,
      ...(test.liquid === 'fresh water'
        ? { waterToAdd, pressurePerKelvin: pressurePerKelvin(found, modulus, pressure, testTemperature) }
        : {}),
      testTemperature,
      storedEnergy,
    },
  };
}

/** Pressure of the blocked line after one kelvin of warming, less that before: the water keeps the volume it has. */
function pressurePerKelvin(found: Found, modulus: number, pressure: number, kelvin: number): number {
  const held = lineFactor(found, modulus, pressure, kelvin);
  let low = pressure - 20e6;
  let high = pressure + 20e6;
  for (let step = 0; step < 200; step++) {
    const middle = (low + high) / 2;
    if (lineFactor(found, modulus, middle, kelvin + 1) < held) low = middle;
    else high = middle;
  }
  return (low + high) / 2 - pressure;
}

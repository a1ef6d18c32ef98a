import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawnInputs, formulaNamed, type Inputs, numberFrom } from './draws.js';

/**
 * What a formula comes to at the edge of its span, where the answer is plain: a thin wall, no loss, no waste, no friction,
 * the reference temperature. Only where the tests of the room do not say so already.
 */

const runs = { seed: 20261125, numRuns: 200 };

interface EdgeCase {
  readonly formula: string;
  readonly at: string;
  readonly set: Inputs | ((input: Inputs) => Inputs);
  /** Member of the result, where it is not the first. */
  readonly member?: string;
  readonly gives: (input: Numbers) => number;
  /** Share of the answer by which the limit may be missed; 1e-12 where it is met and not only approached. */
  readonly within?: number;
}

/** Inputs where the property needs their numbers. */
type Numbers = Readonly<Record<string, number>>;

const n = (input: Inputs, name: string): number => input[name] as number;
const thin = 1e-7;
const thinWall = (x: Inputs): Inputs => ({ wallThickness: thin * n(x, 'outsideDiameter') });
const thinRing = (x: Numbers): number =>
  ((x['pressure'] ?? 0) * (x['outsideDiameter'] ?? 0)) / (2 * (x['wallThickness'] ?? 0));
const given = (name: string) => (x: Numbers) => x[name] ?? Number.NaN;
const one = () => 1;
const zero = () => 0;
const atReference = (x: Inputs): Inputs => ({
  temperature: n(x, 'referenceTemperature'),
  testedFrom: 250,
  testedTo: 400,
  minimumTemperature: 250,
});

const edges: readonly EdgeCase[] = [
  // Thick to thin.
  ...['hoop-stress', 'bore-hoop-stress', 'mean-diameter-hoop-stress', 'outside-hoop-stress'].map((name) => ({
    formula: `pipe/${name}`,
    at: 'a thin wall',
    set: thinWall,
    gives: thinRing,
    within: 4 * thin,
  })),
  {
    formula: 'pipe/longitudinal-stress',
    at: 'a thin wall',
    set: thinWall,
    gives: (x) => thinRing(x) / 2,
    within: 4 * thin,
  },
  {
    formula: 'pipe/thin-longitudinal-stress',
    at: 'a thin wall',
    set: thinWall,
    gives: (x) => thinRing(x) / 2,
    within: 4 * thin,
  },
  {
    formula: 'mechanics/thick-cylinder-hoop-stress',
    at: 'a thin wall',
    set: (x) => ({ externalPressure: 0, outerRadius: n(x, 'innerRadius') * (1 + thin), radius: n(x, 'innerRadius') }),
    gives: (x) => (x['internalPressure'] ?? 0) / thin,
    within: 4 * thin,
  },
  {
    formula: 'mechanics/thick-cylinder-axial-stress',
    at: 'a thin wall',
    set: (x) => ({ externalPressure: 0, outerRadius: n(x, 'innerRadius') * (1 + thin), ends: 'closed' }),
    gives: (x) => (x['internalPressure'] ?? 0) / thin / 2,
    within: 4 * thin,
  },
  {
    formula: 'laminate/laminate-bore-ratio',
    at: 'a thin laminate',
    set: (x) => ({ laminateThickness: thin * n(x, 'outsideDiameter') }),
    gives: one,
    within: 4 * thin,
  },
  // No loss.
  { formula: 'pipe/wall-at-end-of-life', at: 'no loss', set: { rate: 0 }, gives: given('presentWall') },
  { formula: 'pipe/wall-at-end-of-life', at: 'no life', set: { life: 0 }, gives: given('presentWall') },
  { formula: 'pipe/defect-depth-at-end-of-life', at: 'no loss', set: { rate: 0 }, gives: given('defectDepth') },
  { formula: 'pipe/defect-length-at-end-of-life', at: 'no loss', set: { rate: 0 }, gives: given('defectLength') },
  { formula: 'laminate/hole-at-end-of-life', at: 'no loss', set: { corrosionRate: 0 }, gives: given('holeDiameter') },
  {
    formula: 'pipe/remaining-life',
    at: 'the required wall',
    set: (x) => ({ presentWall: n(x, 'requiredWall') }),
    gives: zero,
  },
  { formula: 'pipe/folias-b31g', at: 'no length', set: { defectLength: 0 }, gives: one },
  { formula: 'pipe/folias-modified-b31g', at: 'no length', set: { defectLength: 0 }, gives: one },
  { formula: 'pipe/dnv-length-correction', at: 'no length', set: { defectLength: 0 }, gives: one },
  { formula: 'pipe/dnv-axial-compression', at: 'no compression', set: { axialStress: 0 }, gives: one },
  {
    formula: 'pipe/restrained-thermal-stress',
    at: 'no change of temperature',
    set: (x) => ({ operatingTemperature: n(x, 'tieInTemperature') }),
    gives: zero,
  },
  // The laminate.
  { formula: 'laminate/cyclic-factor', at: 'a steady pressure', set: { pressureRatio: 1 }, gives: one },
  {
    formula: 'laminate/cyclic-factor',
    at: 'few cycles',
    set: (x) => ({ cycles: Math.min(7000, n(x, 'freeCycles')) }),
    gives: one,
  },
  {
    formula: 'laminate/temperature-factor',
    at: '80 kelvin below the limit',
    set: (x) => ({
      designTemperature: n(x, 'upperTemperatureLimit') - 80,
      quadratic: 6e-5,
      linear: 0.001,
      constant: 0.7014,
      coefficientUnit: 1,
    }),
    gives: one,
  },
  {
    formula: 'laminate/allowable-strain',
    at: 'a pipe and a laminate that expand alike',
    set: (x) => ({ laminateExpansion: n(x, 'substrateExpansion') }),
    gives: (x) => (x['defaultStrain'] ?? 0) * (x['temperatureFactor'] ?? 0) * (x['cyclicFactor'] ?? 0),
  },
  { formula: 'laminate/thickness-hole', at: 'nearly no pressure', set: { pressure: 1e-3 }, gives: zero, within: 1e-4 },
  // The wrap and the mix.
  { formula: 'wrap/mean-layers', at: 'no overlap', set: { overlap: 0 }, gives: one },
  { formula: 'wrap/minimum-layers', at: 'no overlap', set: { overlap: 0 }, gives: one },
  { formula: 'wrap/mean-thickness', at: 'no lap', set: { sideLap: 0 }, gives: given('thickness') },
  { formula: 'wrap/passes', at: 'no overlap', set: { overlap: 0 }, gives: given('requiredLayers') },
  {
    formula: 'wrap/helix-length',
    at: 'no advance',
    set: { advance: 0 },
    gives: (x) => (x['turns'] ?? 0) * (x['circumference'] ?? 0),
  },
  { formula: 'wrap/rolls', at: 'no waste', set: { waste: 0 }, member: 'lengthWithWaste', gives: given('length') },
  { formula: 'resin/volume-with-waste', at: 'no waste', set: { waste: 0 }, gives: given('volume') },
  {
    formula: 'resin/mass-with-waste',
    at: 'no waste',
    set: { waste: 0 },
    gives: (x) => (x['volume'] ?? 0) * (x['density'] ?? 0),
  },
  {
    formula: 'resin/fibre-volume-fraction',
    at: 'nearly no resin',
    set: { fibreMassFraction: 1 - thin, voidFraction: 0 },
    gives: one,
    within: 4 * thin,
  },
  {
    formula: 'resin/ply-thickness',
    at: 'nearly no resin',
    set: { fibreMassFraction: 1 - thin, voidFraction: 0 },
    gives: (x) => (x['arealWeight'] ?? 0) / (x['fibreDensity'] ?? 0),
    within: 4 * thin,
  },
  {
    formula: 'resin/mixing-ratio-error',
    at: 'the stated ratio',
    set: (x) => ({ massA: 3 * n(x, 'partsA'), massB: 3 * n(x, 'partsB') }),
    gives: one,
  },
  // The cure.
  {
    formula: 'mechanics/arrhenius-shift',
    at: 'the reference temperature',
    set: (x) => ({ temperature: n(x, 'referenceTemperature') }),
    gives: one,
  },
  { formula: 'cure/cure-wait', at: 'the reference temperature', set: atReference, gives: given('time') },
  { formula: 'cure/time-at-temperature', at: 'the reference temperature', set: atReference, gives: given('time') },
  { formula: 'cure/working-time', at: 'the reference temperature', set: atReference, gives: given('time') },
  {
    formula: 'cure/pot-life',
    at: 'the reference temperature',
    set: (x) => ({ ...atReference(x), batchMass: n(x, 'testedMass') }),
    gives: given('time'),
  },
  {
    formula: 'cure/overcoat-window',
    at: 'the reference temperature',
    set: atReference,
    member: 'opensAfter',
    gives: given('opens'),
  },
  {
    formula: 'cure/equivalent-time-ramp',
    at: 'a level ramp at the reference temperature',
    set: (x) => ({
      ...atReference(x),
      startTemperature: n(x, 'referenceTemperature'),
      endTemperature: n(x, 'referenceTemperature'),
    }),
    gives: given('duration'),
  },
  {
    formula: 'cure/equivalent-time-swing',
    at: 'no swing about the reference temperature',
    set: (x) => ({ ...atReference(x), meanTemperature: n(x, 'referenceTemperature'), swing: 0 }),
    gives: given('duration'),
  },
  { formula: 'cure/nth-order-conversion', at: 'no time', set: { time: 0 }, gives: zero },
  { formula: 'cure/degree-of-cure-by-dsc', at: 'no heat left', set: { residualHeat: 0 }, gives: one },
  {
    formula: 'cure/degree-of-cure-by-dsc',
    at: 'all heat left',
    set: (x) => ({ residualHeat: n(x, 'totalHeat') }),
    gives: zero,
  },
  { formula: 'cure/di-benedetto', at: 'full cure', set: { conversion: 1 }, gives: given('fullTransition') },
  { formula: 'cure/di-benedetto', at: 'no cure', set: { conversion: 0 }, gives: given('uncuredTransition') },
  // The site.
  {
    formula: 'site/moist-air-from-wet-bulb',
    at: 'a wet bulb as warm as the air',
    set: (x) => ({ wetBulb: n(x, 'dryBulb') }),
    member: 'relativeHumidity',
    gives: one,
  },
  {
    formula: 'site/humidity-at-steel',
    at: 'steel at the dew point',
    set: (x) => ({ dewPoint: n(x, 'steelTemperature') }),
    gives: one,
  },
  { formula: 'site/soluble-salts', at: 'clean water', set: { conductivityRise: 0 }, gives: zero },
  // The seal.
  { formula: 'seal/fastener-tension', at: 'no friction', set: { friction: 0 }, gives: given('padTension') },
  { formula: 'seal/tension-along-band', at: 'no friction', set: { friction: 0 }, gives: given('fastenerTension') },
  { formula: 'seal/mean-band-tension', at: 'no friction', set: { friction: 0 }, gives: given('fastenerTension') },
  { formula: 'seal/assured-tension', at: 'no scatter', set: { scatter: 0 }, gives: given('tensionLimit') },
  { formula: 'seal/backing-plate-stress', at: 'no pressure', set: { pressure: 0 }, gives: zero },
  { formula: 'seal/jet-reaction', at: 'no pressure', set: { pressureDifference: 0 }, gives: zero },
  { formula: 'seal/leak-force', at: 'no pressure', set: { pressure: 0 }, gives: zero },
  {
    formula: 'mechanics/ring-buckling',
    at: 'no contraction',
    set: { poissonRatio: 0 },
    gives: (x) => 2 * (x['modulus'] ?? 0) * ((x['wallThickness'] ?? 0) / (x['outsideDiameter'] ?? 1)) ** 3,
  },
];

describe('at the edge', () => {
  it.each(edges.map((edge) => [edge.formula, edge.at, edge] as const))('%s is plain at %s', (id, _, edge) => {
    const formula = formulaNamed(id);
    fc.assert(
      fc.property(fc.nat(), (draw) => {
        const drawn = drawnInputs(formula, draw);
        const input = { ...drawn, ...(typeof edge.set === 'function' ? edge.set(drawn) : edge.set) };
        const found = numberFrom(formula, input, edge.member);
        const expected = edge.gives(input as Numbers);
        const slack = (edge.within ?? 1e-12) * (expected === 0 ? 1 : Math.abs(expected));
        expect(
          Math.abs(found - expected),
          `${found} against ${expected}; ${JSON.stringify(input)}`,
        ).toBeLessThanOrEqual(slack);
      }),
      runs,
    );
  });
});

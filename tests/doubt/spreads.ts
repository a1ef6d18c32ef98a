import type { Distribution } from '../../src/doubt/index.js';
import { energyReleaseRate, gauge, length, modulus } from '../../src/quantity/index.js';
import type { Filler, RepairCase } from '../../src/repair/index.js';
import { leaking, partWall } from '../repair/example-case.js';

type Inputs = Readonly<Record<string, Distribution>>;

const normal = (mean: number, standardDeviation: number): Distribution => ({
  shape: 'normal',
  mean,
  standardDeviation,
});
const lognormal = (mean: number, standardDeviation: number): Distribution => ({
  shape: 'lognormal',
  mean,
  standardDeviation,
});
const uniform = (least: number, most: number): Distribution => ({ shape: 'uniform', least, most });
const weibull = (location: number, scale: number, exponent: number): Distribution => ({
  shape: 'Weibull minimum',
  location,
  scale,
  exponent,
});

/** A leak that a weak bond holds. */
const weak: RepairCase = {
  ...leaking,
  service: { ...leaking.service, designPressure: gauge.MPa(0.6) },
  laminate: { ...leaking.laminate, energyReleaseRate: energyReleaseRate.JPerM2(30) },
};

/** The thinned pipe carries with the laminate, up to its yield strength; where it is sound it stays below its allowable stress. */
const yielded: RepairCase = {
  ...partWall,
  pipe: { ...partWall.pipe, wallThickness: length.mm(12) },
  service: { ...partWall.service, designPressure: gauge.MPa(9) },
  filler: { ...(partWall.filler as Filler), thicknessOverDefect: length.mm(8) },
  repair: { ...partWall.repair, method: 'substrate yielded' },
};

/** Cases with distributions of which both methods shall say the same. */
export const spreads: readonly (readonly [what: string, repairCase: RepairCase, inputs: Inputs])[] = [
  ['a pressure by the normal distribution', partWall, { 'service.designPressure': normal(3.8e6, 2e5) }],
  ['a pressure by the lognormal distribution', partWall, { 'service.designPressure': lognormal(3.7e6, 2.5e5) }],
  [
    'pressure and stiffness round the pipe',
    partWall,
    { 'service.designPressure': normal(3.8e6, 2e5), 'laminate.hoopModulus': normal(modulus.GPa(24), modulus.GPa(0.6)) },
  ],
  [
    'a bond by the distribution of the least of many',
    weak,
    { 'laminate.energyReleaseRate': weibull(0, 34, 6), 'service.designPressure': normal(5.5e5, 3e4) },
  ],
  [
    'a hole between two sizes, and a bond',
    { ...weak, defect: { ...weak.defect, holeDiameter: length.mm(20), axialLength: length.mm(80) } },
    { 'defect.holeDiameter': uniform(0.016, 0.024), 'laminate.energyReleaseRate': lognormal(40, 4) },
  ],
  [
    'a wall that is read with an error, on a pipe that may yield',
    yielded,
    { 'defect.remainingWall': normal(0.0052, 0.0002), 'service.designPressure': normal(8.8e6, 2e5) },
  ],
  [
    'the design temperature beside the pressure',
    partWall,
    { 'service.designTemperature': normal(321, 3), 'service.designPressure': normal(3.9e6, 1e5) },
  ],
];

/** Round the pipe governs in the case as stated, the bond where it falls short. */
export const turning: readonly [repairCase: RepairCase, inputs: Inputs] = [
  {
    ...leaking,
    laminate: { ...leaking.laminate, energyReleaseRate: energyReleaseRate.JPerM2(90) },
  },
  { 'laminate.energyReleaseRate': lognormal(80, 45), 'service.designPressure': normal(9.3e5, 2e4) },
];

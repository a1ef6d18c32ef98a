import { describe } from 'vitest';
import { hardnessToReach, warmedTemperature } from '../../src/acceptance/index.js';
import { criticalConversion } from '../../src/cure/index.js';
import {
  holeOverDiameter,
  largestHole,
  overlapFromHole,
  performanceUnderCycles,
  serviceFactor,
  thicknessAsStraight,
  thicknessForHoleSize,
  thicknessOnFitting,
  thinLaminateLimit,
  upperTemperatureLimit,
} from '../../src/laminate/index.js';
import {
  length,
  type Ratio,
  type TemperatureCoefficient,
  temperature,
  temperatureDifference,
  time,
} from '../../src/quantity/index.js';
import { timeToLay } from '../../src/wrap/index.js';
import { meets, secondRoute } from './second-route.js';

/**
 * Products, quotients and sums that a rule defines, with numbers that come out whole or in a few digits, worked on paper. There
 * is no second way to a definition: this shows that its arithmetic is done right, and no more.
 */

const { mm, inMm } = length;
const { degC, inDegC } = temperature;
/** Each as found and as worked on paper. */
const hold = (rows: () => readonly (readonly [found: number, worked: number])[]) => (): void => {
  for (const [found, worked] of rows()) meets(found, worked);
};

describe('a laminate over a hole', () => {
  secondRoute(
    'laminate/hole-over-diameter',
    'arithmetic',
    'hand',
    hold(() => [
      [holeOverDiameter({ holeDiameter: mm(15), outsideDiameter: mm(240) }), 1 / 16],
      [holeOverDiameter({ holeDiameter: mm(51), outsideDiameter: mm(204) }), 0.25],
    ]),
  );
  secondRoute(
    'laminate/largest-hole',
    'arithmetic',
    'hand',
    hold(() => [
      // 6 x 150 x 4 = 3600; 4 x 225 x 9 = 8100.
      [inMm(largestHole({ outsideDiameter: mm(150), thickness: mm(4) })), 60],
      [inMm(largestHole({ outsideDiameter: mm(225), thickness: mm(9), coefficient: 4 })), 90],
    ]),
  );
  secondRoute(
    'laminate/thickness-for-hole-size',
    'arithmetic',
    'hand',
    hold(() => [
      // 3600 / 900; 8100 / 900.
      [inMm(thicknessForHoleSize({ holeDiameter: mm(60), outsideDiameter: mm(150) })), 4],
      [inMm(thicknessForHoleSize({ holeDiameter: mm(90), outsideDiameter: mm(225), coefficient: 4 })), 9],
    ]),
  );
  secondRoute(
    'laminate/overlap-from-hole',
    'arithmetic',
    'hand',
    hold(() => [
      [inMm(overlapFromHole({ holeDiameter: mm(12), outsideDiameter: mm(200), wallThickness: mm(8) })), 48],
      [
        inMm(overlapFromHole({ holeDiameter: mm(15), outsideDiameter: mm(200), wallThickness: mm(8), multiple: 5 })),
        75,
      ],
    ]),
  );
  secondRoute(
    'laminate/service-factor',
    'arithmetic',
    'hand',
    hold(() => [
      // 0.333 x 0.8 = 0.2664; x 0.9 = 0.23976.
      [serviceFactor({ leakFactor: 0.333, temperatureFactor: 0.8, cyclicFactor: 0.9 }), 0.23976],
      [serviceFactor({ leakFactor: 0.5, temperatureFactor: 1, cyclicFactor: 0.75 }), 0.375],
    ]),
  );
});

describe('a laminate by its rules', () => {
  secondRoute(
    'laminate/performance-under-cycles',
    'arithmetic',
    'hand',
    hold(() => [
      [performanceUnderCycles({ performanceFactor: 0.83, cyclicFactor: 0.6 }), 0.498],
      [performanceUnderCycles({ performanceFactor: 0.5, cyclicFactor: 0.333 }), 0.1665],
    ]),
  );
  secondRoute(
    'laminate/thickness-on-fitting',
    'arithmetic',
    'hand',
    hold(() => [
      [inMm(thicknessOnFitting({ thickness: mm(7.5), stressFactor: 1.2 })), 9],
      [inMm(thicknessOnFitting({ thickness: mm(7.5) })), 7.5],
    ]),
  );
  secondRoute(
    'laminate/thickness-as-straight',
    'arithmetic',
    'hand',
    hold(() => [
      [inMm(thicknessAsStraight({ thickness: mm(9), stressFactor: 1.2 })), 7.5],
      [inMm(thicknessAsStraight({ thickness: mm(15), stressFactor: 2 })), 7.5],
      [inMm(thicknessAsStraight({ thickness: mm(15) })), 15],
    ]),
  );
  secondRoute(
    'laminate/thin-laminate-limit',
    'arithmetic',
    'hand',
    hold(() => [
      [inMm(thinLaminateLimit({ outsideDiameter: mm(168) })), 14],
      [inMm(thinLaminateLimit({ outsideDiameter: mm(168), ratio: 6 })), 28],
    ]),
  );
  secondRoute(
    'laminate/upper-temperature-limit',
    'arithmetic',
    'hand',
    hold(() => [
      [
        inDegC(upperTemperatureLimit({ transitionTemperature: degC(95), margin: temperatureDifference.kelvin(30) })),
        65,
      ],
      [
        inDegC(upperTemperatureLimit({ transitionTemperature: degC(80), margin: temperatureDifference.kelvin(15) })),
        65,
      ],
    ]),
  );
});

describe('the day and the test', () => {
  secondRoute(
    'wrap/time-to-lay',
    'arithmetic',
    'hand',
    hold(() => [
      [time.inMinute(timeToLay({ workingTime: time.minute(40), share: 0.75 as Ratio })), 30],
      [time.inMinute(timeToLay({ workingTime: time.minute(25), share: 1 as Ratio })), 25],
    ]),
  );
  secondRoute(
    'cure/critical-conversion',
    'arithmetic',
    'hand',
    hold(() => [
      // 300 K x 0.0055 = 1.65; less 0.85. 0.2 and 350 x 0.002 = 0.7.
      [
        criticalConversion({
          atZero: -0.85 as Ratio,
          perKelvin: 0.0055 as TemperatureCoefficient,
          temperature: temperature.kelvin(300),
        }),
        0.8,
      ],
      [
        criticalConversion({
          atZero: 0.2 as Ratio,
          perKelvin: 0.002 as TemperatureCoefficient,
          temperature: temperature.kelvin(350),
        }),
        0.9,
      ],
    ]),
  );
  secondRoute('acceptance/hardness-to-reach', 'arithmetic', 'hand', () => {
    const { leastMean, leastSingle } = hardnessToReach({
      qualifiedHardness: 85,
      meanShare: 0.9 as Ratio,
      singleShare: 0.8 as Ratio,
    });
    meets(leastMean, 76.5);
    meets(leastSingle, 68);
  });
  secondRoute(
    'acceptance/warmed-temperature',
    'arithmetic',
    'hand',
    hold(() => [
      [inDegC(warmedTemperature({ temperature: degC(20) })), 21],
      [inDegC(warmedTemperature({ temperature: degC(37) })), 36],
      [
        inDegC(warmedTemperature({ temperature: degC(20), step: temperatureDifference.kelvin(0.5), turn: degC(10) })),
        19.5,
      ],
    ]),
  );
});

/** Draws the figures of the pages that explain, each from the formulas themselves: `npm run figures`. */
import { realpathSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { timeAtTemperature } from '../src/cure.js';
import {
  activationEnergy,
  energyReleaseRate,
  gauge,
  length,
  modulus,
  ratio,
  strain,
  stress,
  temperature,
  time,
} from '../src/index.js';
import {
  holePressureCeiling,
  holeResistance,
  lapPeakOverMean,
  thicknessIgnoredHoop,
  thicknessSharingHoop,
} from '../src/laminate.js';
import { b31gOriginal, dnvSingleDefect, modifiedB31g } from '../src/pipe.js';
import { dewPoint } from '../src/site.js';
import { type Chart, type Curve, chartSvg } from './chart.js';

const folder = fileURLToPath(new URL('why/figures/', import.meta.url));

/** A curve over a span, in equal steps. */
function curve(label: string, from: number, to: number, of: (x: number) => number, steps = 60): Curve {
  return {
    label,
    points: Array.from({ length: steps + 1 }, (_, index) => {
      const x = from + ((to - from) * index) / steps;
      return [x, of(x)] as const;
    }),
  };
}

const pipe = { outsideDiameter: length.mm(323.9), wallThickness: length.mm(9.53) };

function lossByLength(): Chart {
  const loss = (along: number) => ({ ...pipe, defectDepth: length.mm(4.2), defectLength: length.mm(along) });
  return {
    title: 'Failure pressure against the length of a metal loss',
    x: 'length of the loss along the pipe [mm]; depth 4.2 mm of 9.53 mm, diameter 323.9 mm',
    y: 'failure pressure [MPa]',
    curves: [
      curve(
        'original B31G',
        10,
        400,
        (l) => gauge.inMPa(b31gOriginal({ ...loss(l), flowStress: stress.MPa(395) })),
        195,
      ),
      curve('modified B31G', 10, 400, (l) => gauge.inMPa(modifiedB31g({ ...loss(l), flowStress: stress.MPa(428) }))),
      curve('DNV-RP-F101, single defect', 10, 400, (l) =>
        gauge.inMPa(dnvSingleDefect({ ...loss(l), tensileStrength: stress.MPa(455) })),
      ),
    ],
  };
}

function thicknessByPressure(): Chart {
  const laminate = { outsideDiameter: length.mm(219.1), hoopModulus: modulus.GPa(24) };
  return {
    title: 'Laminate thickness against design pressure',
    x: 'design pressure [MPa]; diameter 219.1 mm, hoop modulus 24 GPa',
    y: 'thickness of the laminate [mm]',
    curves: [
      curve('the laminate carries everything', 0, 6, (p) =>
        length.inMm(
          thicknessIgnoredHoop({
            ...laminate,
            pressure: gauge.MPa(p),
            poissonRatio: 0.12,
            allowableStrain: strain.percent(0.25),
          }),
        ),
      ),
      curve('pipe of 3 MPa shares the load', 0, 6, (p) =>
        length.inMm(
          thicknessSharingHoop({
            ...laminate,
            pressure: gauge.MPa(p),
            allowableStress: stress.MPa(138),
            substrateModulus: modulus.GPa(207),
            substratePressure: gauge.MPa(3),
          }),
        ),
      ),
    ],
  };
}

function holeByThickness(): Chart {
  const plate = {
    hoopModulus: modulus.GPa(24),
    axialModulus: modulus.GPa(14),
    poissonRatio: 0.12,
    shearModulus: modulus.GPa(3),
    energyReleaseRate: energyReleaseRate.JPerM2(180),
    serviceFactor: 0.333,
  };
  const held = (hole: number) => (mm: number) =>
    gauge.inMPa(holeResistance({ ...plate, laminateThickness: length.mm(mm), holeDiameter: length.mm(hole) }));
  const ceiling = gauge.inMPa(holePressureCeiling({ ...plate, holeDiameter: length.mm(15) }));
  return {
    title: 'Pressure held over a round hole against the thickness of the laminate',
    x: 'thickness of the laminate [mm]; energy release rate 180 J/m2, service factor 0.333',
    y: 'pressure held [MPa]',
    curves: [
      curve('hole of 15 mm', 1, 20, held(15)),
      curve('hole of 30 mm', 1, 20, held(30)),
      curve('hole of 60 mm', 1, 20, held(60)),
      curve('ceiling of the hole of 15 mm', 1, 20, () => ceiling, 1),
    ],
  };
}

function peakByOverlap(): Chart {
  const joint = {
    innerModulus: modulus.GPa(207),
    innerThickness: length.mm(8.18),
    outerModulus: modulus.GPa(14),
    outerThickness: length.mm(4.8),
    bondShearModulus: modulus.GPa(1),
    bondThickness: length.mm(0.3),
  };
  const mean = (overlap: number) => 1 / overlap;
  const peak = (overlap: number) => lapPeakOverMean({ ...joint, overlap: length.mm(overlap) }) / overlap;
  const least = peak(400);
  return {
    title: 'Shear stress in the bond against the length of the overlap',
    x: 'overlap [mm]; steel 8.18 mm, laminate 4.8 mm of 14 GPa, bond 0.3 mm of 1 GPa',
    y: 'shear stress over the peak of a long overlap',
    curves: [
      curve('largest shear stress, at the end', 10, 200, (l) => peak(l) / least, 190),
      curve('mean shear stress', 10, 200, (l) => mean(l) / least, 190),
    ],
  };
}

function waitByTemperature(): Chart {
  const wait = (kJ: number) => (degC: number) =>
    time.inHour(
      timeAtTemperature({
        time: time.hour(24),
        referenceTemperature: temperature.degC(23),
        temperature: temperature.degC(degC),
        activationEnergy: activationEnergy.kJPerMol(kJ),
        minimumTemperature: temperature.degC(5),
        mechanism: 'two-part reaction',
      }),
    );
  return {
    title: 'Wait for the cure against the temperature of the steel',
    x: 'temperature of the steel [degC]; 24 h at 23 degC by the maker',
    y: 'wait [h]',
    curves: [40, 50, 60].map((kJ) => curve(`activation energy ${kJ} kJ/mol`, 8, 40, wait(kJ))),
  };
}

function dewPointByHumidity(): Chart {
  const dew = (air: number) => (percent: number) =>
    temperature.inDegC(dewPoint({ temperature: temperature.degC(air), humidity: ratio.percent(percent) }));
  return {
    title: 'Dew point against the humidity of the air',
    x: 'relative humidity [%]',
    y: 'dew point [degC]',
    curves: [10, 20, 30].map((air) => curve(`air of ${air} degC`, 30, 100, dew(air))),
  };
}

/** Every figure by the name of its file. */
export function figures(): ReadonlyMap<string, string> {
  return new Map(
    Object.entries({
      'loss-by-length.svg': lossByLength(),
      'thickness-by-pressure.svg': thicknessByPressure(),
      'hole-by-thickness.svg': holeByThickness(),
      'peak-by-overlap.svg': peakByOverlap(),
      'wait-by-temperature.svg': waitByTemperature(),
      'dew-point-by-humidity.svg': dewPointByHumidity(),
    }).map(([name, chart]) => [name, chartSvg(chart)]),
  );
}

if (realpathSync(process.argv[1] ?? '') === fileURLToPath(import.meta.url))
  for (const [name, svg] of figures()) writeFileSync(`${folder}${name}`, svg);

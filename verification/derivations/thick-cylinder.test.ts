import { describe, expect, it } from 'vitest';
import {
  thickCylinderAxialStress,
  thickCylinderHoopStress,
  thickCylinderRadialStress,
} from '../../src/mechanics/index.js';
import {
  boreHoopStress,
  insideDiameterHoopStress,
  outsideHoopStress,
  thickWallCoefficient,
} from '../../src/pipe/index.js';
import { gauge, type Length, length } from '../../src/quantity/index.js';
import { wallState } from './thick-cylinder.js';

const walls = [
  { innerRadius: 0.03, outerRadius: 0.05, internalPressure: 20e6, externalPressure: 5e6, poissonRatio: 0.3 },
  { innerRadius: 0.1, outerRadius: 0.15, internalPressure: 60e6, externalPressure: 30e6, poissonRatio: 0.25 },
  { innerRadius: 0.07704, outerRadius: 0.08415, internalPressure: 10e6, externalPressure: 0, poissonRatio: 0.3 },
  { innerRadius: 0.02, outerRadius: 0.2, internalPressure: 0, externalPressure: 8e6, poissonRatio: 0.35 },
];

describe('the thick cylinder, by integration of radial equilibrium', () => {
  it.each(walls)('has the same hoop and radial stress at nine radii of %o', (wall) => {
    const input = {
      internalPressure: gauge.Pa(wall.internalPressure),
      externalPressure: gauge.Pa(wall.externalPressure),
      innerRadius: length.m(wall.innerRadius),
      outerRadius: length.m(wall.outerRadius),
    };
    const scale = wall.internalPressure + wall.externalPressure;
    for (let i = 0; i <= 8; i++) {
      const r = i === 8 ? wall.outerRadius : wall.innerRadius + ((wall.outerRadius - wall.innerRadius) * i) / 8;
      const state = wallState(wall, r);
      const radius = r as Length;
      expect(Math.abs(thickCylinderHoopStress({ ...input, radius }) - state.hoop) / scale).toBeLessThan(1e-9);
      expect(Math.abs(thickCylinderRadialStress({ ...input, radius }) - state.radial) / scale).toBeLessThan(1e-9);
    }
  });

  it.each(walls)('has the same axial stress between anchors of %o', (wall) => {
    const stress = thickCylinderAxialStress({
      internalPressure: gauge.Pa(wall.internalPressure),
      externalPressure: gauge.Pa(wall.externalPressure),
      innerRadius: length.m(wall.innerRadius),
      outerRadius: length.m(wall.outerRadius),
      ends: 'restrained',
      poissonRatio: wall.poissonRatio,
    });
    const { axialRestrained } = wallState(wall, (wall.innerRadius + wall.outerRadius) / 2);
    expect(stress / axialRestrained).toBeCloseTo(1, 9);
  });

  it('gives the bore and outside stress of a pipe', () => {
    const pipe = { pressure: gauge.MPa(10), outsideDiameter: length.mm(168.3), wallThickness: length.mm(7.11) };
    const wall = { ...walls[2], innerRadius: 0.08415 - 0.00711 } as (typeof walls)[0];
    expect(boreHoopStress(pipe) / wallState(wall, wall.innerRadius).hoop).toBeCloseTo(1, 9);
    expect(outsideHoopStress(pipe) / wallState(wall, wall.outerRadius).hoop).toBeCloseTo(1, 9);
  });

  it('averages over the wall to the inside-diameter hoop stress', () => {
    const wall = walls[2] as (typeof walls)[0];
    const [ri, ro, n] = [wall.innerRadius, wall.outerRadius, 40];
    let sum = 0;
    for (let i = 0; i <= n; i++) {
      const weight = i === 0 || i === n ? 1 : i % 2 === 1 ? 4 : 2;
      sum += weight * wallState(wall, ri + ((ro - ri) * i) / n, 400).hoop;
    }
    const average = insideDiameterHoopStress({
      pressure: gauge.MPa(10),
      insideDiameter: length.m(2 * ri),
      wallThickness: length.m(ro - ri),
    });
    expect(sum / (3 * n) / average).toBeCloseTo(1, 8);
  });

  it('is what the coefficient Y of a thick wall brings into the wall equation', () => {
    for (const wall of walls.filter(({ externalPressure }) => externalPressure === 0)) {
      const [d, D] = [2 * wall.innerRadius, 2 * wall.outerRadius];
      const Y = thickWallCoefficient({ insideDiameter: length.m(d), outsideDiameter: length.m(D) });
      const demand = wall.internalPressure * (D / (D - d) - Y);
      expect(demand / wallState(wall, wall.innerRadius).hoop).toBeCloseTo(1, 9);
    }
  });
});

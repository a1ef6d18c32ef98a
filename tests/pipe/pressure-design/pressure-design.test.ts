import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  allowablePressure,
  boreHoopStress,
  designThicknessInside,
  designThicknessOutside,
  gasDesignPressure,
  hoopStress,
  liquidDesignPressure,
  orderWall,
  outsideDiameterFromCircumference,
  thickWallCoefficient,
} from '../../../src/pipe/index.js';
import {
  type GaugePressure,
  gauge,
  type Length,
  length,
  ratio,
  type Stress,
  stress,
} from '../../../src/quantity/index.js';
import { span as real } from '../../properties/spans.js';
import { pipes, runs } from '../pipes.js';

const designs = fc
  .tuple(real(60e6, 200e6), real(0.6, 1), real(0.7, 1), real(0, 0.7), real(0.001, 0.25), real(0.02, 1.2))
  .map(([S, E, W, Y, share, D]) => ({
    pressure: (share * S * E * W) as GaugePressure,
    outsideDiameter: D as Length,
    allowableStress: S as Stress,
    jointFactor: E,
    weldStrengthFactor: W,
    temperatureCoefficient: Y,
  }));

describe('pressure design thickness', () => {
  it('is the same from the outside and from the inside diameter, with any allowance', () => {
    fc.assert(
      fc.property(designs, real(0, 0.003), (design, c) => {
        const t = designThicknessOutside(design);
        const insideDiameter = (design.outsideDiameter - 2 * t - 2 * c) as Length;
        fc.pre(insideDiameter > 0.001);
        const again = designThicknessInside({ ...design, insideDiameter, allowance: c as Length });
        expect(again / t).toBeCloseTo(1, 10);
      }),
      runs,
    );
  });

  it('from the inside diameter with a plus before P (1 - Y), as one data file prints it, would not agree', () => {
    const design = { pressure: gauge.MPa(10), outsideDiameter: length.mm(168.3), allowableStress: stress.MPa(138) };
    const t = designThicknessOutside({ ...design, jointFactor: 1 });
    const wrong = (10 * (168.3 - 2 * t * 1000)) / (2 * (138 + 10 * 0.6)) / 1000;
    const right = designThicknessInside({
      ...design,
      jointFactor: 1,
      insideDiameter: (0.1683 - 2 * t) as Length,
    });
    expect(right / t).toBeCloseTo(1, 12);
    expect(Math.abs(wrong / t - 1)).toBeGreaterThan(0.05);
  });

  it('grows with pressure and shrinks with strength, joint and Y', () => {
    fc.assert(
      fc.property(designs, real(1.001, 1.2), (design, more) => {
        const t = designThicknessOutside(design);
        expect(
          designThicknessOutside({ ...design, pressure: (design.pressure * more) as GaugePressure }),
        ).toBeGreaterThan(t);
        expect(
          designThicknessOutside({ ...design, allowableStress: (design.allowableStress * more) as Stress }),
        ).toBeLessThan(t);
        expect(designThicknessOutside({ ...design, jointFactor: 1, weldStrengthFactor: 1 })).toBeLessThanOrEqual(t);
        expect(designThicknessOutside({ ...design, temperatureCoefficient: 0.8 })).toBeLessThan(t);
      }),
      runs,
    );
  });

  it('is refused beyond the validity of the code equation', () => {
    const design = { outsideDiameter: length.mm(100), allowableStress: stress.MPa(100), jointFactor: 1 };
    const at = (MPa: number) => designThicknessOutside({ ...design, pressure: gauge.MPa(MPa) });
    expect(at(38.4)).toBeGreaterThan(0);
    expect(() => at(38.6)).toThrow('0.385 S E');
    const weakWeld = { ...design, pressure: gauge.MPa(35), weldStrengthFactor: 0.6 };
    expect(() => designThicknessOutside(weakWeld)).toThrow('must be below D/6');
    expect(() => designThicknessInside({ ...weakWeld, insideDiameter: length.mm(50) })).toThrow('must be below D/6');
    const nothingHolds = {
      ...weakWeld,
      weldStrengthFactor: 0.2,
      temperatureCoefficient: 0,
      insideDiameter: length.mm(50),
    };
    expect(() => designThicknessInside(nothingHolds)).toThrow('no wall holds more');
  });

  it('with the coefficient of a thick wall is that at which the bore stress equals S', () => {
    fc.assert(
      fc.property(pipes(0.17, 0.45), (pipe) => {
        const d = (pipe.outsideDiameter - 2 * pipe.wallThickness) as Length;
        const Y = thickWallCoefficient({ insideDiameter: d, outsideDiameter: pipe.outsideDiameter });
        const S = boreHoopStress(pipe);
        const wall = (pipe.pressure * pipe.outsideDiameter) / (2 * (S + pipe.pressure * Y));
        expect(wall / pipe.wallThickness).toBeCloseTo(1, 10);
      }),
      runs,
    );
  });
});

describe('order wall', () => {
  it('leaves the design thickness and the allowance when the mill delivers the least it may', () => {
    fc.assert(
      fc.property(real(0.0005, 0.03), real(0, 0.006), real(0, 0.2), (t, c, u) => {
        const wall = orderWall({
          designThickness: t as Length,
          allowance: c as Length,
          underTolerance: ratio.fraction(u),
        });
        expect((wall * (1 - u) - c) / t).toBeCloseTo(1, 10);
      }),
      runs,
    );
  });

  it('is more than the common mistake of adding 12.5 % gives, which leaves too little', () => {
    const wall = orderWall({ designThickness: length.mm(7), allowance: length.mm(1) });
    const mistake = length.mm(8 * 1.125);
    expect(wall).toBeGreaterThan(mistake);
    expect(mistake * 0.875).toBeLessThan(length.mm(8));
    expect(wall * 0.875).toBeCloseTo(length.mm(8), 12);
  });
});

describe('allowable pressure of a nominal wall', () => {
  it('is the pressure whose order wall is that wall', () => {
    fc.assert(
      fc.property(designs, real(0, 0.003), real(0, 0.2), (design, c, u) => {
        const t = designThicknessOutside(design);
        const allowance = c as Length;
        const underTolerance = ratio.fraction(u);
        const wallThickness = orderWall({ designThickness: t, allowance, underTolerance });
        fc.pre(wallThickness < design.outsideDiameter / 2 && t > 1e-5);
        const pressure = allowablePressure({ ...design, wallThickness, allowance, underTolerance });
        expect(pressure / design.pressure).toBeCloseTo(1, 8);
      }),
      runs,
    );
  });

  it('is refused when under-tolerance and allowance leave no wall, or the wall is too thick for the equation', () => {
    const pipe = { outsideDiameter: length.mm(60.3), allowableStress: stress.MPa(138), jointFactor: 1 };
    const thin = { ...pipe, wallThickness: length.mm(3.91), allowance: length.mm(3.5) };
    expect(() => allowablePressure(thin)).toThrow('leave no wall');
    expect(() => allowablePressure({ ...pipe, wallThickness: length.mm(12) })).toThrow('must be below D/6');
    const noY = {
      ...pipe,
      wallThickness: length.mm(11),
      temperatureCoefficient: 0.7,
      underTolerance: ratio.fraction(0.1),
    };
    expect(() => allowablePressure(noY)).toThrow('0.385 S E');
  });
});

describe('design pressure of a pipeline', () => {
  const pipe = { outsideDiameter: length.inch(16), wallThickness: length.inch(0.25), yieldStrength: stress.psi(52000) };

  it('puts the hoop stress on the outside diameter at its share of the yield strength', () => {
    const factors = { designFactor: 0.6, jointFactor: 0.8 };
    const gas = gasDesignPressure({ ...pipe, ...factors, temperatureFactor: 0.933, heatFactor: 0.75 });
    const share = 0.6 * 0.8 * 0.933 * 0.75;
    expect(hoopStress({ ...pipe, pressure: gas }) / (pipe.yieldStrength * share)).toBeCloseTo(1, 12);
    const liquid = liquidDesignPressure({ ...pipe, ...factors });
    expect(hoopStress({ ...pipe, pressure: liquid }) / (pipe.yieldStrength * 0.48)).toBeCloseTo(1, 12);
  });

  it('is one number for gas and liquid when only F and E count', () => {
    fc.assert(
      fc.property(real(0.4, 0.8), real(0.6, 1), (designFactor, jointFactor) => {
        const factors = { ...pipe, designFactor, jointFactor };
        expect(gasDesignPressure(factors) / liquidDesignPressure(factors)).toBeCloseTo(1, 12);
      }),
      runs,
    );
  });

  it('refuses factors above 1', () => {
    const factors = { ...pipe, designFactor: 0.72, jointFactor: 1 };
    expect(() => gasDesignPressure({ ...factors, designFactor: 1.01 })).toThrow('designFactor is 1.01');
    expect(() => gasDesignPressure({ ...factors, temperatureFactor: 1.2 })).toThrow('temperatureFactor is 1.2');
    expect(() => gasDesignPressure({ ...factors, heatFactor: 2 })).toThrow('heatFactor is 2');
    expect(() => liquidDesignPressure({ ...factors, jointFactor: 1.1 })).toThrow('jointFactor is 1.1');
  });
});

describe('outside diameter from a circumference', () => {
  it('gives back the diameter of a circle, less the tape that was wound over it', () => {
    fc.assert(
      fc.property(real(0.02, 2), real(0, 0.0005), (D, h) => {
        const circumference = (Math.PI * (D + h)) as Length;
        const found = outsideDiameterFromCircumference({ circumference, tapeThickness: h as Length });
        expect(found / D).toBeCloseTo(1, 12);
      }),
      runs,
    );
  });

  it('refuses a tape thicker than the pipe that it goes round', () => {
    const tape = { circumference: length.mm(3), tapeThickness: length.mm(1) };
    expect(() => outsideDiameterFromCircumference(tape)).toThrow('outside diameter');
  });
});

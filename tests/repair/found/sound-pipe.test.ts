import { describe, expect, it } from 'vitest';
import { designOf } from '../../faults/answers.js';
import { evenLoss, type Paths, withPaths } from '../../faults/cases.js';

/**
 * The sound pipe beside the defect under loads, by hand: 250 x 15.625 mm at 30 bar, 24 MPa round it and 12 along it to the last
 * digit. Loads are stated by the stress that they put on it.
 */
const [D, t, d] = [0.25, 0.015625, 0.21875];
const area = Math.PI * t * (D - t);
const modulusOfSection = (Math.PI * (D ** 4 - d ** 4)) / (32 * D);
/** Of a torque at the outside: twice the modulus of section; of a shear force twice its mean. */
const pulledBy = (MPa: number): Paths => ({ 'loads.axialForce': `${MPa * 1e6 * area} N` });
const bentBy = (MPa: number): Paths => ({ 'loads.bendingMoment': `${MPa * 1e6 * modulusOfSection} N m` });
const turnedBy = (MPa: number): Paths => ({ 'loads.torsion': `${MPa * 1e6 * 2 * modulusOfSection} N m` });
const shearedBy = (MPa: number): Paths => ({ 'loads.shearForce': `${(MPa * 1e6 * area) / 2} N` });

const pipe = withPaths(evenLoss, {
  'pipe.outsideDiameter': '250 mm',
  'pipe.wallThickness': '15.625 mm',
  'pipe.material.yieldStrength': '240 MPa',
  'pipe.material.tensileStrength': '400 MPa',
  'pipe.material.allowableStress': undefined,
  'service.designPressure': '30 bar',
  'defect.remainingWall': '14 mm',
});

describe('the combined stress of the sound pipe', () => {
  it.each<readonly [string, Paths, number]>([
    ['a pull', pulledBy(230), 12 + 230],
    // No end load helps against a push.
    ['a push', pulledBy(-220), 24 + 220],
    ['bending, on its pushed side', bentBy(220), 24 + 220],
    ['bending with a pull, on its pulled side', { ...pulledBy(100), ...bentBy(130) }, 12 + 100 + 130],
    ['bending with a push, on its pushed side', { ...pulledBy(-100), ...bentBy(130) }, 24 + 100 + 130],
    ['torsion', turnedBy(125), 2 * Math.hypot(6, 125)],
    ['shear', shearedBy(125), 2 * Math.hypot(6, 125)],
    ['shear with a push', { ...shearedBy(100), ...pulledBy(-120) }, 2 * Math.hypot((24 + 120) / 2, 100)],
  ])('is that of its worst side: %s', (_, loads, MPa) => {
    const { verdict, reasons } = designOf(withPaths(pipe, loads));
    expect(verdict).toBe('not repairable');
    const [yields] = reasons.filter(({ text }) => text.includes('under the stated loads with the design pressure'));
    expect(yields?.found?.value).toBeCloseTo(MPa * 1e6, 0);
    expect(yields?.limit?.value).toBe(240e6);
  });

  it('counts the pulled side of bending for the code of the line, where the pushed side does not reach it', () => {
    // 0.75 of 240 MPa; 12 of the end load.
    const told = (MPa: number): boolean =>
      designOf(withPaths(pipe, bentBy(MPa))).warnings.some(({ text }) =>
        text.includes('that the pipeline code allows'),
      );
    expect([told(167), told(169)]).toEqual([false, true]);
  });
});

describe('a method that counts on the pipe', () => {
  it.each<readonly [string, Paths, readonly number[]]>([
    ['bears the loads within its allowable stress', pulledBy(-90), []],
    ['is above it by the loads', pulledBy(-120), [24 + 120]],
    [
      'is at it round the pipe, and above it by the loads',
      { ...pulledBy(-1), 'service.designPressure': '15 MPa' },
      [121],
    ],
    // Round the pipe alone, and not said again for the loads.
    ['is above it round the pipe', { ...pulledBy(-1), 'service.designPressure': '16 MPa' }, [128]],
  ])('is refused once, and only where the sound pipe has nothing to give: it %s', (_, changes, MPa) => {
    const sharing = { 'pipe.material.allowableStress': '120 MPa', 'repair.method': 'substrate sharing load' };
    const { reasons } = designOf(withPaths(pipe, { ...sharing, ...changes }));
    const refused = reasons.filter(({ text }) => text.includes('counts on the pipe'));
    expect(refused.map(({ found, limit }) => [found?.value, limit?.value])).toEqual(
      MPa.map((each) => [expect.closeTo(each * 1e6, 0), 120e6]),
    );
  });
});

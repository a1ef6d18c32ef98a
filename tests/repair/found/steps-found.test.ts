import { describe, expect, it } from 'vitest';
import { designRepair } from '../../../src/repair/index.js';
import { caseOf } from '../../faults/answers.js';
import { evenLoss, live, type Paths, quietLoss, withPaths } from '../../faults/cases.js';

/** Which formulas a design writes down of the pipe as found: where they say something, and not where a load or loss is absent. */

const stepsOf = (changes: Paths, file = quietLoss) =>
  (designRepair(caseOf(withPaths(file, changes)), { record: true }).record ?? []).flatMap((entry) =>
    entry.sort === 'step' ? [entry] : [],
  );

const pull: Paths = { 'loads.axialForce': '20 kN' };
const bending: Paths = { 'loads.bendingMoment': '1 kN m' };
const shear: Paths = { 'loads.shearForce': '5 kN' };
const neighbour = {
  cause: 'internal erosion',
  gapAlong: '2 m',
  gapRound: '0 mm',
  axialLength: '20 mm',
  circumferentialWidth: '20 mm',
  remainingWall: '5 mm',
};
const apart: Paths = { 'defect.neighbours': [neighbour] };
const near: Paths = { 'defect.neighbours': [neighbour, { ...neighbour, gapAlong: '9 mm' }] };
const vacuum: Paths = { 'loads.externalPressure': '1 bar' };

describe('a step of the pipe as found', () => {
  it.each<readonly [formula: string, purpose: string | undefined, where: Paths, nowhere: Paths]>([
    ['laminate/force-at-edge', 'on the pushed side of the bent pipe', bending, pull],
    ['laminate/equivalent-axial-force', 'stated loads on the thinned pipe, as one pull', bending, pull],
    ['pipe/bending-stress', 'sound pipe', bending, pull],
    ['pipe/shear-stress', 'sound pipe', shear, { ...pull, ...bending }],
    ['pipe/tresca-stress', 'sound pipe, pulled side', pull, shear],
    ['pipe/gap-past-neighbours', 'along the pipe', near, apart],
    ['seal/pipe-under-band', 'neighbouring loss', { ...apart, ...vacuum }, apart],
  ])('is written where it says something, and nowhere else: %s, %s', (formula, purpose, where, nowhere) => {
    const isWritten = (changes: Paths): boolean =>
      stepsOf(changes).some((step) => step.formula === formula && step.purpose === purpose);
    expect([isWritten(where), isWritten(nowhere)]).toEqual([true, false]);
  });

  it('takes the factor of the line at work once where no neighbour is judged beside it', () => {
    const factors = (changes: Paths) =>
      stepsOf({ ...live('5 bar'), assessment: { safetyFactor: 2 }, ...changes }).filter(
        ({ formula }) => formula === 'pipe/damage-safety-factor',
      ).length;
    expect(factors({})).toBe(1);
    expect(factors(apart)).toBeGreaterThan(1);
  });
});

it.each([20, -20])('a force of %s kN along a live pipe that is to share stands in its step with its sign', (kN) => {
  const sharing = {
    ...live('5 bar'),
    'repair.method': 'substrate sharing load',
    'loads.axialForce': `${kN} kN`,
    'loads.freeSpan': '2 m',
  };
  const forces = stepsOf(sharing, evenLoss).flatMap(({ formula, input }) =>
    formula === 'laminate/stress-left-at-work' ? [input['axialForce']] : [],
  );
  expect(new Set(forces)).toEqual(new Set([kN * 1e3]));
});

import { describe, expect, it } from 'vitest';
import { force, moment } from '../../../src/quantity/index.js';
import { designRepair, type RepairCase } from '../../../src/repair/index.js';
import { partWall } from '../example-case.js';

/** Shear and torsion act round the pipe as a higher pressure; without them the pressure is the design pressure alone. */

const loaded = (loads: Partial<RepairCase['loads']>) =>
  designRepair({ ...partWall, loads: { ...partWall.loads, ...loads } }, { record: true });
const BY_EQUIVALENT: readonly string[] = ['laminate/equivalent-pressure', 'laminate/pressure-of-equivalent'];
const shown = ({ record = [] }: ReturnType<typeof loaded>) => [
  ...new Set(
    record.flatMap((each) => (each.sort === 'step' && BY_EQUIVALENT.includes(each.formula) ? [each.formula] : [])),
  ),
];

describe('a load that turns or shears the pipe', () => {
  it.each<[string, Partial<RepairCase['loads']>]>([
    ['torsion', { torsion: moment.kNm(20) }],
    ['torsion the other way', { torsion: moment.kNm(-20) }],
    ['shear', { shearForce: force.kN(60) }],
  ])('makes the laminate thicker by a pressure that stands for both: %s', (_, loads) => {
    const [with_, without] = [loaded(loads), loaded({})];
    expect(with_.verdict).toBe('designed');
    expect(shown(with_)).toEqual(BY_EQUIVALENT);
    expect(with_.laminate?.thickness.value).toBeGreaterThan(without.laminate?.thickness.value ?? Number.NaN);
  });

  it('is no step of the design where there is none', () => {
    expect(shown(loaded({}))).toEqual([]);
    expect(shown(loaded({ axialForce: force.kN(60), bendingMoment: moment.kNm(2) }))).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import { numericInputs, type Sensitivities, sensitivities } from '../../src/doubt/index.js';
import { energyReleaseRate, gauge, length } from '../../src/quantity/index.js';
import { designRepair, type RepairCase } from '../../src/repair/index.js';
import { sensitivitySheet } from '../../src/report/index.js';
import { leaking, partWall } from '../repair/example-case.js';

const changeOf = ({ ranked }: Sensitivities, path: string, name: keyof Sensitivities['ranked'] = 'thickness') =>
  ranked[name]?.find((each) => each.path === path)?.change ?? 0;

describe('the sensitivities of a design', () => {
  const wall = sensitivities(partWall);
  const leak = sensitivities(leaking);

  it.each<[sign: 1 | -1, path: string]>([
    [1, 'service.designPressure'],
    [1, 'service.designTemperature'],
    [1, 'pipe.outsideDiameter'],
    [-1, 'laminate.hoopModulus'],
    [-1, 'laminate.glassTransition'],
  ])('have the sign %i of the laws for the thickness with %s', (sign, path) => {
    expect(Math.sign(changeOf(wall, path))).toBe(sign);
  });

  it.each<[sign: 1 | -1, path: string]>([
    [1, 'service.designPressure'],
    [1, 'defect.holeDiameter'],
    [-1, 'laminate.energyReleaseRate'],
    [-1, 'laminate.shearModulus'],
  ])('over a leak have the sign %i with %s', (sign, path) => {
    const large: RepairCase = {
      ...leaking,
      service: { ...leaking.service, designPressure: gauge.MPa(0.5) },
      defect: { ...leaking.defect, axialLength: length.mm(60), holeDiameter: length.mm(20) },
      laminate: { ...leaking.laminate, energyReleaseRate: energyReleaseRate.JPerM2(20) },
    };
    expect(designRepair(large).laminate?.thickness.governing).toBe('leak through the hole');
    expect(Math.sign(changeOf(sensitivities(large), path))).toBe(sign);
  });

  it('are one per cent per per cent where the law is a straight line through nought', () => {
    // By the hoop line the thickness goes with the pressure, and with one over the modulus.
    expect(changeOf(wall, 'service.designPressure')).toBeCloseTo(0.01, 9);
    expect(changeOf(wall, 'laminate.hoopModulus')).toBeCloseTo(-0.01, 3);
  });

  it('are ranked by their size, each once, and hold every number of the case', () => {
    for (const list of Object.values(leak.ranked)) {
      const sizes = list.map(({ change }) => Math.abs(change));
      expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
      expect(new Set(list.map(({ path }) => path)).size).toBe(list.length);
    }
    const paths = [...leak.inputs, ...leak.atNought].map(({ path }) => path);
    expect(paths.sort()).toEqual(
      numericInputs(leaking)
        .map(({ path }) => path)
        .sort(),
    );
    expect(paths.length).toBeGreaterThan(40);
  });

  it('name the criterion before and after where another governs on one side', () => {
    // Beside the pressure at which the lines of leak and hoop strain cross.
    const at = (pressure: number): RepairCase => ({
      ...leaking,
      service: { ...leaking.service, designPressure: gauge.MPa(pressure) },
    });
    const governing = (pressure: number) => designRepair(at(pressure)).laminate?.thickness.governing;
    let [low, high] = [0.01, 1];
    expect(governing(low)).not.toBe(governing(high));
    for (let i = 0; i < 40; i += 1) {
      const middle = (low + high) / 2;
      if (governing(middle) === governing(high)) high = middle;
      else low = middle;
    }
    const found = sensitivities(at(high), { share: 0.02 });
    const move = found.inputs
      .find(({ path }) => path === 'service.designPressure')
      ?.moves.find(({ name }) => name === 'thickness');
    expect(move?.governingChanges).toBe(true);
    expect(move?.governing.below).not.toBe(move?.governing.above);
    expect(sensitivitySheet(found).replaceAll(/\s+/gu, ' ')).toContain(', then ');
  });

  it('say where the door refuses a side, and where the verdict turns', () => {
    const thin: RepairCase = {
      ...partWall,
      defect: { ...partWall.defect, remainingWall: partWall.pipe.wallThickness },
    };
    const input = sensitivities(thin).inputs.find(({ path }) => path === 'defect.remainingWall');
    expect(input?.verdicts.above).toBe('refused');
    expect(input?.because.above).toContain('defect.remainingWall');
    expect(sensitivitySheet(sensitivities(thin))).toContain('The verdict turns with');
  });

  it('refuse a step that is none', () => {
    expect(() => sensitivities(partWall, { share: 0 })).toThrow('share');
    expect(() => sensitivities(partWall, { temperature: Number.NaN })).toThrow('temperature');
  });
});

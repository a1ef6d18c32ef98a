import { describe, expect, it } from 'vitest';
import {
  corrosionRate,
  force,
  gauge,
  type Length,
  length,
  modulus,
  type Ratio,
  stress,
  temperature,
  time,
} from '../../src/quantity/index.js';
import { type CureDesign, designRepair, type RepairCase, type RepairDesign } from '../../src/repair/index.js';
import { designed, present, timeOf } from './by-use.js';
import { atWork, leaking, partWall } from './example-case.js';
import { tapeModuli } from './tape-moduli.js';

/** Each of these was once unsafe, ignored or a dead end. */
type Section = 'pipe' | 'service' | 'defect' | 'loads' | 'repair' | 'laminate' | 'site';
function change<S extends Section>(base: RepairCase, section: S, fields: Partial<RepairCase[S]>): RepairCase {
  return { ...base, [section]: { ...base[section], ...fields } };
}
const laminateOf = (design: RepairDesign): NonNullable<RepairDesign['laminate']> => {
  if (design.laminate === undefined) throw new Error(`no laminate: ${design.verdict}`);
  return design.laminate;
};
const warned = (design: RepairDesign, words: string): boolean =>
  design.warnings.some(({ text }) => text.includes(words));

describe('the long-term method', () => {
  const longTerm = change(partWall, 'laminate', {
    longTermStrength: { strength: stress.MPa(120), test: '1000 h survival', testTemperature: temperature.degC(90) },
  });
  const named = change(longTerm, 'repair', { method: 'long-term strength' });

  it('keeps the axial lines, which its tests say nothing about', () => {
    const pulled = laminateOf(designRepair(change(named, 'loads', { axialForce: force.kN(400) })));
    expect(pulled.thickness.candidates.map(({ criterion }) => criterion)).toContain('axial strain, substrate ignored');
    const ignored = laminateOf(designRepair(change(longTerm, 'loads', { axialForce: force.kN(400) })));
    const axial = (candidates: typeof pulled.thickness.candidates): number =>
      candidates.find(({ criterion }) => criterion === 'axial strain, substrate ignored')?.value as number;
    expect(axial(pulled.thickness.candidates)).toBe(axial(ignored.thickness.candidates));
  });

  it('is lowered by cycles like the strains', () => {
    const cycles = { number: 1e6, lowestPressure: gauge.MPa(0), highestPressure: gauge.MPa(4) };
    const hoop = (repairCase: RepairCase): number =>
      laminateOf(designRepair(repairCase)).thickness.candidates[0]?.value as number;
    expect(hoop(change(named, 'loads', { cycles }))).toBeGreaterThan(2 * hoop(named));
  });
});

describe('the pressure that the laid thickness resists', () => {
  it('is never below the design pressure, by whichever line governs', () => {
    const soft = change(partWall, 'laminate', { axialModulus: modulus.GPa(6), glassTransition: temperature.degC(140) });
    const { thickness, resistance } = laminateOf(
      designRepair(change(soft, 'service', { designPressure: gauge.MPa(1) })),
    );
    expect(thickness.governing).toContain('axial');
    expect(resistance.governing).toContain('axial');
    expect(resistance.value).toBeGreaterThanOrEqual(1e6);
  });

  it('counts a push along the pipe against the hoop line', () => {
    const hoop = (axialForce: RepairCase['loads']['axialForce']): number =>
      laminateOf(designRepair(change(partWall, 'loads', { axialForce }))).thickness.candidates[0]?.value as number;
    expect(hoop(force.kN(-200))).toBeGreaterThan(hoop('none'));
    expect(hoop(force.kN(200))).toBe(hoop('none'));
  });

  it('sees the external force also while the line is without pressure', () => {
    const { candidates } = laminateOf(designRepair(change(partWall, 'loads', { axialForce: force.kN(50) }))).thickness;
    expect(candidates.map(({ criterion }) => criterion)).toContain('axial strain, external force without pressure');
  });
});

describe('sharing load with the pipe', () => {
  const sharing = change(partWall, 'repair', { method: 'substrate sharing load' });

  it('asks for the design factor that its safe pressure rests on', () => {
    const { assessment: _, ...without } = sharing;
    const design = designRepair(without);
    expect(design.verdict).toBe('needs input');
    expect(design.missing.map(({ field }) => field)).toContain('assessment.designFactor');
  });

  it('asks for more where the pipe would strain the laminate more than it may be, and is not refused', () => {
    const cycles = { number: 1e8, lowestPressure: gauge.MPa(0), highestPressure: gauge.MPa(5) };
    const high = change(sharing, 'service', { designPressure: gauge.MPa(5) });
    const [still, cycled] = [high, change(high, 'loads', { cycles })].map((each) => designRepair(each));
    expect(cycled?.verdict).toBe('designed');
    const hoop = (design: RepairDesign | undefined): number =>
      design?.laminate?.thickness.candidates[0]?.value as number;
    expect(hoop(cycled)).toBeGreaterThan(hoop(still));
  });

  it('as a comparison never decides the verdict of another method', () => {
    const nearlyFull = change(partWall, 'service', { designPressure: gauge.MPa(6) });
    const design = designRepair({ ...nearlyFull, line: atWork(gauge.MPa(5.9)) });
    expect(design.verdict).toBe('designed');
    const [alternative] = laminateOf(design).alternatives;
    expect(alternative).toHaveProperty('criterion', 'substrate sharing load');
  });
});

describe('the pipe', () => {
  it('whose sound wall would yield is not repairable', () => {
    const weak = change(partWall, 'pipe', {
      material: { ...partWall.pipe.material, yieldStrength: stress.MPa(70), allowableStress: stress.MPa(60) },
    });
    const design = designRepair(weak);
    expect(design.verdict).toBe('not repairable');
    expect(design.reasons[0]?.text).toContain('sound pipe');
  });

  it('is as strong as it is, whatever is demanded of it', () => {
    const safe = (MPa: number): number =>
      designRepair(change(partWall, 'service', { designPressure: gauge.MPa(MPa) })).found?.strength
        ?.safePressure as number;
    expect(safe(3)).toBe(safe(4));
  });

  it('has a safety factor of at least the inverse of its design factor', () => {
    const design = designRepair({ ...partWall, assessment: { safetyFactor: 1, designFactor: 0.5 } });
    expect(design.found?.strength?.safetyFactor).toBe(2);
  });

  it('outside the limits of every strength method still gets the laminate that ignores it', () => {
    const { filler } = partWall;
    if (filler === 'none') throw new Error('no filler');
    const filled = { ...partWall, filler: { ...filler, thicknessOverDefect: length.mm(9) } };
    const deep = change(filled, 'defect', { remainingWall: length.mm(1.2) });
    const design = designRepair(deep);
    expect(design.verdict).toBe('designed');
    expect(design.found?.strength?.safePressure).toBe(0);
    expect(warned(design, 'least wall all round: less wall is left than counts as one')).toBe(true);
  });

  it('with a profile that is shorter or shallower than its defect is refused', () => {
    const profile = (axialLength: number, depth: number): RepairCase =>
      change(partWall, 'defect', {
        profile: [
          { position: length.mm(0), depth: length.mm(0) },
          { position: length.mm(axialLength / 2), depth: length.mm(depth) },
          { position: length.mm(axialLength), depth: length.mm(0) },
        ],
      });
    expect(designRepair(profile(120, 3.38)).verdict).toBe('designed');
    expect(() => designRepair(profile(60, 3.38))).toThrow(/whole defect/);
    expect(() => designRepair(profile(120, 1))).toThrow(
      /deepest point of the profile and defect\.remainingWall leaves that depth/,
    );
  });

  it('deepens everywhere between the sound ends of its profile', () => {
    const pits = (gap: number): RepairCase =>
      change(partWall, 'defect', {
        growth: { depth: corrosionRate.mmPerYear(0.1), length: corrosionRate.mmPerYear(0) },
        profile: [0, 3.38, gap, 3.38, 0].map((depth, i) => ({ position: length.mm(i * 30), depth: length.mm(depth) })),
      });
    const by = (repairCase: RepairCase): number =>
      designRepair({ ...repairCase, assessment: { designFactor: 0.72, method: 'effective area' } }).found?.strength
        ?.safePressure as number;
    expect(by(pits(0)) / by(pits(1e-9))).toBeCloseTo(1, 6);
  });

  it('grows by the larger of its long-term and short-term rate', () => {
    const readings = { previousWall: length.mm(5.5), sincePrevious: time.year(2), service: time.year(30) };
    const read = change(partWall, 'defect', {
      growth: { depth: readings, length: corrosionRate.mmPerYear(0) },
      holeAtEndOfLife: length.mm(20),
    });
    const rated = change(partWall, 'defect', {
      growth: { depth: corrosionRate.mmPerYear(0.25), length: corrosionRate.mmPerYear(0) },
      holeAtEndOfLife: length.mm(20),
    });
    expect(designRepair(read).found?.wallAtEndOfLife).toBeCloseTo(
      designRepair(rated).found?.wallAtEndOfLife as number,
      12,
    );
  });
});

describe('temperature', () => {
  const steps = (hours: number, degrees: number): RepairCase =>
    change(partWall, 'site', { history: [{ duration: time.hour(hours), temperature: temperature.degC(degrees) }] });
  const laminateCure = (design: RepairDesign): CureDesign => present(design.cures).laminate;

  it('lets the laminate begin to cure when the filler has cured', () => {
    const falling = change(partWall, 'site', {
      history: [
        { duration: time.hour(6), temperature: temperature.degC(23) },
        { duration: time.hour(90), temperature: temperature.degC(15) },
      ],
    });
    // From inside there is nothing to fill.
    const still = { depth: corrosionRate.mmPerYear(0), length: corrosionRate.mmPerYear(0) };
    const inside = { ...falling.defect, cause: 'internal erosion', growth: still } as const;
    const alone = designed({ ...falling, defect: inside, filler: 'none' });
    const both = designed(falling);
    expect(timeOf(both.timeline, 'cure')).toBeGreaterThan(timeOf(alone.timeline, 'cure'));
  });

  it('asks for a longer history when it ends before the cure', () => {
    const design = designRepair(steps(10, 20));
    expect(design.verdict).toBe('needs input');
    expect(design.missing.map(({ field }) => field)).toContain('site.history');
  });

  it('shortens the working time by the hottest hour', () => {
    expect(laminateCure(designRepair(steps(200, 38))).workingTime).toBeLessThan(
      laminateCure(designRepair(partWall)).workingTime,
    );
  });

  it('on steel too cold to cure says so with the number', () => {
    const design = designRepair(change(partWall, 'site', { pipeTemperature: temperature.degC(5) }));
    expect(design.verdict).toBe('not repairable');
    expect(design.reasons[0]?.limit?.value).toBe(temperature.degC(10));
  });

  it('of the steel on the day counts when it is above that of the service', () => {
    const hot = designRepair(change(partWall, 'site', { pipeTemperature: temperature.degC(80) }));
    expect(hot.laminate?.hoopStrain as number).toBeLessThan(designRepair(partWall).laminate?.hoopStrain as number);
  });

  it('at the cold end widens the mismatch', () => {
    const cold = designRepair(change(partWall, 'service', { lowestTemperature: temperature.degC(-40) }));
    expect(cold.laminate?.axialStrain as number).toBeLessThan(designRepair(partWall).laminate?.axialStrain as number);
  });

  it('is counted from the coldest hour on which the laminate may set up to the hottest of service', () => {
    const night = change(partWall, 'site', {
      history: [{ duration: time.hour(200), temperature: temperature.degC(13) }],
    });
    const heatedUp = (repairCase: RepairCase): number =>
      laminateOf(designRepair(repairCase)).axialStrain - laminateOf(designRepair(night)).axialStrain;
    // Read and foreseen alike are hours on which it may set: as cold a reading leaves as much.
    expect(heatedUp(change(night, 'site', { pipeTemperature: temperature.degC(13) }))).toBe(0);
    expect(heatedUp(partWall)).toBeGreaterThan(0);
  });

  it('is counted from the warmest hour on which it may set down to the coldest of service', () => {
    const site = { history: [{ duration: time.hour(200), temperature: temperature.degC(70) }] };
    const blanket = change(partWall, 'site', site);
    const coldService = change(blanket, 'service', { lowestTemperature: temperature.degC(-20) });
    expect(laminateOf(designRepair(coldService)).axialStrain).toBeLessThan(
      laminateOf(designRepair(blanket)).axialStrain,
    );
  });

  it('takes the lower moduli where the laminate was tested hot', () => {
    const hot = change(partWall, 'laminate', {
      atDesignTemperature: {
        energyReleaseRate: 180 as never,
        hoopModulus: modulus.GPa(12),
        axialModulus: modulus.GPa(8),
      },
    });
    const hoop = (repairCase: RepairCase): number =>
      laminateOf(designRepair(repairCase)).thickness.candidates[0]?.value as number;
    const at = (round: number, along: number): number =>
      tapeModuli({ hoop: round, axial: along, shear: 3, poisson: 0.12 }, 100, 0.5, 323.9).hoop;
    expect(hoop(hot)).toBeCloseTo((hoop(partWall) * at(24, 13)) / at(12, 8), 12);
  });
});

describe('the rest of the case', () => {
  it('needs room for the wrap with its ends, not for the overlap only', () => {
    const design = designRepair(partWall);
    const overlap = design.extent?.overlap.value as number;
    const tight = designRepair(change(partWall, 'repair', { availableOverlap: (overlap * 1.01) as Length }));
    expect(tight.verdict).toBe('not repairable');
    expect(tight.reasons[0]?.text).toContain('sound pipe beside');
  });

  it('gives a safety-critical line no class 1', () => {
    const low = change(change(leaking, 'repair', { class: 1 }), 'service', {
      designPressure: gauge.MPa(0.5),
      designTemperature: temperature.degC(30),
      safetyCritical: true,
    });
    expect(designRepair(low).verdict).toBe('not repairable');
  });

  it('asks no class of a rule set that has none', () => {
    const design = designRepair({ ...change(partWall, 'repair', { class: 1 }), basis: 'ASME PCC-2' });
    expect(design.verdict).toBe('designed');
  });

  it.each([
    ['line.pressure', { ...partWall, line: atWork(gauge.MPa(5)) }],
    [
      'loads.cycles.highestPressure',
      change(partWall, 'loads', {
        cycles: { number: 1e4, lowestPressure: gauge.MPa(0), highestPressure: gauge.MPa(5) },
      }),
    ],
    ['defect.holeDiameter', change(leaking, 'defect', { holeDiameter: length.mm(200) })],
    [
      'pipe.material.allowableStress',
      change(partWall, 'pipe', { material: { ...partWall.pipe.material, allowableStress: stress.MPa(900) } }),
    ],
    ['repair.class', change(partWall, 'repair', { class: 4 as never })],
    ['site.relativeHumidity', change(partWall, 'site', { relativeHumidity: 1.2 as Ratio })],
  ])('refuses a contradiction in %s by its path', (path, repairCase) => {
    expect(() => designRepair(repairCase)).toThrow(new RegExp(`^${path.replaceAll('.', '\\.')} `));
  });

  it('fills an external pit as well as the collar', () => {
    const outside = designRepair(partWall);
    const inside = designRepair(
      change(partWall, 'defect', {
        cause: 'internal corrosion',
        growth: { depth: corrosionRate.mmPerYear(0), length: corrosionRate.mmPerYear(0) },
      }),
    );
    const pit = 0.12 * 0.08 * (0.00838 - 0.005);
    const volume = (design: RepairDesign): number => present(design.mixes?.filler).volume as number;
    expect(volume(outside) - volume(inside)).toBeCloseTo(pit, 12);
  });

  it('lists every value that the library supplied', () => {
    const names = designRepair(partWall).assumed.map(({ amount }) => amount.name);
    expect(names).toEqual(expect.arrayContaining(['how often the design load acts', 'time for mixing a batch']));
  });

  it('says nothing about the wall at the end of life when its growth is not known', () => {
    const design = designRepair(change(leaking, 'defect', { growth: 'none' }));
    expect(design.verdict).toBe('needs input');
    expect(design.found).toBeUndefined();
    expect(design.laminate).toBeUndefined();
  });

  it('lays no more than the full count over the length that it claims', () => {
    const design = designRepair(partWall);
    if (design.wrap?.form !== 'tape') throw new Error('expected a tape');
    expect(design.wrap.fullCountLength).toBeLessThan(design.wrap.overallLength);
    expect(length.inMm(design.wrap.fullCountLength)).toBeGreaterThanOrEqual(
      length.inMm(design.extent?.totalLength as Length) - 2 * length.inMm(design.extent?.taper as Length) - 1e-9,
    );
  });
});

import { describe, expect, it } from 'vitest';
import * as acceptance from '../../src/acceptance/index.js';

/** What holds at a limit of the acceptance itself, and what a reason says. */

type Given = Readonly<Record<string, unknown>>;

const good = {
  laminateThickness: 0.008,
  throughWall: true,
  hardness: { scale: 'Shore D', readings: [80, 81, 80, 79, 80], qualifiedHardness: 82, hasStopped: false },
  inspection: { findings: [], bondMethods: ['tap test', 'ultrasonic'] },
  dimensions: { requiredThickness: 0.0076, leastOverlap: 0.08, requiredOverlap: 0.075 },
  pressureTest: {
    requiredPressure: 11e5,
    lowestPressure: 11.2e5,
    requiredHold: 3600,
    hold: 3600,
    leak: 'none',
    fall: 'only cooling',
  },
} as const;
const judge = (change: Given) => acceptance.acceptRepair({ ...good, ...change } as never);

describe('a repair that just meets its limits', () => {
  it('is accepted', () => {
    const { requiredThickness, requiredOverlap } = good.dimensions;
    const change = {
      laminateThickness: requiredThickness,
      dimensions: { requiredThickness, leastOverlap: requiredOverlap, requiredOverlap },
      pressureTest: { ...good.pressureTest, lowestPressure: good.pressureTest.requiredPressure },
    };
    expect(judge(change)).toMatchObject({ verdict: 'accept', reasons: [] });
    expect(judge({ ...change, pressureTest: 'not required' })).toMatchObject({ verdict: 'accept', reasons: [] });
  });

  it('is judged by the tap test alone up to 0.080 in', () => {
    const tapped = { inspection: { findings: [], bondMethods: ['tap test'] } };
    const at = (thickness: number) =>
      judge({ ...tapped, laminateThickness: thickness, dimensions: { ...good.dimensions, requiredThickness: 0.002 } });
    expect(at(0.08 * 0.0254).verdict).toBe('accept');
    expect(at(0.00204).reasons).toMatchObject([{ holdPoint: 'bond', limit: { value: 0.08 * 0.0254, toward: 'down' } }]);
  });

  it('that leaks is said to leak, not that no leak was seen', () => {
    const { reasons } = judge({ pressureTest: { ...good.pressureTest, leak: 'at the repair', fall: 'leak' } });
    expect(reasons.map(({ verdict }) => verdict)).toEqual(['reject']);
  });
});

describe('a finding', () => {
  const found = (finding: Given, change: Given = {}) =>
    acceptance.judgeFindings({
      findings: [finding],
      laminateThickness: 0.008,
      resinRichThickness: 0.0005,
      throughWall: false,
      ...change,
    } as never).reasons[0];

  it('is answered by what passes and what is to be done', () => {
    expect(found({ feature: 'dry fibre' })?.text).toMatch(/dry fibre: none passes; remove the repair/u);
    expect(found({ feature: 'crack', height: 0.001 })?.text).toMatch(
      /crack: none into the laminate passes; remove the repair/u,
    );
  });

  it('is told in its own measure, with the limit on the safe side', () => {
    const corner = found({ feature: 'sharp corner', radius: 0.004 });
    expect(corner).toMatchObject({
      found: { kind: 'length' },
      limit: { name: 'least radius', kind: 'length', toward: 'up' },
    });
    const dull = found({ feature: 'delamination', area: 0.003, atEnd: false });
    expect(dull).toMatchObject({
      holdPoint: 'bond',
      found: { kind: 'area' },
      limit: { name: 'greatest area', kind: 'area', toward: 'down' },
    });
    expect(found({ feature: 'dry spot' })?.holdPoint).toBe('surface');
  });

  it('is not judged by a layer that cannot be', () => {
    const refused = expect.objectContaining({ code: 'invalid-input', parameter: 'resinRichThickness' });
    for (const resinRichThickness of [-0.001, Number.NaN])
      expect(() => found({ feature: 'dry spot' }, { resinRichThickness })).toThrow(refused);
  });
});

describe('the hardness', () => {
  it('is not judged without that of the qualification, and says who has it', () => {
    const gate = { scale: 'Barcol', readings: [50, 51, 52], leastReadings: 3 };
    expect(() => acceptance.hardnessGate(gate as never)).toThrow(/qualifiedHardness.*must be given.*maker/u);
  });
});

describe('a test at the pressure of service', () => {
  it('is neither below it nor above what it proves', () => {
    const below = (factor: number) => [
      acceptance.testPressureBelowOperation({ pressure: 1e6, factor } as never),
      acceptance.provenPressureAboveTest({ testPressure: 1e6, factor } as never),
    ];
    expect([below(1), below(0.999)]).toEqual([
      [false, false],
      [true, true],
    ]);
  });
});

describe('a fall of the test pressure', () => {
  const still = {
    outsideDiameter: 0.1683,
    wallThickness: 0.0071,
    startTemperature: 293,
    endTemperature: 293,
    pressureError: 0,
    temperatureError: 0,
    allowedFall: 0,
    volume: 1,
  };
  const fall = (change: Given) => acceptance.pressureFall({ ...still, ...change } as never);

  it('of nothing at all is only cooling', () => {
    expect(fall({ startPressure: 0, endPressure: 0 }).verdict).toBe('only cooling');
  });

  it('of just the errors of both readings is undecided, and one of more a leak', () => {
    const start = 2 ** 20;
    const seen = (drop: number) => fall({ startPressure: start, endPressure: start - drop, pressureError: 2048 });
    expect(seen(4096).fallMost).toBe(0);
    expect([seen(4096).verdict, seen(4097).verdict]).toEqual(['undecided', 'leak']);
  });

  it.each([276, 290])('of water at %d K has its bounds at the ends of the errors', (about) => {
    const error = 0.5;
    const at = (startTemperature: number, endTemperature: number) =>
      fall({ startPressure: 1e7, endPressure: 1e7, startTemperature, endTemperature }).fallExpected;
    const ends = [about - error, about + error];
    const falls = ends.flatMap((start) => ends.map((end) => at(start, end)));
    const bounds = fall({
      startPressure: 1e7,
      endPressure: 1e7,
      startTemperature: about,
      endTemperature: about,
      temperatureError: error,
    });
    // Beside these, what the density may be off: three millionths of a volume that gives by 1 part in some 1.6 GPa.
    const slack = 3e-6 * 2.2e9;
    expect(Math.max(...falls) - bounds.fallMost).toBeLessThanOrEqual(0);
    expect(bounds.fallMost - Math.max(...falls)).toBeLessThan(slack);
    expect(bounds.fallLeast - Math.min(...falls)).toBeLessThanOrEqual(0);
    expect(Math.min(...falls) - bounds.fallLeast).toBeLessThan(slack);
  });
});

describe('where one rule ends and the next begins', () => {
  it('water is warmed by a step up to the turn, and cooled beyond it', () => {
    const beside = (temperature: number) => acceptance.warmedTemperature({ temperature, step: 2, turn: 309 } as never);
    expect([beside(309), beside(310)]).toEqual([311, 308]);
  });

  it('the lower distance holds up to its energy itself, and so does the higher', () => {
    const at = (energy: number) =>
      acceptance.testDistance({
        energy,
        lowEnergy: 1e6,
        highEnergy: 2e6,
        lowDistance: 100,
        highDistance: 200,
      } as never);
    expect([at(1e6), at(1.001e6), at(2e6)]).toEqual([100, 200, 200]);
    expect(at(2.001e6)).toBeLessThan(100);
  });

  it('a scaled distance is that of the rule for its own mass', () => {
    const closer = (scaledDistance: number) =>
      acceptance.testDistanceCloserThanRule({ energy: 1e6, referenceMass: 8, scaledDistance } as never);
    expect([closer(40), closer(39.9)]).toEqual([false, true]);
  });
});

import { describe, expect, it } from 'vitest';
import { temperature, time } from '../../src/quantity/index.js';
import type { Designed } from '../../src/repair/index.js';
import { asksFor, designOf, laminateOf, linesOf, madeOf, planOf, stepOf, verdictOf } from './answers.js';
import { type CaseFile, emptied, emptyLeak, leak, loss, type Paths, proposed, withPaths } from './cases.js';
import { compared, pointOf } from './records.js';

/** Issue 9: what the answers to the questions before signing change. */

describe('a surge', () => {
  const at = (surge: string | undefined) =>
    withPaths(loss, { [proposed.surge]: surge, [proposed.lowestRating]: '200 bar' });

  it('that the design pressure holds, or that lies below it, changes nothing', () => {
    expect(laminateOf(at('20 bar'))).toEqual(laminateOf(at('included')));
  });

  it('is warned of above the design pressure alone, whatever else the design is sized by', () => {
    const near = {
      axialLength: '20 mm',
      circumferentialWidth: '20 mm',
      remainingWall: '6 mm',
      gapAlong: '20 mm',
      gapRound: '0 mm',
    };
    const joined = { 'defect.neighbours': [{ ...near, cause: 'external corrosion' }] };
    const told = (surge: string, changes: Paths = {}) =>
      designOf(withPaths(at(surge), { ...changes, 'service.designPressure': '40 bar' })).warnings.flatMap(
        ({ text, amounts = [] }) =>
          text.startsWith('The surge of {0}') ? [amounts.map(({ value }) => value / 1e5)] : [],
      );
    expect(designOf(withPaths(at('included'), joined)).found?.lengthAtEndOfLife).toBeGreaterThan(
      designOf(at('included')).found?.lengthAtEndOfLife ?? Number.NaN,
    );
    expect([told('included', joined), told('40 bar'), told('40 bar', joined)]).toEqual([[], [], []]);
    expect([told('40.1 bar'), told('60 bar', joined)]).toEqual([[[expect.closeTo(40.1, 9), 40]], [[60, 40]]]);
  });

  it('above it is designed for as if it were the design pressure, and a warning says so', () => {
    const surged = designOf(at('60 bar'));
    const designed = designOf(withPaths(at('included'), { 'service.designPressure': '60 bar' }));
    expect(surged.verdict).toBe('designed');
    expect([surged.laminate, surged.found, surged.extent]).toEqual([
      designed.laminate,
      designed.found,
      designed.extent,
    ]);
    expect(surged.acceptance?.pressureTest.pressure).toBe(designed.acceptance?.pressureTest.pressure);
    expect(surged.warnings.some(({ text }) => text.startsWith('The surge of {0} is above'))).toBe(true);
    expect(surged.laminate?.resistance.value).toBeGreaterThanOrEqual(60e5);
  });

  it.each(['include', 'none', ''])(
    'called "%s" is refused in a sentence that names the word and the pressure',
    (word) => {
      const said = (() => {
        try {
          return designOf(at(word)).verdict;
        } catch (error) {
          return String(error);
        }
      })();
      expect(said).toContain('"included", or a gauge pressure above 0');
    },
  );

  it('stays in the case as it was stated, and the line goes back to its design pressure', () => {
    expect(designOf(at('60 bar')).case.service.designPressure).toBe(designOf(loss).case.service.designPressure);
    // Beside the warning, which names both.
    const back = stepOf(planOf(at('60 bar')), 'return').goes.flatMap(({ amounts = [] }) => amounts);
    const pressures = back.flatMap(({ kind, value }) => (kind === 'gauge pressure' ? [value] : []));
    expect(pressures).toEqual([designOf(loss).case.service.designPressure]);
  });

  it('that what was laid does not hold is named beside the pressure that it is good for', () => {
    const thin = (made: Designed) =>
      compared(made, { thickness: made.laminate.thickness.value * 0.8, pressureTest: undefined }).goodFor?.because
        .text ?? '';
    const untested = (surge: string) => madeOf(withPaths(at(surge), { 'acceptance.pressureTest': 'none' }));
    expect(thin(untested('60 bar'))).toContain('no surge above it at any time');
    expect(thin(untested('included'))).toMatch(/^governed by /u);
  });

  it('is kept off a live line while people work on it, whatever the design pressure holds', () => {
    const told = (file: CaseFile) => linesOf(stepOf(planOf(file), 'permit')).some(({ text }) => text.includes('surge'));
    expect([told(loss), told(withPaths(loss, emptied))]).toEqual([true, false]);
  });

  it('above what its class covers is refused like a design pressure', () => {
    expect(verdictOf(withPaths(leak, { [proposed.surge]: '60 bar' }))).toBe('not repairable');
  });
});

describe('a laminate that cures colder than the sample of its transition', () => {
  const sampled = (at: string) => withPaths(loss, { [proposed.transitionCure]: at });

  it('asks for the transition after that cure, and keeps its numbers', () => {
    const design = designOf(sampled('80 degC'));
    expect([design.verdict, design.missing.map(({ field }) => field)]).toEqual([
      'needs input',
      [proposed.transitionCure],
    ]);
    expect(design.laminate).toEqual(designOf(loss).laminate);
  });

  it('asks by its coldest hour, and not where a blanket keeps it as warm', () => {
    const nights = [
      { duration: '60 h', temperature: '25 degC' },
      { duration: '40 h', temperature: '18 degC' },
    ];
    expect(verdictOf(withPaths(sampled('23 degC'), { 'site.history': nights }))).toBe('needs input');
    const blanket = [{ duration: '100 h', temperature: '36 degC' }];
    expect(verdictOf(withPaths(sampled('34 degC'), { 'site.history': blanket }))).toBe('designed');
  });
});

describe('a heating blanket', () => {
  /** eps_a = f_T eps_a0 - |dT (alpha_s - alpha_a)|, as beside the test of its temperature. */
  const axialStrain = (kelvin: number): number => (6e-5 * 900 + 0.03 + 0.7014) * 0.0032 - kelvin * 8e-6;
  const blanket = (temperature: string, changes: Paths = {}) =>
    laminateOf(withPaths(leak, { 'site.history': [{ duration: '80 h', temperature }], ...changes })).axialStrain;

  it('counts down to the coldest steel of the forecast, 13 degC: 47 K, where 17 K are left up to service', () => {
    expect(blanket('60 degC')).toBeCloseTo(axialStrain(47), 9);
  });

  it('never makes up for the heat of service: 22 K up from the coldest steel of the forecast', () => {
    for (const temperature of ['18 degC', '25 degC', '30 degC', '35 degC'])
      expect(blanket(temperature)).toBeCloseTo(axialStrain(22), 9);
  });

  it('counts by the forecast where no history is given', () => {
    const [first] = (leak['site'] as { forecast: object[] }).forecast;
    const warm = withPaths(first ?? {}, { duration: '100 h', pipeTemperature: '60 degC' });
    const changes = { 'site.forecast': [warm], 'site.history': undefined };
    expect(laminateOf(withPaths(leak, changes)).axialStrain).toBeCloseTo(axialStrain(42), 9);
  });
});

describe('a cure in the cold', () => {
  const warm = { [proposed.transitionCure]: '20 degC' };
  const design = madeOf(withPaths(loss, warm));
  const cured = (made: Designed, ...steps: [hours: number, degrees: number][]) => {
    const cure = steps.map(([hours, degrees]) => ({
      duration: time.hour(hours),
      temperature: temperature.degC(degrees),
    }));
    return pointOf(made, { cure }, 'cure');
  };

  it('counts no hour as built that was colder than the sample was cured', () => {
    expect([cured(madeOf(loss), [200, 15]), cured(design, [200, 15])]).toEqual(['meets', 'does not meet']);
    expect(cured(design, [200, 15], [60, 25])).toBe('meets');
  });

  it('is told to the crew by the temperature of the sample, and by no colder one', () => {
    const hours = stepOf(planOf(withPaths(loss, warm)), 'cure').stops.find(({ text }) =>
      text.startsWith('Hours colder'),
    );
    expect(hours?.amounts?.map(({ value }) => value)).toEqual([293.15]);
  });
});

describe('carbon on steel', () => {
  it('is designed over an isolating layer, which the plan lays first', () => {
    const carbon = withPaths(loss, { [proposed.fibre]: 'carbon', 'laminate.isolatingLayer': 'one ply of glass' });
    expect(verdictOf(carbon)).toBe('designed');
    const [first] = stepOf(planOf(carbon), 'wrap').does;
    expect(first?.text).toContain('first lay one ply of glass');
  });
});

describe('a pour of filler', () => {
  // 6 mm over the defect, and a pit of 0.28 in less 0.1 in, 4.572 mm.
  const lift = (greatest: string) => verdictOf(withPaths(loss, { [proposed.greatestLift]: greatest }));

  it('is as deep as from its top to the bottom of the pit, and never deeper than its greatest lift', () => {
    expect([lift('10.58 mm'), lift('10.57 mm')]).toEqual(['designed', 'not covered']);
  });

  it('has its greatest lift as a stop in the plan', () => {
    const { stops } = stepOf(planOf(loss), 'filler');
    expect(stops.flatMap(({ amounts = [] }) => amounts).map(({ value }) => value)).toContain(0.015);
  });
});

describe('the nearest attachment', () => {
  it('is kept clear of the whole laid length, counted from the edge of the loss as it is', () => {
    const { extent, wrap, case: repairCase } = designOf(loss);
    if (extent === undefined || wrap?.form !== 'tape') throw new Error('no tape');
    const beyond = (Math.max(wrap.overallLength, extent.totalLength) - repairCase.defect.axialLength) / 2;
    const at = (metres: number) => verdictOf(withPaths(loss, { [proposed.nearestAttachment]: `${metres} m` }));
    expect([at(beyond * 1.001), at(beyond * 0.999)]).toEqual(['designed', 'not covered']);
  });
});

describe('the name of the contents', () => {
  const called = (contents: string, ...hazards: string[]) =>
    withPaths(loss, { 'service.contents': contents, 'service.hazards': hazards });

  it.each([
    ['gasoline', 'flammable'],
    ['Petrol', 'flammable'],
    ['light naphtha', 'flammable'],
    ['crude oil', 'flammable'],
    ['condensate', 'flammable'],
    ['LPG', 'flammable'],
    ['natural gas', 'flammable'],
    ['methane', 'flammable'],
    ['hydrogen', 'flammable'],
    ['anhydrous ammonia', 'toxic'],
    ['chlorine', 'toxic'],
    ['H2S', 'toxic'],
    ['30 % hydrochloric acid', 'corrosive'],
    ['caustic', 'corrosive'],
    ['steam', 'hot'],
    ['nitrogen', 'asphyxiant'],
    ['NH3', 'corrosive'],
    ['CH4', 'flammable'],
    ['50 % NaOH', 'corrosive'],
    ['hot condensate', 'hot'],
  ])('"%s" with no hazard asks for the list, and for "%s" in it', (contents, hazard) => {
    const { verdict, missing, laminate } = designOf(called(contents));
    expect([verdict, laminate === undefined]).toEqual(['needs input', false]);
    expect(missing.find(({ field }) => field === 'service.hazards')?.why).toContain(`"${hazard}"`);
  });

  it('is content with a list that says as much', () => {
    expect(asksFor(called('gasoline', 'flammable'), 'service.hazards')).toBe(false);
    expect(asksFor(called('benzene', 'flammable'), 'service.hazards')).toBe(true);
    expect(asksFor(called('benzene', 'flammable', 'toxic'), 'service.hazards')).toBe(false);
  });

  it.each([
    'cooling water',
    'produced water',
    'cooler condensate',
    'sea water',
    'glycol and water',
    'chlorinated water',
    'acidulated water',
    'air',
    'boiler feed water',
  ])('"%s" stands for nothing, where somebody looked', (contents) => {
    const looked = withPaths(called(contents), { 'service.hazardsStatedBy': 'process engineer' });
    expect(asksFor(looked, 'service.hazards')).toBe(false);
  });

  it('keeps a leak out of class 1, whatever the list says', () => {
    expect(verdictOf(withPaths(emptyLeak, { 'service.contents': 'gasoline' }))).not.toBe('designed');
    const listed = withPaths(emptyLeak, { 'service.contents': 'gasoline', 'service.hazards': ['flammable'] });
    expect(verdictOf(listed)).toBe('not repairable');
  });

  it('that is sour says more than that nothing in it cracks steel', () => {
    const gas = called('sour gas', 'flammable', 'toxic');
    expect(asksFor(withPaths(gas, { [proposed.cracking]: 'none' }), proposed.cracking)).toBe(true);
    const tested = {
      environment: 'sour',
      test: { method: 'magnetic particles', result: 'no crack found', date: '2026-05-04' },
    };
    expect(asksFor(withPaths(gas, { [proposed.cracking]: tested }), proposed.cracking)).toBe(false);
  });
});

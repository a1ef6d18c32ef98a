import { describe, expect, it } from 'vitest';
import type { CureDesign, MixDesign } from '../../../src/repair/index.js';
import { designOf } from '../../faults/answers.js';
import { type CaseFile, emptied, leak, loss, type Paths, quietLoss, withPaths } from '../../faults/cases.js';

/** What is mixed and how it sets: by the hours that are read and foreseen, wherever in them the worst one stands. */

const hour = (pipe: string, air: string, humidity = '50 %') => ({
  duration: '40 h',
  pipeTemperature: pipe,
  airTemperature: air,
  relativeHumidity: humidity,
});
const mild = hour('20 degC', '20 degC');
const read: Paths = {
  'site.pipeTemperature': '20 degC',
  'site.airTemperature': '20 degC',
  'site.relativeHumidity': '50 %',
};

const cureOf = (file: CaseFile, changes: Paths, use: 'laminate' | 'filler' = 'laminate'): CureDesign => {
  const cure = designOf(withPaths(file, changes)).cures?.[use];
  if (cure === undefined || cure === 'none') throw new Error('no cure');
  return cure;
};

describe('the working time of a resin', () => {
  const working = (changes: Paths): number => cureOf(quietLoss, { ...read, ...changes }).workingTime;
  const forecast = (...hours: readonly object[]): Paths => ({ 'site.forecast': hours });

  it('is that at the warmest steel or air, read or foreseen, at whatever hour', () => {
    const cool = working(forecast(mild, mild));
    const warm = working({ 'site.pipeTemperature': '30 degC', ...forecast(mild, mild) });
    expect(warm).toBeLessThan(cool);
    for (const [name, changes] of [
      ['air, read', { 'site.airTemperature': '30 degC', ...forecast(mild, mild) }],
      ['steel, foreseen first', forecast(hour('30 degC', '20 degC'), mild)],
      ['steel, foreseen last', forecast(mild, hour('30 degC', '20 degC'))],
      ['air, foreseen first', forecast(mild, hour('20 degC', '30 degC'))],
      [
        'steel of the history',
        {
          ...forecast(mild, mild),
          'site.history': [
            { duration: '20 h', temperature: '20 degC' },
            { duration: '60 h', temperature: '30 degC' },
          ],
        },
      ],
      ['no forecast', { 'site.forecast': undefined, 'site.airTemperature': '30 degC' }],
    ] as const)
      expect(working(changes), name).toBe(warm);
    expect(working({ 'site.forecast': undefined })).toBe(cool);
  });

  it('is behind the error of the thermometer, that of practice where nobody states it', () => {
    const at = (error: string | undefined) =>
      working({
        'site.instruments': error === undefined ? undefined : { temperatureError: error, humidityError: '3 %' },
        ...forecast(mild),
      });
    expect(at(undefined)).toBe(at('0.5 K'));
    expect(at('2 K')).toBeLessThan(at('0.5 K'));
    expect(at('0 K') / at('2 K')).toBeCloseTo(Math.exp((55_000 / 8.314462618) * (1 / 293.15 - 1 / 295.15)), 9);
  });

  it('of an energy that nobody states is the shortest of three, and the design says so', () => {
    const hot = { ...forecast(hour('35 degC', '35 degC')) };
    const by = (energy: string | undefined) => working({ ...hot, 'laminate.cure.activationEnergy': energy });
    expect(by(undefined)).toBe(Math.min(by('40 kJ/mol'), by('50 kJ/mol'), by('60 kJ/mol')));
    const assumes = (energy: string | undefined): number =>
      designOf(withPaths(quietLoss, { 'laminate.cure.activationEnergy': energy })).assumed.filter(({ amount }) =>
        amount.name.startsWith('activation energy of'),
      ).length;
    expect([assumes(undefined), assumes('55 kJ/mol')]).toEqual([1, 0]);
  });
});

describe('the wait of a resin', () => {
  it('on steel that is only read lasts by that steel, down to the coldest at which it cures', () => {
    // Without word of its thermometer that may be half a kelvin off.
    const still = { 'site.forecast': undefined, 'site.history': undefined, 'site.instruments': undefined };
    const waits = (degrees: string) => {
      const { law } = cureOf(quietLoss, { ...still, 'site.pipeTemperature': degrees });
      return law.sort === 'same at every hour' ? law.wait : Number.NaN;
    };
    expect(waits('23.5 degC')).toBeCloseTo(86_400, 6);
    expect(waits('15 degC')).toBeGreaterThan(86_400);
    expect(waits('10.5 degC')).toBeGreaterThan(waits('15 degC'));
    const cold = designOf(
      withPaths(quietLoss, { ...still, 'site.pipeTemperature': '10.4 degC', 'laminate.transitionCuredAt': '5 degC' }),
    );
    expect(cold.verdict).toBe('not repairable');
    const reason = cold.reasons.find(({ text }) => text.includes('does not cure on steel this cold'));
    expect(reason?.found?.value).toBeCloseTo(283.05, 9);
    expect(reason?.limit?.value).toBe(283.15);
  });

  it('counts an error of its thermometer that nobody stated, and says so', () => {
    const assumes = (instruments: unknown) =>
      designOf(withPaths(quietLoss, { 'site.instruments': instruments })).assumed.filter(
        ({ amount }) => amount.name === 'error of a thermometer whose error nobody states',
      );
    expect(assumes(undefined)).toMatchObject([{ amount: { value: 0.5 } }]);
    expect(assumes({ temperatureError: '0.2 K', humidityError: '3 %' })).toEqual([]);
  });

  it('is longer by what its thermometer is off: 4 K at 20 degC are 1.37 times', () => {
    // By hand at 55 kJ/mol: exp(55e3 / 8.31446 * (1 / 289.15 - 1 / 293.15)) = exp(0.31216) = 1.3664.
    const waits = (error: string) => {
      const changes = {
        'site.forecast': undefined,
        'site.history': undefined,
        'site.pipeTemperature': '20 degC',
        'site.instruments': { temperatureError: error, humidityError: '3 %' },
        'laminate.cure.activationEnergy': '55 kJ/mol',
      };
      const { law } = cureOf(quietLoss, changes);
      return law.sort === 'same at every hour' ? law.wait : Number.NaN;
    };
    expect(waits('4 K') / waits('0 K')).toBeCloseTo(1.3664, 3);
  });

  it("over the hours to come follows a law of the maker's numbers", () => {
    expect(cureOf(quietLoss, {}).law).toMatchObject({
      sort: 'over the history',
      requiredTime: 86_400,
      referenceTemperature: 296.15,
      minimumTemperature: 283.15,
      testedFrom: 283.15,
      testedTo: 313.15,
      activationEnergy: 55_000,
    });
  });

  it.each([
    ['read', { 'site.forecast': undefined, 'site.pipeTemperature': '42 degC' }],
    ['foreseen', { 'site.forecast': [hour('42 degC', '20 degC')] }],
  ])('is a guess on steel that the maker never tested, and the crew is told at its step: %s', (_, changes) => {
    const steps = (more: Paths) =>
      designOf(withPaths(quietLoss, more)).warnings.flatMap(({ text, step }) =>
        text.includes('beyond the temperatures at which its maker tested') ? [[text.slice(0, 9), step]] : [],
      );
    expect(steps({ 'site.forecast': [hour('39 degC', '20 degC')] })).toEqual([]);
    expect(steps(changes)).toEqual(
      expect.arrayContaining([
        ['The worki', 'wrap'],
        ['The cure ', 'cure'],
      ]),
    );
  });

  it('of what moisture cures is that of the driest and coldest hour, and it gels by the dampest and warmest', () => {
    const rows = [10, 20, 30].flatMap((degrees) =>
      [20, 50, 90].map((humidity) => ({
        temperature: `${degrees} degC`,
        humidity: `${humidity} %`,
        cureTime: `${25 - degrees / 3 - humidity / 10} h`,
        workingTime: `${100 - degrees - humidity / 2} min`,
      })),
    );
    const moist = (...forecast: readonly object[]) => {
      const { law, workingTime } = cureOf(quietLoss, {
        ...read,
        resin: 'none',
        'laminate.cure': { mechanism: 'moisture', rows },
        'site.forecast': forecast.length === 0 ? undefined : forecast,
      });
      return [law.sort === 'same at every hour' ? law.wait : Number.NaN, workingTime];
    };
    const even = moist();
    expect(moist(mild, mild)).toEqual(even);
    const [dry, same] = moist(mild, hour('20 degC', '20 degC', '30 %'));
    expect(dry).toBeGreaterThan(even[0] ?? Number.NaN);
    expect(same).toBe(even[1]);
    expect(moist(hour('20 degC', '20 degC', '30 %'), mild)).toEqual([dry, same]);
    expect(moist(mild, hour('20 degC', '20 degC', '85 %'))[1]).toBe(moist(hour('20 degC', '20 degC', '85 %'))[1]);
    const damp = moist(hour('20 degC', '20 degC', '85 %'), mild);
    expect(damp[1]).toBeLessThan(even[1] ?? Number.NaN);
    expect(moist(mild, hour('12 degC', '20 degC'))[0]).toBeGreaterThan(even[0] ?? Number.NaN);
    expect(moist(hour('12 degC', '12 degC'), mild)[0]).toBe(moist(mild, hour('12 degC', '12 degC'))[0]);
    expect(moist(hour('28 degC', '28 degC', '85 %'), mild)).toEqual(moist(mild, hour('28 degC', '28 degC', '85 %')));
  });
});

describe('what is mixed', () => {
  const mixes = (changes: Paths, file = loss) => {
    const made = designOf(withPaths(file, { ...emptied, ...changes })).mixes;
    if (made === undefined) throw new Error('nothing mixed');
    return made;
  };
  const filler = (changes: Paths, file = loss): MixDesign => {
    const { filler: mix } = mixes(changes, file);
    if (mix === 'none') throw new Error('no filler');
    return mix;
  };

  it('is filler in the hollow of a loss from outside, and none of it in one from inside', () => {
    const grown = { 'defect.growth': { depth: '0 mm/year', length: '0 mm/year' } };
    const outside = filler({}).volume ?? Number.NaN;
    const inside = filler({ ...grown, 'defect.cause': 'internal corrosion' }).volume ?? Number.NaN;
    // The hollow with its deepest depth all over.
    expect(outside - inside).toBeCloseTo(7 * 3.5 * 0.18 * 0.0254 ** 3, 9);
    expect(filler({ 'defect.cause': 'mechanical damage' }).volume).toBeCloseTo(outside, 12);
  });

  it('is filler over the defect, or along the whole wrap where it lies under all of it', () => {
    const short = filler({}, leak).volume ?? Number.NaN;
    const long = filler(
      { 'filler.underWholeWrap': true, 'filler.qualifiedOverFiller': { energyReleaseRate: '150 J/m2' } },
      leak,
    ).volume;
    expect(long).toBeGreaterThan(1.5 * short);
  });

  it('is as much as lies on the pipe, and its waste', () => {
    const mass = (waste: string | undefined) => filler({ 'filler.waste': waste }).mass;
    expect(mass('20 %') / mass('10 %')).toBeCloseTo(1.2 / 1.1, 9);
    expect(mass(undefined) / mass('10 %')).toBeCloseTo(1.15 / 1.1, 9);
    const { volume, mass: whole } = filler({});
    expect(whole / ((volume ?? 0) * 1600 * 1.1)).toBeCloseTo(1, 9);
  });

  it('is mixed in batches of its two parts, none larger than a kit', () => {
    for (const kit of ['0.3 kg', '0.6 kg', '5 kg']) {
      const { batches, batchMass, base, hardener, mass, limitedBy } = filler({ 'filler.kitMass': kit });
      expect(base + hardener).toBeCloseTo(batchMass, 12);
      expect(base / hardener).toBeCloseTo(4, 9);
      expect(batches * batchMass).toBeCloseTo(mass, 9);
      expect(batchMass).toBeLessThanOrEqual(Number.parseFloat(kit) + 1e-9);
      if (limitedBy === 'kit') expect((batches - 1) * Number.parseFloat(kit)).toBeLessThan(mass);
    }
  });

  it('is laid no deeper at once than its maker allows, the hollow counted', () => {
    const refused = (lift: string | undefined) =>
      designOf(withPaths(loss, { ...emptied, 'filler.greatestLift': lift })).reasons.filter(({ text }) =>
        text.includes('the filler is deeper'),
      );
    const deep = 0.006 + 0.18 * 0.0254;
    expect(refused(`${deep + 1e-6} m`)).toEqual([]);
    const [reason] = refused(`${deep - 1e-6} m`);
    expect(reason?.found?.value).toBeCloseTo(deep, 9);
    expect(reason?.limit?.value).toBeCloseTo(deep - 1e-6, 12);
    expect(refused(undefined)).toEqual([]);
    // As deep as it may be, to the last digit.
    expect(refused(`${reason?.found?.value} m`)).toEqual([]);
  });

  it('is resin by the fabric, in batches that a crew lays in time, or as they come where no crew is known', () => {
    const resin = (changes: Paths) => {
      const { laminateResin } = mixes(changes);
      if (laminateResin === 'none') throw new Error('no resin');
      return laminateResin;
    };
    const known = resin({});
    const unknown = resin({ crew: undefined });
    expect(unknown.mass).toBeCloseTo(known.mass, 12);
    expect(unknown.batches).toBeLessThanOrEqual(known.batches);
    expect(resin({ 'crew.layingSpeed': '1 ft/min' }).batches).toBeGreaterThan(known.batches);
    expect(resin({ 'crew.crews': 4 }).batches).toBe(known.batches);
    expect(resin({ 'crew.soakTime': '3 min' }).batches).toBeGreaterThanOrEqual(known.batches);
    expect(known.material).toMatch(/, resin$/u);
  });

  it('is heated steel that a plan rests on, told with the least that it has to keep', () => {
    const heated = (degrees: string) =>
      designOf(
        withPaths(quietLoss, {
          'site.forecast': [hour('15 degC', '12 degC'), hour('18 degC', '15 degC')],
          'site.history': [
            { duration: '20 h', temperature: '30 degC' },
            { duration: '60 h', temperature: degrees },
          ],
        }),
      ).warnings.filter(({ text }) => text.includes('heated above its forecast'));
    expect(heated('15 degC')).toEqual([]);
    expect(heated('14 degC')).toEqual([]);
    const [warning] = heated('25 degC');
    expect(warning?.step).toBe('cure');
    expect(warning?.amounts?.[0]?.value).toBeCloseTo(298.15, 9);
  });

  it('is heated steel without a forecast too, where the steel is read colder', () => {
    const toldAt = (degrees: string) =>
      designOf(
        withPaths(quietLoss, {
          'site.forecast': undefined,
          'site.history': [{ duration: '80 h', temperature: degrees }],
        }),
      ).warnings.filter(({ step, text }) => step === 'cure' && text.includes('heated above its reading')).length;
    expect([toldAt('12 degC'), toldAt('35 degC')]).toEqual([0, 1]);
  });
});

describe('a material that cannot be worked', () => {
  const still: Paths = { 'site.forecast': undefined, 'site.history': undefined, 'site.pipeTemperature': '11 degC' };
  const parts = (file: CaseFile, changes: Paths) => {
    const { verdict, cures, mixes, reasons } = designOf(withPaths(file, changes));
    return { verdict, cures: cures !== undefined, mixes: mixes !== undefined, reasons: reasons.length };
  };

  it.each([
    ['filler', 'filler.cure.minimumTemperature'],
    ['putty', 'seal.putty.cure.minimumTemperature'],
    ['laminate', 'laminate.cure.minimumTemperature'],
  ])('on steel too cold for it alone leaves the hours of all open: %s', (_, path) => {
    expect(parts(leak, { ...still, [path]: '12 degC' })).toEqual({
      verdict: 'not repairable',
      cures: false,
      mixes: false,
      reasons: 1,
    });
  });

  it.each([['filler.cure.workingTime'], ['laminate.cure.workingTime']])(
    'since it gels while it is mixed leaves what is mixed open: %s',
    (path) => {
      expect(parts(loss, { ...emptied, [path]: '4 min' })).toMatchObject({
        verdict: 'not repairable',
        cures: true,
        mixes: false,
      });
    },
  );

  it('is wetted out over all of the sheet as over all of the tape', () => {
    const wrap = { form: 'sheet', width: '300 mm', rollLength: '25 m', waste: '10 %' };
    const { wrap: laid, mixes } = designOf(withPaths(quietLoss, { wrap }));
    if (laid?.form !== 'sheet' || mixes === undefined || mixes.laminateResin === 'none') throw new Error('no sheet');
    expect(mixes.laminateResin.area).toBe(laid.sheetArea);
    const { wrap: tape, mixes: ofTape } = designOf(quietLoss);
    if (tape?.form !== 'tape' || ofTape === undefined || ofTape.laminateResin === 'none') throw new Error('no tape');
    expect(ofTape.laminateResin.area).toBeCloseTo(0.1 * tape.tapeLength, 9);
  });
});

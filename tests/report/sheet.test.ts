import { describe, expect, it } from 'vitest';
import { decodeCase } from '../../src/json/index.js';
import { exactly, length, line, roundedDown, roundedUp, temperature } from '../../src/quantity/index.js';
import type { RepairDesign } from '../../src/repair/design/design.js';
import { designRepair } from '../../src/repair/index.js';
import { formatToward } from '../../src/report/number.js';
import { calculationSheet } from '../../src/report.js';
import { exampleDocument, exampleNames } from '../json/examples.js';
import { inventedCase, inventedDesign } from './fixture.js';

const parts = (sheet: string): string[] =>
  [...sheet.matchAll(/^== (?<title>[A-Z ]+) =+$/gmu)].map(([, title]) => title ?? '');
const section = (sheet: string, title: string): string =>
  sheet.split(`== ${title} `)[1]?.split('\n== ')[0]?.replaceAll(/\s+/gu, ' ') ?? '';

describe('the calculation sheet', () => {
  it('gives the answer first, then what it rests on, then every step', () => {
    const sheet = calculationSheet(inventedDesign());
    expect(parts(sheet)).toEqual([
      'ANSWER',
      'END OF LIFE',
      'ASSUMED VALUES',
      'WARNINGS',
      'CAUTIONS',
      'EVIDENCE',
      'THE CASE AS GIVEN',
      'CALCULATION',
      'SOURCES',
    ]);
    expect(sheet.indexOf('after ISO 24817:2017, as recalled')).toBeLessThan(sheet.indexOf('== ANSWER'));
    expect(sheet).toContain('hoopwright 0.0.0-test');
    expect(sheet).toContain('work order 11-204');
  });

  it('names for each quantity of the answer the criterion that governs it', () => {
    const answer = section(calculationSheet(inventedDesign()), 'ANSWER');
    expect(answer).toContain('Verdict: DESIGNED');
    expect(answer).toContain('Laminate thickness 3.940 mm governed by axial strain, substrate ignored');
    expect(answer).toContain('5 plies 4.000 mm laid, 0.8 mm each');
    expect(answer).toContain('Axial length 368.4 mm');
    expect(answer).toContain('104.2 mm governed by geometry');
    expect(answer).toContain('3.940 axial strain, substrate ignored (governs)');
    expect(answer).toContain('- long-term strength: needs the long-term strength of the laminate');
    expect(answer).toContain('352.0 g base + 88.00 g hardener each');
    expect(answer).toContain('Wait for cure 51.40 h');
    expect(answer).toContain('Rolls 3 rolls 1.500 m left on the last');
  });

  it('tells the length that carries every layer from the length that is wrapped and prepared', () => {
    const answer = section(calculationSheet(inventedDesign()), 'ANSWER');
    expect(answer).toContain('2 layers each; at least 6 everywhere over 329.0 mm');
    expect(answer).toContain(
      'Wrap over 420.0 mm with the end bands of the tape; prepare at least this length of surface',
    );
    const document = exampleDocument();
    document.wrap = { form: 'sheet', width: '300 mm', rollLength: '20 m' };
    const sheet = designRepair(decodeCase(document).case);
    const total = (1000 * (sheet.extent?.totalLength ?? 0)).toFixed(1);
    expect(section(calculationSheet(sheet), 'ANSWER')).toContain(
      `Wrap over ${total} mm prepare at least this length of surface`,
    );
  });

  it('tells a pipe that leaks now from a wall that will be used up', () => {
    const answerOf = (change: (defect: Record<string, unknown>) => void): string => {
      const document = exampleDocument();
      change(document.defect);
      return section(calculationSheet(designRepair(decodeCase(document).case)), 'ANSWER');
    };
    expect(answerOf(() => {})).toContain('Wall at the end of life 1.800 mm round the hole; the pipe leaks now');
    const thin = answerOf((defect) => {
      Object.assign(defect, { kind: 'metal loss', remainingWall: '1.5 mm', holeAtEndOfLife: '20 mm' });
      delete defect['holeDiameter'];
    });
    expect(thin).toContain('used up: counts as through-wall');
    expect(thin).not.toContain('leaks now');
  });

  it('gives the methods of API 579-1 no safety factor, since they have none', () => {
    const document = exampleDocument('hydrocarbon-line-corrosion.json');
    const answerBy = (method: string): string => {
      document.assessment = { designFactor: 0.72, method };
      return section(calculationSheet(designRepair(decodeCase(document).case)), 'ANSWER');
    };
    const level1 = answerBy('API 579-1 Level 1');
    expect(level1).toContain('by API 579-1 Level 1, by RSF against the pressure of the sound pipe; carries');
    expect(level1).not.toContain('safety factor');
    expect(answerBy('modified B31G')).toContain('by modified B31G, safety factor 1.389; carries');
  });

  it('shows how the leak is held, what limits it, and no instructions where it may not be tried', () => {
    const document = exampleDocument();
    const answer = section(calculationSheet(designRepair(decodeCase(document).case)), 'ANSWER');
    // The pad by its margin, 4 mm + 2 x 25 mm; the end load by pi/4 D^2 at 0.6 MPa; the jet by 2 p A.
    expect(answer).toContain('Pad 54.00 mm across, governed by the margin');
    const endLoad = 0.6e6 * (Math.PI / 4) * 0.2191 ** 2;
    expect(answer).toContain(`End load ${formatToward(endLoad, 4, 'up')} N along the pipe at the design pressure`);
    expect(answer).toContain(`Jet from the open hole ${(2 * 2e4 * (Math.PI / 4) * 0.004 ** 2).toPrecision(4)} N`);
    expect(answer).toMatch(/Highest line pressure [\d.]+ MPa set by the thinned pipe under the band/);
    expect(answer).toMatch(/tighten evenly to [\d.]+ N m and no further/);
    document.seal.siteLimit = '0.1 bar';
    const refused = designRepair(decodeCase(document).case);
    expect(refused.verdict).toBe('not repairable');
    expect(section(calculationSheet(refused), 'ANSWER')).toContain('set by the limit of the site');
    expect(section(calculationSheet(refused), 'ANSWER')).not.toContain('tighten evenly');
  });

  it('shows no number of the design where the growth was not stated', () => {
    const document = exampleDocument();
    document.defect.growth = 'none';
    const design = designRepair(decodeCase(document).case, { record: true });
    expect(design.found).toBeUndefined();
    const answer = section(calculationSheet(design), 'ANSWER');
    expect(answer).toMatch(
      /^=+ Verdict: NEEDS INPUT Missing: - defect\.growth: .* ask the inspection records: wall measured at two dates $/,
    );
    expect(answer).not.toContain('What was computed');
  });

  it('gives no leave to raise a line whose seal is tightened for the stated pressure', () => {
    const text = calculationSheet(designRepair(decodeCase(exampleDocument()).case)).replaceAll(/\s+/gu, ' ');
    const [answer = ''] = text.split('Leak seal, before the wrap');
    expect(answer).toContain('no more than this, since the leak seal is tightened for it');
    expect(answer).not.toMatch(/at most [\d.]+ MPa, by the/u);
  });

  it.each(exampleNames)('shows every field of %s as it was typed', (name) => {
    const { case: repairCase, typed } = decodeCase(exampleDocument(name));
    const given = section(calculationSheet(designRepair(repairCase), { typed }), 'THE CASE AS GIVEN');
    // Rows of a list share a table and its units.
    const single = [...typed].filter(([path]) => !path.includes('['));
    expect(single.length).toBeGreaterThan(40);
    for (const [path, { text }] of single) expect(given, path).toContain(` ${text.replace(/\s+/gu, ' ')}`);
  });

  it('shows each assumed value with its tag and its reason', () => {
    const assumed = section(calculationSheet(inventedDesign()), 'ASSUMED VALUES');
    expect(assumed).toContain('- [practice] tape waste 10 %: the case gives none');
    expect(assumed).toContain('[chosen] thickness method: substrate ignored');
    expect(assumed).toContain('- [secondary] yield strength 241 MPa: API 5L 44th, grade B');
    const real = calculationSheet(designRepair(decodeCase(exampleDocument()).case));
    expect(real.match(/nominal wall 8\.18 mm/gu)?.length).toBe(1);
  });

  it('counts the evidence by tag and names what is recalled in this very design', () => {
    const evidence = section(calculationSheet(inventedDesign()), 'EVIDENCE');
    expect(evidence).toContain('Lowest grade of evidence in this design: chosen.');
    expect(evidence).toContain('recalled 0 2 0');
    expect(evidence).toContain('allowable hoop strain, class 2, 10 years [7.5.5, table]');
    expect(evidence).toContain('overlap factor [7.5.8] (derived too)');
    expect(evidence).toContain('published 1 0 0');
  });

  it('numbers the steps by their part and prints decisions between them', () => {
    const sheet = calculationSheet(inventedDesign());
    const order = [
      '1  Pipe as found',
      '1.1  Hoop stress',
      '1.2  Failure pressure',
      'Decision',
      '2  Cure',
      '2.1  Arrhenius',
    ];
    const places = order.map((text) => sheet.indexOf(`\n${text}`));
    expect(places.every((place, index) => place > (places[index - 1] ?? 0))).toBe(true);
    expect(section(sheet, 'CALCULATION')).toContain('Because the case names no method');
  });

  it('lists each source once, in full, with how it was reached', () => {
    const sources = section(calculationSheet(inventedDesign()), 'SOURCES');
    expect(sources.match(/49 CFR Part 192/gu)?.length).toBe(1);
    expect(sources).toContain('Read in its own open text.');
  });

  it('keeps to 100 columns and is the same every time, in both systems', () => {
    for (const units of ['si', 'us'] as const) {
      const sheet = calculationSheet(inventedDesign(), { units });
      expect(Math.max(...sheet.split('\n').map((line) => line.length))).toBeLessThanOrEqual(100);
      expect(sheet).not.toMatch(/undefined|NaN|\[object|\u00a0/u);
      expect(sheet).not.toMatch(/[^\S\n]$/mu);
      expect(calculationSheet(inventedDesign(), { units })).toBe(sheet);
    }
  });

  it('puts the numbers of a warning, a reason and a decision into the units of the reader', () => {
    const said = line(
      'Keep it below {0} and over {1}.',
      exactly('limit', 'temperature', temperature.degC(60)),
      exactly('wall', 'length', length.mm(25.4)),
    );
    const warned = {
      ...inventedDesign(),
      warnings: [said],
      record: [{ sort: 'decision', what: said, because: said }],
    } as const;
    const refused = { ...warned, verdict: 'not repairable', reasons: [said] } as const;
    for (const [units, text] of [
      ['si', 'Keep it below 60.00 degC and over 25.40 mm.'],
      ['us', 'Keep it below 140.0 degF and over 1.000 in.'],
    ] as const) {
      expect(section(calculationSheet(warned, { units }), 'WARNINGS')).toContain(text);
      expect(section(calculationSheet(warned, { units }), 'CALCULATION').split(text)).toHaveLength(3);
      expect(section(calculationSheet(refused, { units }), 'ANSWER')).toContain(text);
    }
  });

  it('rounds a limit in a sentence to the safe side: up what must be reached, down what must not be passed', () => {
    const said = line(
      'At least {0}, at most {1}, about {2}.',
      roundedUp('thickness', 'length', length.mm(3.94005)),
      roundedDown('thickness', 'length', length.mm(3.94095)),
      exactly('thickness', 'length', length.mm(3.94005)),
    );
    const sheet = calculationSheet({ ...inventedDesign(), warnings: [said] });
    expect(section(sheet, 'WARNINGS')).toContain('At least 3.941 mm, at most 3.940 mm, about 3.940 mm.');
  });

  it('shows the case as it was typed where that is known', () => {
    const typed = new Map([['pipe.wallThickness', { text: '0.330 in' }]]);
    const sheet = calculationSheet(inventedDesign(), { typed });
    expect(section(sheet, 'THE CASE AS GIVEN')).toContain('Nominal wall 0.330 in');
    expect(section(calculationSheet(inventedDesign()), 'THE CASE AS GIVEN')).toContain('Nominal wall 8.38 mm');
  });

  it('states each reason of a refusal with its number and its limit, and claims no design', () => {
    const { laminate: _, extent: __, wrap: ___, mixes: ____, cures: _____, ...rest } = inventedDesign();
    const refused: RepairDesign = {
      ...rest,
      verdict: 'not repairable',
      reasons: [
        {
          text: 'the hole is too large for the laminate to span',
          found: { name: 'hole', kind: 'length', value: length.mm(180) },
          limit: { name: 'largest hole', kind: 'length', value: length.mm(127.6) },
          clause: '7.5.7',
        },
      ],
    };
    const answer = section(calculationSheet(refused), 'ANSWER');
    expect(answer).toContain('Verdict: NOT REPAIRABLE');
    expect(answer).toContain(
      'the hole is too large for the laminate to span (found hole 180 mm; limit largest hole 127.6 mm) [7.5.7]',
    );
    expect(answer).not.toContain('Laminate thickness');
    expect(answer).toContain('What was computed before the design stopped:');
  });

  it('says what is missing, why, and who has it', () => {
    const asking: RepairDesign = {
      ...inventedDesign(),
      verdict: 'needs input',
      missing: [
        {
          field: 'laminate.energyReleaseRate',
          why: 'the leak criterion rests on it',
          askWhom: 'the maker of the system',
        },
      ],
    };
    expect(section(calculationSheet(asking), 'ANSWER')).toContain(
      'laminate.energyReleaseRate: the leak criterion rests on it; ask the maker of the system',
    );
  });

  it('writes what designRepair makes, every step of it', () => {
    const design = designRepair(inventedCase, { record: true });
    const steps = design.record?.filter(({ sort }) => sort === 'step').length ?? 0;
    expect(steps).toBeGreaterThan(5);
    for (const units of ['si', 'us'] as const) {
      const sheet = calculationSheet(design, { units });
      expect(sheet).toContain(`Verdict: ${design.verdict.toUpperCase()}`);
      expect(sheet.match(/^ {4}Formula {2,3}\S+$/gmu)?.length).toBe(steps);
      expect(Math.max(...sheet.split('\n').map((line) => line.length))).toBeLessThanOrEqual(100);
      expect(sheet).not.toMatch(/undefined|NaN|\[object/u);
    }
  });

  it('says so when the steps were not recorded', () => {
    const { record: _, ...bare } = inventedDesign();
    expect(section(calculationSheet(bare), 'CALCULATION')).toContain('The steps were not recorded');
  });

  it('is an error when the record names a formula that nobody declared', () => {
    const design = inventedDesign();
    const stray = { sort: 'step', formula: 'pipe/home-made', input: {}, result: 1 } as const;
    expect(() => calculationSheet({ ...design, record: [...(design.record ?? []), stray] })).toThrow(
      'the recorded formula pipe/home-made is not in the registry',
    );
  });

  it('is a document of headings, tables and code in Markdown', () => {
    const sheet = calculationSheet(inventedDesign(), { format: 'markdown' });
    expect(sheet).toMatch(/^# Brine return line, thinned below the support\n/u);
    expect(sheet).toContain('\n## ANSWER\n');
    expect(sheet).toContain('\n### 1  Pipe as found\n');
    expect((sheet.match(/^```$/gmu)?.length ?? 1) % 2).toBe(0);
    for (const table of sheet.split('\n\n').filter((block) => block.startsWith('|'))) {
      const widths = table
        .trimEnd()
        .split('\n')
        .map((line) => line.match(/(?<!\\)\|/gu)?.length);
      expect(new Set(widths).size, table).toBe(1);
    }
  });
});

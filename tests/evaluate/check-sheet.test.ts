import { describe, expect, it } from 'vitest';
import { type ClaimedStep, checkSheet } from '../../src/formulas.js';
import { designRepair } from '../../src/index.js';
import { parseCase } from '../../src/json/index.js';
import { run } from '../cli/run.js';
import { exampleText } from '../json/examples.js';

/** The first steps of the first example, each worked out by hand from its given numbers. */
const right: readonly ClaimedStep[] = [
  // 0.6 * 219.1 / (2 * 8.18)
  { step: '1.1', claimed: '8.035 MPa' },
  // 3.1 - 0.1
  { step: '2.1', claimed: '3.000 mm' },
  // (3.6 - 3) / 5
  { step: '2.2', claimed: '0.12 mm/year' },
  // pi 4^2 / 4
  { step: '3.3', claimed: '12.57 mm2' },
];

const design = designRepair(parseCase(exampleText('cooling-water-leak.json')).case, { record: true });

describe('the claims of a whole sheet', () => {
  it('agree each to its digits', () => {
    const { agreed, departs, notHeld, message } = checkSheet(design, right);
    expect(agreed.map(({ step }) => step)).toEqual(['1.1', '2.1', '2.2', '3.3']);
    expect([departs, notHeld]).toEqual([undefined, []]);
    expect(message).toBe('All that was claimed agrees: 4 steps agree.');
  });

  it('are held in the order of the sheet up to the first that departs, with its slip', () => {
    const wrong = [
      { step: '3.5', claimed: '1.00 mm2' },
      // pi 54 / 4, the square forgotten, in the millimetres of the sheet
      ...right.filter(({ step }) => step !== '3.3'),
      { step: '3.3', claimed: '3.1416 mm2' },
    ];
    const { agreed, departs, notHeld, message } = checkSheet(design, wrong);
    expect(agreed.map(({ step }) => step)).toEqual(['1.1', '2.1', '2.2']);
    expect(departs).toMatchObject({ step: '3.3', formula: 'seal/circle-area', agrees: false });
    expect(departs?.slips).toContain('a power of 2 was forgotten');
    expect(notHeld).toEqual(['3.5']);
    expect(message).toMatch(
      /^The first step that departs is 3\.3, Area of a round hole or pad: 3\.1416 mm2 does not agree/u,
    );
    expect(message).toContain('Before it 3 steps agree. Not held to anything, since they may follow from it: 3.5.');
  });

  it('agree where a step was worked on from the rounded result of another, and that is said', () => {
    // F = 1 / 1.5 = 0.67, and 2 * 245 * 8.18 / 219.1 * 0.67 = 12.257 where all digits give 12.196.
    const rounded = [
      { step: '1.2', claimed: '0.67' },
      { step: '1.3', claimed: '12.26 MPa' },
    ];
    expect(checkSheet(design, rounded).agreed.map(({ carried }) => carried)).toEqual([[], ['1.2']]);
    expect(checkSheet(design, rounded.slice(1)).departs?.step).toBe('1.3');
  });

  it('are refused where they name no step, name one twice or are no result of it', () => {
    const check = (...claims: ClaimedStep[]) => checkSheet(design, claims);
    const [first] = right as [ClaimedStep];
    expect(() => check({ step: '1.99', claimed: '1 mm' })).toThrow(/the number of a step of the sheet, 1\.1 to/u);
    expect(() => check(first, first)).toThrow(/claimed once/u);
    expect(() => check({ step: '1.1', claimed: '8.035 mm' })).toThrow(/claimed/u);
    expect(() => checkSheet(designRepair(design.case), right)).toThrow(/with its record/u);
  });
});

describe('hoopwright check CASE.json --claims FILE', () => {
  const check = (claims: string, ...more: string[]) =>
    run(['check', 'case.json', '--claims', 'claims.txt', ...more], {
      'case.json': exampleText('cooling-water-leak.json'),
      'claims.txt': claims,
    });

  it('prints each step that agrees and the first that departs', async () => {
    const { code, out, err } = await check('# by hand\n1.1  8.035 MPa\n\n2.1, "3.000 mm"\n2.2 = 0.13 mm/year\n');
    expect([code, err]).toEqual([1, '']);
    expect(out.split('\n')[0]).toMatch(/^1\.1 {2}Hoop stress on the outside diameter: 8\.035 MPa agrees/u);
    expect(out).toContain(
      'The first step that departs is 2.2, Governing rate of wall loss: 0.13 mm/year does not agree',
    );
  });

  it('ends with 0 where all agree, and gives JSON', async () => {
    const { code, out } = await check('1.1 1165 psi\n', '--format', 'json');
    expect(code).toBe(0);
    expect(JSON.parse(out).agreed).toMatchObject([{ step: '1.1', agrees: true, digits: 4 }]);
  });

  it('refuses a line that is no claim by its number, an empty file and two ways at once', async () => {
    expect((await check('1.1 8.035 MPa\nhello\n')).err).toContain('line 2 of the claims is "hello"');
    expect((await check('# nothing\n')).err).toContain('holds no claim');
    expect((await check('1.1 8 MPa', '--claimed', '8 MPa')).code).toBe(2);
  });
});

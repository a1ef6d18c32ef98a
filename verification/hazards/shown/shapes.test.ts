import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../../src/formula/index.js';
import { type Length, length } from '../../../src/quantity/index.js';
import { type AsBuiltRecord, compareAsBuilt } from '../../../src/repair/index.js';
import { madeOf } from '../../../tests/faults/answers.js';
import { bend, leak, quietLoss, slot, withPaths } from '../../../tests/faults/cases.js';
import { goodRecord } from '../../../tests/faults/records.js';
import { show } from './judged.js';

/** Openings that are not round and pipe that is not straight: what the design refuses of them, and asks. */

describe('a slot', () => {
  show('of no stated extents', {
    from: slot,
    with: { 'defect.slot': undefined },
    verdict: 'needs input',
    asks: 'defect.slot',
  });
  show('so long that the pipe tears on', {
    from: slot,
    with: { 'defect.axialLength': '2 m', 'service.designPressure': '10 bar', 'pipe.material': weak() },
    verdict: 'not repairable',
    says: /tear on along itself/,
  });
  show('round so much of the pipe that it parts', {
    from: slot,
    with: { 'defect.circumferentialWidth': '700 mm' },
    verdict: 'not repairable',
    says: /part under its end load/,
  });
  show('all round the pipe', {
    from: slot,
    with: { 'defect.circumferentialWidth': '857 mm' },
    verdict: 'not repairable',
    says: /part under its end load/,
  });
});

/** A steel so weak that little pressure tears it. */
function weak(): unknown {
  return { name: 'soft steel', yieldStrength: '60 MPa', modulus: '200 GPa', thermalExpansion: '12e-6 1/K' };
}

describe('a fitting', () => {
  show('that is a bend of no stated radius', {
    from: bend,
    with: { 'fitting.bendRadius': undefined },
    verdict: 'needs input',
    asks: 'fitting.bendRadius',
  });
  show('that is tighter than the laminate is wide', {
    from: withPaths(bend, {
      filler: withPaths(leak, { 'filler.thicknessOverDefect': '10 mm' })['filler'],
      'defect.nearestAttachment': '20 m',
    }),
    with: { 'fitting.bendRadius': '94 mm' },
    verdict: 'not repairable',
    says: /fold over each other/,
  });
  show('on whose inside the turns pile up', {
    from: withPaths(bend, { 'defect.nearestAttachment': '20 m' }),
    with: { 'fitting.bendRadius': '100 mm' },
    verdict: 'not repairable',
    limit: 0.95,
  });
  const flanged = withPaths(quietLoss, { fitting: { kind: 'flange' } });
  show('whose metal shares the load', {
    from: flanged,
    with: { 'repair.method': 'substrate sharing load' },
    verdict: 'not covered',
    says: /counts on metal/,
  });
  show('whose metal yields', {
    from: flanged,
    with: { 'repair.method': 'substrate yielded' },
    verdict: 'not covered',
    says: /counts on metal/,
  });
  show('that is a bend under sheet', {
    from: bend,
    with: { wrap: { form: 'sheet', width: '1 m', rollLength: '10 m' } },
    verdict: 'not covered',
    says: /no sheet lies on a bend/,
  });
  show('that is a bend with a slot', {
    from: bend,
    with: {
      'defect.kind': 'through-wall slot',
      'defect.slot': { axialLength: '10 mm', circumferentialWidth: '40 mm' },
    },
    verdict: 'not covered',
    says: /the slot lies in a bend/,
  });
  show('that is a bend beside another loss', {
    from: bend,
    with: {
      'defect.growth': { depth: '0 mm/year', length: '0 mm/year' },
      'defect.neighbours': [
        {
          cause: 'external corrosion',
          gapAlong: '400 mm',
          gapRound: '0 mm',
          axialLength: '30 mm',
          circumferentialWidth: '30 mm',
          remainingWall: '3 mm',
        },
      ],
    },
    verdict: 'not covered',
    says: /neighbouring loss that no laminate covers lies on or near a bend/,
  });
  show('that is a bend under pressure', {
    from: bend,
    with: { line: { state: 'under pressure', pressure: '1 bar', writtenProcedure: 'WP-1 (invented)' } },
    verdict: 'not covered',
    says: /thinned bend/,
  });
  show('that is a bend under a bending moment', {
    from: bend,
    with: { 'loads.bendingMoment': '1 kN m' },
    verdict: 'not covered',
    says: /load on a bend/,
  });
  show('that is a bend with a seal', {
    from: bend,
    with: { seal: withPaths(leak, {})['seal'] },
    verdict: 'not covered',
    says: /sealed on a bend/,
  });
});

describe('a slot or a bend as it was made', () => {
  const design = madeOf(slot);
  const good = goodRecord(design);
  const said = (record: AsBuiltRecord) =>
    compareAsBuilt(design, record)
      .points.filter(({ point }) => point === 'slot')
      .map(({ verdict }) => verdict);

  for (const [what, changes, verdicts] of [
    ['whose opening nobody measured', { 'survey.slot': undefined }, ['not shown']],
    ['that is longer than designed for', { 'survey.slot.axialLength': length.mm(13) }, ['does not meet', 'meets']],
    [
      'that is wider than designed for',
      { 'survey.slot.circumferentialWidth': length.mm(71) },
      ['meets', 'does not meet'],
    ],
    ['with a hole beside it', { 'survey.hole': length.mm(2) }, ['meets', 'meets', 'does not meet']],
  ] as const)
    it(what, () => {
      expect(said(good)).toEqual(['meets', 'meets']);
      expect(said(withPaths(good, changes))).toEqual(verdicts);
    });

  for (const field of ['survey.slot.axialLength', 'survey.slot.circumferentialWidth'])
    it(`by a length below nothing: ${field}`, () => {
      const parameterOf = (record: AsBuiltRecord): string | undefined => {
        try {
          compareAsBuilt(design, record);
          return undefined;
        } catch (error) {
          if (!isCalculationError(error)) throw error;
          return error.parameter;
        }
      };
      expect(parameterOf(good)).toBeUndefined();
      expect(parameterOf(withPaths(good, { [field]: length.mm(-1) }))).toBe(field);
    });

  it('that is thinner, on a bend', () => {
    const thick = madeOf(withPaths(bend, { 'laminate.qualifiedPlies': 2, 'repair.life': '5 year' }));
    const short = withPaths(goodRecord(thick), { leastOverlap: length.mm(60) });
    const straight = madeOf(withPaths(bend, { fitting: 'none' }));
    const shorter = withPaths(goodRecord(straight), { leastOverlap: length.mm(60) as Length });
    expect(compareAsBuilt(straight, shorter).goodFor?.pressure).toBeGreaterThan(0);
    expect(compareAsBuilt(thick, short).goodFor?.pressure).toBeUndefined();
  });
});

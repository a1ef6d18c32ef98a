import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../../src/formula/index.js';
import { length } from '../../../src/quantity/index.js';
import { type AsBuiltRecord, compareAsBuilt, type RepairDesign } from '../../../src/repair/index.js';
import { designOf, madeOf } from '../../../tests/faults/answers.js';
import { type CaseFile, leak, quietLoss, withPaths } from '../../../tests/faults/cases.js';
import { goodRecord } from '../../../tests/faults/records.js';

/** A record that no comparison takes, and a laminate that no record rates. */

/** The input that a comparison is refused for; none where it is made. */
function refusedOf(design: RepairDesign, record: AsBuiltRecord): string | undefined {
  try {
    compareAsBuilt(design, record);
    return undefined;
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    return error.parameter;
  }
}

const YES_OR_NO = [
  ...['seal.heldDry', 'seal.puttyWasFirm', 'seal.bandsWereRemoved', 'fillerWasFirm'],
  ...['steel.isFreeOfOil', 'steel.hasRustBloom', 'hardness.hasStopped'],
];

describe('a comparison', () => {
  const design = madeOf(leak);
  const good = goodRecord(design);

  it('with a design that was not made', () => {
    const none = designOf(withPaths(quietLoss, { 'defect.kind': 'crack' }));
    expect([refusedOf(design, good), refusedOf(none, good)]).toEqual([undefined, 'design.verdict']);
  });

  it('by days that cannot be put in order', () => {
    const written = withPaths(good, { 'batches.0.mixedOn': '1 June 2026' });
    expect([refusedOf(design, good), refusedOf(design, written)]).toEqual([undefined, 'batches[0].mixedOn']);
  });

  for (const [field, path, least] of [
    ['layers', 'layers', 0],
    ['thickness', 'thickness', 0],
    ['plyThickness', 'plyThickness', 0],
    ['length', 'length', 0],
    ['leastOverlap', 'leastOverlap', -1],
    ['survey.leastWall', 'survey.leastWall', -1],
    ['survey.axialLength', 'survey.axialLength', 0],
    ['survey.circumferentialWidth', 'survey.circumferentialWidth', 0],
    ['survey.hole', 'survey.hole', -1],
    ['pressureTest.lowestPressure', 'pressureTest.lowestPressure', -1],
    ['pressureTest.highestPressure', 'pressureTest.highestPressure', -1],
    ['steel.salts[0]', 'steel.salts.0', -1],
    ['batches[0].base', 'batches.0.base', 0],
    ['batches[0].hardener', 'batches.0.hardener', 0],
    ['line.highestPressure', 'line.highestPressure', -1],
    ['batches[0].witnessHardness', 'batches.0.witnessHardness', -1],
    ['batches[0].usedWithin', 'batches.0.usedWithin', -1],
  ] as const)
    it(`by a number that can never be right: ${field}`, () => {
      const refused = [least, Number.NaN].map((value) => refusedOf(design, withPaths(good, { [path]: value })));
      expect(refused).toEqual([field, field]);
    });

  it('by an inspection without its findings', () => {
    expect(refusedOf(design, withPaths(good, { 'inspection.findings': undefined }))).toBe('inspection.findings');
    expect(refusedOf(design, withPaths(good, { 'inspection.findings': 'none' }))).toBe('inspection.findings');
  });

  it('by a name that nobody knows', () => {
    const named = { ...good, steel: { ...good.steel, salt: [1] }, hardnes: { readings: [20] } };
    expect([refusedOf(design, { ...good, ...{ hardnes: 20 } }), refusedOf(design, named as AsBuiltRecord)]).toEqual([
      'hardnes',
      'steel.salt',
    ]);
  });

  for (const field of YES_OR_NO)
    it(`by a word where somebody saw yes or no: ${field}`, () => {
      expect(refusedOf(design, withPaths(good, { [field]: 'no' }))).toBe(field);
    });
});

describe('a rating', () => {
  const pulled: CaseFile = withPaths(quietLoss, { 'loads.axialForce': '50 kN', 'laminate.lapShearStrength': '4 MPa' });
  /** The steel carries the pull beside the laminate, so that only the bond on a short overlap is against it. */
  const shared: CaseFile = withPaths(quietLoss, {
    'repair.method': 'substrate sharing load',
    'pipe.material.allowableStress': '200 MPa',
    'loads.axialForce': '50 kN',
  });
  /** Tested at no more than the worst of them holds. */
  const tested = { 'pressureTest.lowestPressure': 1e5, 'pressureTest.highestPressure': 1e5 };
  const fewer = { layers: madeOf(leak).laminate.plies - 1, ...tested };
  for (const [what, of, both, changes] of [
    ['of a repair with something else against it', leak, fewer, { fillerWasFirm: false }],
    ['of a repair that nobody measured', leak, fewer, { thickness: undefined }],
    ['of a repair below the fewest plies', leak, fewer, { layers: 1 }],
    ['of a repair that is resin on a tenth of a millimetre', leak, fewer, { 'inspection.resinRichThickness': 4.7e-3 }],
    ['of a repair on hardly any overlap', leak, fewer, { leastOverlap: length.mm(10) }],
    [
      'of a short repair that was tested as if it were whole',
      leak,
      fewer,
      { 'pressureTest.highestPressure': madeOf(leak).acceptance.pressureTest.pressure },
    ],
    ['of a short repair that was not tested', leak, fewer, { pressureTest: undefined }],
    ['of a short repair that leaked under test', leak, fewer, { 'pressureTest.leak': 'at the repair' }],
    [
      'of a repair whose strain the pull uses up',
      pulled,
      { leastOverlap: length.mm(200), ...tested },
      { leastOverlap: length.mm(60) },
    ],
    [
      'of a repair whose bond does not carry the pull',
      shared,
      { leastOverlap: length.mm(40), ...tested },
      { leastOverlap: length.mm(30) },
    ],
    [
      'of a laminate too thick for the equations of a thin one',
      // Whose tape brings its resin with it.
      withPaths(quietLoss, { resin: 'none' }),
      { leastOverlap: length.mm(120), ...tested },
      { layers: 18, thickness: length.mm(14.4) },
    ],
  ] as const) {
    const design = madeOf(of);
    const good = withPaths(goodRecord(design), both);
    it(what, () => {
      const rated = compareAsBuilt(design, good).goodFor?.pressure;
      expect(rated).toBeGreaterThan(0);
      expect(rated).toBeLessThan(design.case.service.designPressure);
      const { goodFor } = compareAsBuilt(design, withPaths(good, changes));
      expect(goodFor).toBeDefined();
      expect(goodFor?.pressure).toBeUndefined();
    });
  }
});

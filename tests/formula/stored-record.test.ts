import { describe, expect, it } from 'vitest';
import { decodeCase } from '../../src/json/index.js';
import { designRepair } from '../../src/repair/index.js';
import { calculationSheet } from '../../src/report.js';
import { exampleDocument, exampleNames } from '../json/examples.js';

describe('a recorded design', () => {
  describe.each(exampleNames)('of %s', (name) => {
    const design = designRepair(decodeCase(exampleDocument(name)).case, { record: true });
    const sheets = (stored: typeof design): string[] =>
      (['text', 'markdown'] as const).flatMap((format) =>
        (['si', 'us'] as const).map((units) => calculationSheet(stored, { format, units })),
      );

    it('holds its steps, where anything was worked out', () => {
      const steps = design.record?.filter(({ sort }) => sort === 'step').length ?? 0;
      expect(steps > 30).toBe(design.verdict !== 'not covered');
    });

    it('can be sent to a worker: its clone gives the same sheets', () => {
      const clone = structuredClone(design);
      expect(clone).toEqual(design);
      expect(sheets(clone)).toEqual(sheets(design));
    });

    it('can be stored as JSON: what is read back gives the same sheets', () => {
      expect(sheets(JSON.parse(JSON.stringify(design)))).toEqual(sheets(design));
    });
  });
});

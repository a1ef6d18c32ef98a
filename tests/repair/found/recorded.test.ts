import { describe, expect, it } from 'vitest';
import { type CaseFile, loss, type Paths, withPaths } from '../../faults/cases.js';
import { recordedOf } from '../recorded.js';

/** What the record says that was decided on the pipe as found: where it was so, and not where it was not. */

const beside = (gapAlong: string): Paths => ({
  'defect.neighbours': [
    {
      cause: 'external corrosion',
      gapAlong,
      gapRound: '0 mm',
      axialLength: '20 mm',
      circumferentialWidth: '20 mm',
      remainingWall: '5 mm',
    },
  ],
});

describe('the record of a design', () => {
  it.each<readonly [string, CaseFile, Paths, Paths]>([
    [
      'a neighbour {0} along the pipe and {1} round it is one defect with this one',
      loss,
      beside('9 mm'),
      beside('3 m'),
    ],
    ['profile left out', loss, beside('9 mm'), beside('3 m')],
    ['profile left out', loss, beside('9 mm'), { ...beside('9 mm'), 'defect.profile': undefined }],
  ])('says "%s" where it was so, and nowhere else', (text, file, where, nowhere) => {
    expect(recordedOf(withPaths(file, where))).toContain(text);
    expect(recordedOf(withPaths(file, nowhere))).not.toContain(text);
  });
});

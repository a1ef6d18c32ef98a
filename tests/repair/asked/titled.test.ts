import { describe, expect, it } from 'vitest';
import { newWarnings } from '../../faults/answers.js';
import { type CaseFile, quietLoss, withPaths } from '../../faults/cases.js';

/** What title and note plainly say of the line, against what the case states. */

const tested = { environment: 'sour', test: { method: 'wet MPI', result: 'no crack found', date: '2026-05-04' } };

describe('a title or a note', () => {
  it.each([
    ['Leak of the firewater main', { 'service.safetyCritical': true }],
    ['Petrol line P-4', { 'service.hazards': ['flammable'] }],
    ['Benzene line B-4', { 'service.hazards': ['flammable', 'toxic'] }],
    ['Barometric leg of the condenser', { 'loads.externalPressure': '1 bar' }],
    ['Cracked weld', { 'service.cracking': tested }],
  ])('that says "%s" is warned of where the case does not state it', (text, stated) => {
    for (const path of ['title', 'note']) {
      const told = withPaths(quietLoss, { [path]: text });
      expect(newWarnings(told, quietLoss), path).toEqual([expect.stringMatching(/^The title or the note says "/u)]);
      expect(newWarnings(withPaths(told, stated), withPaths(quietLoss, stated))).toEqual([]);
    }
  });

  it.each(['Emergency repair of line 4', 'no cracks', 'Crack test of 4 May', 'Line 4 beside the pump'])(
    'that says "%s" says nothing of the line',
    (title) => {
      expect(newWarnings(withPaths(quietLoss, { title }), quietLoss)).toEqual([]);
    },
  );

  it.each([
    ['Benzene line B-4', { 'service.hazards': ['flammable'] }],
    ['Barometric leg of the condenser', { 'loads.externalPressure': '0 bar' }],
  ])('that says "%s" is warned of where the case states a part of it', (title, stated) => {
    const [told, untold] = [{ ...stated, title }, stated].map((changes) => withPaths(quietLoss, changes));
    expect(newWarnings(told as CaseFile, untold as CaseFile)).toHaveLength(1);
  });

  it('of cast iron is warned of whatever the case states', () => {
    expect(newWarnings(withPaths(quietLoss, { note: 'a cast iron bend' }), quietLoss)).toHaveLength(1);
  });
});

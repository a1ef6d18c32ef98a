import { describe } from 'vitest';
import { emptyLeak, loss, quietLoss } from '../../../tests/faults/cases.js';
import { show } from './judged.js';

/** What a wrap may not lie over. */

describe('a hollow on the outside', () => {
  show('without filler', { from: loss, with: { filler: 'none' }, verdict: 'needs input', asks: 'filler' });
  show('round a hole, without filler', {
    from: emptyLeak,
    with: { 'defect.cause': 'external corrosion', filler: 'none' },
    verdict: 'needs input',
    asks: 'filler',
  });
  show('of a cause that nobody knows, without filler', {
    from: quietLoss,
    with: { 'defect.cause': 'unknown' },
    verdict: 'needs input',
    asks: 'filler',
  });
  show('with filler that is thinner than it is deep', {
    from: loss,
    with: { 'filler.thicknessOverDefect': '4.5 mm' },
    verdict: 'needs input',
    asks: 'filler.thicknessOverDefect',
  });
});

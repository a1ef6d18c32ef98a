import { saysNothing } from '../case/says-nothing.js';
import type { Designed } from '../design/design.js';
import { notShown } from './points.js';
import type { AsBuiltPoint, AsBuiltRecord } from './record.js';

/** Every hold point of the job has a name under it; the return to service is signed on what this comparison says. */
export function signaturePoint({ timeline }: Designed, { signed = [] }: AsBuiltRecord): AsBuiltPoint {
  const names = new Map(signed.map(({ holdPoint, by }) => [holdPoint, by]));
  const unsigned = timeline.steps
    .filter(({ id, sort }) => sort === 'hold point' && id !== 'return' && saysNothing(names.get(id)))
    .map(({ id }) => id);
  if (unsigned.length > 0) return notShown('signatures', `nobody has signed by name: ${unsigned.join(', ')}`);
  return { point: 'signatures', verdict: 'meets', text: 'every hold point is signed' };
}

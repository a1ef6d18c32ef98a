import type { AsBuiltVerdict } from './record.js';

/** The worst verdict decides; where there is none, nothing is against it. */
export function worst(judged: readonly { readonly verdict: AsBuiltVerdict }[]): AsBuiltVerdict {
  if (judged.some(({ verdict }) => verdict === 'does not meet')) return 'does not meet';
  return judged.some(({ verdict }) => verdict === 'not shown') ? 'not shown' : 'meets';
}

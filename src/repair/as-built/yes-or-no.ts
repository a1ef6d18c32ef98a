import { refuse } from '../../formula/index.js';
import type { AsBuiltRecord } from './record.js';

/** Refuses a word or a number where somebody saw yes or no: `'no'` would else be taken as yes. */
export function checkYesOrNo({ seal, steel, fillerWasFirm, hardness }: AsBuiltRecord): void {
  yesOrNo(seal?.heldDry, 'seal.heldDry');
  yesOrNo(seal?.puttyWasFirm, 'seal.puttyWasFirm');
  yesOrNo(seal?.bandsWereRemoved, 'seal.bandsWereRemoved');
  yesOrNo(fillerWasFirm, 'fillerWasFirm');
  if (steel !== undefined) {
    needed(steel.isFreeOfOil, 'steel.isFreeOfOil');
    needed(steel.hasRustBloom, 'steel.hasRustBloom');
  }
  if (hardness !== undefined) needed(hardness.hasStopped, 'hardness.hasStopped');
}

function yesOrNo(seen: boolean | undefined, parameter: string): void {
  if (seen !== undefined) needed(seen, parameter);
}

function needed(seen: boolean, parameter: string): void {
  if (typeof seen === 'boolean') return;
  refuse({ code: 'invalid-input', parameter, value: String(seen), unit: '', constraint: 'must be true or false' });
}

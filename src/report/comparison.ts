import type { Kind } from '../quantity/index.js';
import type { Candidate, RepairDesign, Unavailable } from '../repair/design/design.js';
import { safeSide } from '../repair/design/safe-side.js';
import type { Block } from './document.js';
import { lineOnSheet } from './line-text.js';
import { formatToward } from './number.js';
import type { ChosenOptions } from './options.js';
import { numberIn, preferredUnit, unitText } from './units.js';

/** Candidates side by side, the governing one marked: what the engineer compares first. */
function comparison(
  head: readonly [quantity: string, of: string],
  kind: Kind,
  candidates: readonly (Candidate | Unavailable)[],
  options: ChosenOptions,
  governing?: string,
): Block {
  const unit = preferredUnit(kind, head[0], options.units);
  const side = safeSide(head[0]) ?? 'up';
  return {
    sort: 'table',
    head: [`${head[0]} [${unitText(unit)}]`, head[1]],
    rows: candidates.map((each) => {
      if (!('value' in each)) return ['-', `${each.criterion}: ${whyNone(each, options)}`];
      const number = formatToward(numberIn(kind, each.value, unit), options.digits, side);
      return [number, each.criterion === governing ? `${each.criterion} (governs)` : each.criterion];
    }),
  };
}

function whyNone({ needs, because }: Unavailable, options: ChosenOptions): string {
  if (needs !== undefined) return `needs ${lineOnSheet(needs, options)}`;
  return because === undefined ? 'not computed' : lineOnSheet(because, options);
}

/** Every candidate of every quantity that has several. */
export function comparisons({ found, laminate, extent }: RepairDesign, options: ChosenOptions): Block[] {
  const blocks: Block[] = [];
  if (laminate !== undefined) {
    const { thickness, alternatives, resistance } = laminate;
    blocks.push(comparison(['thickness', 'criterion'], 'length', thickness.candidates, options, thickness.governing));
    if (resistance.candidates.length > 1)
      blocks.push(
        comparison(['resistance', 'criterion'], 'gauge pressure', resistance.candidates, options, resistance.governing),
      );
    if (alternatives.length > 0) {
      blocks.push(
        { sort: 'paragraph', text: 'For comparison, by the thickness methods that were not chosen:' },
        comparison(['thickness', 'method'], 'length', alternatives, options),
      );
    }
  }
  if (extent !== undefined)
    blocks.push(
      comparison(['overlap', 'criterion'], 'length', extent.overlap.candidates, options, extent.overlap.governing),
    );
  const strength = found?.strength;
  if (strength !== undefined && strength.methods.length > 0) {
    blocks.push(
      { sort: 'paragraph', text: 'Remaining strength of the thinned pipe at the end of life:' },
      comparison(['safe pressure', 'method'], 'gauge pressure', strength.methods, options, strength.method),
    );
  }
  return blocks;
}

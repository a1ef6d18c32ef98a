import type { Line } from '../../quantity/index.js';
import { exactly, line, roundedDown } from '../../quantity/index.js';
import type { MixDesign } from '../design/design.js';
import { workPractice } from './practice.js';

export const MIX_BY_HAND = /* @__PURE__ */ line(
  'Knead or stir for {0} to one even colour; longer eats into the working time.',
  exactly('mixing', 'time', workPractice.mixing),
);
export const PRINT = /* @__PURE__ */ line('A gloved thumb leaves no print at the coldest place.');
export const NOT_THE_CLOCK = /* @__PURE__ */ line('The clock alone never releases it.');

/** What goes into each batch, and how long it lasts. */
export function batchLines(mix: MixDesign, workingTime: number | undefined): Line[] {
  const each = line(
    '{0} of base with {1} of hardener in each batch.',
    exactly('base', 'mass', mix.base),
    exactly('hardener', 'mass', mix.hardener),
  );
  const count =
    mix.batches === 1
      ? line('One batch.')
      : line('{0} batches, each mixed when the one before is used up.', exactly('batches', 'count', mix.batches));
  if (workingTime === undefined) return [count, each];
  return [
    count,
    each,
    line('Used up within {0} of the start of mixing.', roundedDown('working time', 'time', workingTime)),
  ];
}

import type { Line } from '../../quantity/index.js';
import { exactly, line, roundedDown, weighed } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import type { MixDesign } from '../design/design-work.js';

export const PRINT = /* @__PURE__ */ line('A gloved thumb leaves no print at the coldest place.');
export const NOT_BY_TIME = /* @__PURE__ */ line('Time alone is not enough: go on only when the check passes.');

/** What goes into each batch, how long it is stirred, and how long it lasts. */
export function batchLines(mix: MixDesign, scale: number, workingTime: number | undefined): Line[] {
  const lines = [
    mix.batches === 1
      ? line('One batch.')
      : line('{0} batches, each mixed when the one before is used up.', exactly('batches', 'count', mix.batches)),
    line(
      '{0} of base with {1} of hardener in each batch, each to the nearest step of the scale.',
      weighed('base', mix.base, scale),
      weighed('hardener', mix.hardener, scale),
    ),
    line(
      'Knead or stir to one even colour. {0} are planned for that; mixing for longer leaves less time to apply the batch.',
      exactly('mixing', 'time', practice.mixingTime.value),
    ),
  ];
  if (workingTime !== undefined) {
    lines.push(line('Used up within {0} of the start of mixing.', roundedDown('working time', 'time', workingTime)));
  }
  return lines;
}

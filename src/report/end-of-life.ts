import { type Designed, endOfLife } from '../repair/index.js';
import type { Block } from './document.js';
import { lineOnSheet } from './line-text.js';
import type { ChosenOptions } from './options.js';
import { showSafely } from './safe-side.js';

/** How long the repair lasts, when it is looked at again, what is measured then, and when it comes off. */
export function endOfLifeBlocks(design: Designed, options: ChosenOptions): Block[] {
  const { life, lastDay, wallLasts, inspectWithin, inspectBy, inspections, measure, comesOff } = endOfLife(design);
  const show = showSafely(options);
  const time = (value: number, toward?: 'down'): string => show('time', 'life', value, toward);
  const wallOf = (value: number): string => show('length', 'wall', value);
  const interval = design.case.repair.inspectionInterval;
  const owner =
    interval === undefined
      ? 'no interval of the owner is stated, and none is assumed'
      : `the owner's is ${time(interval)}`;
  const rows = [
    ['Comes off after', time(life), lastDay === undefined ? '' : `from the survey; on ${lastDay}`],
    [
      'Wall lasts',
      wallLasts.known ? time(wallLasts.time, 'down') : '-',
      wallLasts.known ? `until ${wallOf(wallLasts.until)} is left, at the rate of the case` : wallLasts.because,
    ],
    ['Inspect within', time(inspectWithin, 'down'), `${inspectBy}; ${owner}`],
  ];
  const dates = inspections.map(({ after, day, leastWall }) => {
    const on = day === undefined ? '' : `, ${day}`;
    const wall = leastWall === undefined ? '' : `: ${wallOf(leastWall)} of wall or more`;
    return `after ${time(after, 'down')}${on}${wall}`;
  });
  return [
    { sort: 'heading', level: 1, text: 'END OF LIFE' },
    { sort: 'rows', rows },
    { sort: 'paragraph', text: 'Inspections, from the survey:' },
    { sort: 'list', items: dates },
    { sort: 'paragraph', text: 'Each time:' },
    { sort: 'list', items: measure.map((each) => lineOnSheet(each, options)) },
    { sort: 'paragraph', text: 'It comes off:' },
    { sort: 'list', items: comesOff.map((each) => lineOnSheet(each, options)) },
  ];
}

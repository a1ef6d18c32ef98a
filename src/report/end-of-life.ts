import { type Designed, endOfLife } from '../repair/index.js';
import type { Block } from './document.js';
import { lineOnSheet } from './line-text.js';
import type { ChosenOptions } from './options.js';
import { shownValue } from './shown-value.js';

/** How long the repair lasts, when it is looked at again, what is measured then, and when it comes off. */
export function endOfLifeBlocks(design: Designed, options: ChosenOptions): Block[] {
  const { life, lastDay, wallLasts, inspectWithin, inspectBy, inspections, measure, comesOff } = endOfLife(design);
  const time = (value: number): string => shownValue('time', 'life', value, options, true);
  const length = (name: string, value: number): string => shownValue('length', name, value, options, true);
  const interval = design.case.repair.inspectionInterval;
  const owner =
    interval === undefined
      ? 'no interval of the owner is stated, and none is assumed'
      : `the owner's is ${time(interval)}`;
  const rows = [
    ['Comes off after', time(life), lastDay === undefined ? '' : `from the survey; on ${lastDay}`],
    [
      'Wall lasts',
      wallLasts.known ? time(wallLasts.time) : '-',
      wallLasts.known ? `until ${length('wall', wallLasts.until)} is left, at the rate of the case` : wallLasts.because,
    ],
    ['Inspect within', time(inspectWithin), `${inspectBy}; ${owner}`],
  ];
  const dates = inspections.map(({ after, day, leastWall }) => {
    const on = day === undefined ? '' : `, ${day}`;
    const wall = leastWall === undefined ? '' : `: ${length('wall', leastWall)} of wall or more`;
    return `after ${time(after)}${on}${wall}`;
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

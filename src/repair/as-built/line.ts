import { missingTo, reaches } from '../../numeric/reach.js';
import type { Amount } from '../../quantity/index.js';
import type { Designed } from '../design/design.js';
import { notShown } from './points.js';
import type { AsBuiltPoint, AsBuiltRecord } from './record.js';

/** From the first touch to the cured laminate the gauge stayed at what was planned: more lifts a laminate that is soft. */
export function linePoint({ line: planned }: Designed, { line: seen }: AsBuiltRecord): AsBuiltPoint {
  const point = 'line pressure';
  if (seen === undefined)
    return notShown(point, 'nobody recorded the highest reading of the gauge until the laminate was cured');
  const { highestPressure: value } = seen;
  const found: Amount = { name: 'highest reading of the gauge', kind: 'gauge pressure', value };
  const limit: Amount = { name: 'line pressure', kind: 'gauge pressure', value: planned.pressure, toward: 'down' };
  if (reaches(planned.pressure, value))
    return { point, verdict: 'meets', text: 'the line stayed at what was planned until the cure', found, limit };
  const shortfall: Amount = {
    name: 'line pressure, over by',
    kind: 'gauge pressure',
    value: missingTo(planned.pressure, value),
  };
  const text = 'the line went above the pressure that was planned while people worked or the laminate was soft';
  return { point, verdict: 'does not meet', text, found, limit, shortfall };
}

import { criteriaOf } from './criteria.js';
import type { Readings } from './open-readings.js';
import type { Job } from './read-job.js';
import {
  fromOutside,
  ignored,
  ignoredWithRelief,
  type Loads,
  type Metal,
  type Row,
  yieldedWithCredit,
} from './thickness.js';

/** What the other methods would ask for, and two lines that no design takes. */
export function alternativesOf(job: Job, load: Loads, metal: Metal, leaking: boolean, readings: Readings): Row[] {
  const alternatives: Row[] = [];
  for (const other of ['substrate ignored', 'substrate sharing load', 'substrate yielded', 'long-term strength']) {
    if (other === (job.repair.method ?? 'substrate ignored')) continue;
    const lines = criteriaOf(job, other, load, metal, leaking, readings);
    if (lines === undefined) continue;
    const all = [...lines, ...(leaking ? ignored(load) : []), ...fromOutside(load)];
    const thickest = Math.max(...all.map((each) => each.thickness));
    if (thickest < Number.POSITIVE_INFINITY) alternatives.push({ criterion: other, value: thickest });
  }
  alternatives.push({
    criterion: 'hoop line of substrate ignored, with relief by the end load',
    value: ignoredWithRelief(load),
  });
  // Credit only while the remaining wall bears that pressure without yielding.
  const bears = (2 * metal.yieldStrength * metal.wall) / load.diameter;
  if (!leaking && metal.livePressure > 0 && metal.livePressure <= bears) {
    alternatives.push({
      criterion: 'hoop line of substrate yielded, with credit for pressure during application',
      value: yieldedWithCredit(load, metal),
    });
  }
  return alternatives;
}

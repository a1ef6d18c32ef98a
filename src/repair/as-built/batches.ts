import { exceedsTimes, missingTo, reaches } from '../../numeric/index.js';
import { dayAfter } from '../../quantity/clock.js';
import { type Amount, exactly, line, roundedDown, roundedUp } from '../../quantity/index.js';
import { hardenerDeviation, massForLayers, massWithoutWaste, mixedMass } from '../../resin/index.js';
import { practice } from '../../rules/index.js';
import { saysNothing } from '../case/says-nothing.js';
import type { Designed } from '../design/design.js';
import type { MixDesign } from '../design/design-work.js';
import { layersThatCount, plannedLayers } from './as-laid.js';
import { daysOf } from './days.js';
import { notShown } from './points.js';
import type { AsBuiltPoint, AsBuiltRecord, BatchRecord } from './record.js';
import { workingTimeThen } from './working-time-then.js';

type Use = BatchRecord['use'];

interface Recorded extends AsBuiltRecord {
  readonly batches: readonly BatchRecord[];
}

/** A fault of a batch, and what the record leaves open about it. */
interface BatchFindings {
  readonly faults: string[];
  readonly open: string[];
  readonly amounts: Amount[];
}

/** Whether enough was mixed, each batch in its ratio, in its time, from a pack in date. */
export function batchPoint(design: Designed, record: AsBuiltRecord): AsBuiltPoint {
  const { batches = [] } = record;
  const recorded: Recorded = { ...record, batches };
  const planned = mixesOf(design);
  const findings: BatchFindings = { faults: [], open: [], amounts: [] };
  for (const [use, mix] of planned) judgeAmount(design, use, mix, recorded, findings);
  for (const batch of batches) judgeBatch(design, batch, record, findings);
  judgeNumbers(batches, findings);
  judgeDays(design, recorded, findings);
  const { faults, open, amounts } = findings;
  if (faults.length > 0) return { point: 'batches', verdict: 'does not meet', ...line(faults.join('; '), ...amounts) };
  if (open.length > 0) return notShown('batches', open.join('; '));
  if (planned.length === 0) return { point: 'batches', verdict: 'meets', text: 'nothing is mixed on site' };
  return {
    point: 'batches',
    verdict: 'meets',
    ...line(
      '{0} batches in their ratio, their working time and their date',
      exactly('batches', 'count', batches.length),
    ),
  };
}

function mixesOf({ mixes: { filler, laminateResin } }: Designed): [Use, MixDesign][] {
  const planned: [Use, MixDesign][] = [];
  if (filler !== 'none') planned.push(['filler', filler]);
  if (laminateResin !== 'none') planned.push(['laminate resin', laminateResin]);
  return planned;
}

/** What has to lie on the pipe has been mixed, or fibre stays dry and a hollow stays under the wrap. */
function judgeAmount(
  design: Designed,
  use: Use,
  mix: MixDesign,
  record: Recorded,
  { faults, open, amounts }: BatchFindings,
): void {
  const repairCase = design.case;
  const own = record.batches.filter((batch) => batch.use === use);
  if (own.length === 0) {
    open.push(`no batch of ${use} was recorded`);
    return;
  }
  const stated = use === 'filler' ? repairCase.filler : repairCase.resin;
  const waste = (stated === 'none' ? undefined : stated.waste) ?? practice.mixWaste.value;
  const forPlanned = massWithoutWaste({ mass: mix.mass, waste });
  const layers = { planned: plannedLayers(design), layers: layersThatCount(design, record) };
  const least = use === 'filler' ? forPlanned : massForLayers({ mass: forPlanned, ...layers });
  const mixed = mixedMass({ batches: own });
  if (reaches(mixed, least)) return;
  faults.push(
    `${use}: ${place(amounts, roundedDown('mixed', 'mass', mixed))} mixed of ${place(amounts, roundedUp('needed', 'mass', least))} that have to lie on the pipe`,
  );
}

/** A batch that cannot be told from another is no batch that was checked. */
function judgeNumbers(batches: readonly BatchRecord[], { open }: BatchFindings): void {
  const seen = new Set<string>();
  for (const { use, number } of batches) {
    const called = `${use} ${number.trim()}`;
    if (seen.has(called)) open.push(`two batches of ${use} have the number ${number}`);
    seen.add(called);
  }
}

/**
 * A laminate is laid in one go, which may cross midnight: a layer on one that has set is another bond. And resin is laid before
 * it gels: a laminate laid on another day than the last of its resin was mixed is a slip, or not of this resin.
 */
function judgeDays({ case: { date } }: Designed, { batches, laidOn }: Recorded, { faults, open }: BatchFindings): void {
  const mixed = daysOf(batches, 'laminate resin');
  const laid = daysOf(batches, 'laminate resin', laidOn);
  if (laid !== undefined && laid.first < (date ?? ''))
    faults.push(`laid on ${laid.first}, before the survey of this design on ${date}`);
  if (mixed === undefined) return;
  if (mixed.last > dayAfter(mixed.first, practice.longestLaying.value))
    open.push(
      `resin of the laminate mixed on ${mixed.first} and on ${mixed.last}: layers of one day lie on layers that had set, and no design covers that bond`,
    );
  if (laidOn === undefined || laidOn === mixed.last) return;
  open.push(`laid on ${laidOn}, the last of its resin mixed on ${mixed.last}: one of these days is wrong`);
  for (const { number, use, useBefore } of batches)
    if (use === 'laminate resin' && laidOn > (useBefore ?? laidOn))
      faults.push(`batch ${number}: laid on ${laidOn}, to be used before ${useBefore}`);
}

/** A pot of far more than was planned heats itself, whatever its ratio. */
function judgeSize(design: Designed, batch: BatchRecord, called: string, { faults, amounts }: BatchFindings): void {
  const [, mix] = mixesOf(design).find(([use]) => use === batch.use) ?? [];
  const mass = mixedMass({ batches: [batch] });
  if (mix === undefined || !exceedsTimes(mass, practice.mostOverBatch.value, mix.batchMass)) return;
  const [found, planned] = [exactly('at once', 'mass', mass), exactly('planned batch', 'mass', mix.batchMass)];
  faults.push(
    `${called}: ${place(amounts, found)} mixed at once where ${place(amounts, planned)} are planned: so much heats itself`,
  );
}

function judgeBatch(
  design: Designed,
  batch: BatchRecord,
  record: AsBuiltRecord,
  { faults, open, amounts }: BatchFindings,
): void {
  const { filler, resin } = design.case;
  const nameless = saysNothing(batch.number);
  const called = nameless ? 'a batch without a number' : `batch ${batch.number}`;
  const mixed = batch.use === 'filler' ? filler : resin;
  if (mixed === 'none') {
    faults.push(`${called}: the design has no ${batch.use}`);
    return;
  }
  const { base: partsA, hardener: partsB } = mixed.parts;
  judgeSize(design, batch, called, { faults, open, amounts });
  const off = hardenerDeviation({ massA: batch.base, massB: batch.hardener, partsA, partsB });
  const tolerance = practice.ratioTolerance.value;
  if (!reaches(tolerance, off))
    faults.push(`${called}: hardener over by ${place(amounts, roundedUp('hardener', 'ratio', off))}`);
  if (!reaches(off, -tolerance as typeof off))
    faults.push(`${called}: hardener under by ${place(amounts, roundedUp('hardener', 'ratio', missingTo(off, 0)))}`);
  const longest = workingTimeThen(design, batch.use, record);
  if (longest !== undefined && batch.usedWithin > longest)
    faults.push(
      `${called}: ${place(amounts, roundedUp('too late', 'time', missingTo(longest, batch.usedWithin)))} beyond what is planned of its working time on that day`,
    );
  if (batch.useBefore === undefined) open.push(`${called}: nobody recorded the date before which it may be used`);
  else if (batch.mixedOn === undefined) open.push(`${called}: nobody recorded the day on which it was mixed`);
  else if (batch.mixedOn > batch.useBefore)
    faults.push(`${called}: mixed on ${batch.mixedOn}, to be used before ${batch.useBefore}`);
  if (nameless) open.push('a batch has no number');
}

/** Puts an amount among those of the text, and gives the mark that stands for it. */
function place(amounts: Amount[], amount: Amount): string {
  const index = amounts.length;
  amounts.push(amount);
  return `{${index}}`;
}

import { isDeepStrictEqual } from 'node:util';
import { type Designed, planWork, type RepairDesign, type WorkPlan } from '../../src/repair/index.js';
import { claims } from './claims/index.js';

/** What holds in every design by itself. */

/** The first number that is NaN or an infinity, by its path. */
function notFinite(value: unknown): string | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : ` is ${value}`;
  if (typeof value !== 'object' || value === null) return undefined;
  for (const [key, inner] of Object.entries(value)) {
    const found = notFinite(inner);
    if (found !== undefined) return `.${key}${found}`;
  }
  return undefined;
}

const PARTS = [
  'found',
  'line',
  'seal',
  'laminate',
  'extent',
  'wrap',
  'cures',
  'mixes',
  'rolls',
  'acceptance',
  'timeline',
  'site',
] as const satisfies readonly (keyof Designed)[];

/** At least as large, but for the last digits of sums. */
const reaches = (value: number, least: number): boolean => value >= least * (1 - 1e-9);

/** Each covered point has its plies: the tape or the sheets reach over the length and the count. */
function plies({ laminate, extent, wrap }: Designed): string | undefined {
  if (!reaches(laminate.laidThickness, laminate.thickness.value)) return 'the laid thickness is below the required';
  if (laminate.plies < laminate.leastPlies) return 'fewer plies than the least';
  if (wrap.layers < laminate.plies) return `${wrap.layers} layers are laid of ${laminate.plies} plies`;
  const core = extent.totalLength - 2 * extent.taper;
  if (!reaches(core, extent.defectLength + 2 * extent.overlap.value)) return 'the length has no room for both overlaps';
  if (wrap.form === 'tape') {
    if (wrap.layersPerPass * wrap.passes !== wrap.layers) return 'passes and layers do not agree';
    if (!reaches(wrap.fullCountLength, core)) return 'the full count does not reach over defect and overlaps';
    return reaches(wrap.overallLength, wrap.fullCountLength) ? undefined : 'the wrap is shorter than its full count';
  }
  const about = Math.PI * laminate.wrappedDiameter * wrap.layers;
  return reaches(wrap.sheetLength, about) ? undefined : 'a sheet is shorter than its turns';
}

/** What is mixed covers what is laid: batches and kits add up to the mass. */
function mixes({ mixes: all }: Designed): string | undefined {
  for (const [use, mix] of Object.entries(all)) {
    if (mix === 'none') continue;
    if (!reaches(mix.batches * mix.batchMass, mix.mass)) return `${use}: the batches do not add up to the mass`;
    if (!reaches(mix.base + mix.hardener, mix.batchMass) || !reaches(mix.batchMass, mix.base + mix.hardener))
      return `${use}: base and hardener are not the batch`;
    if (mix.kits < 1) return `${use}: no kit`;
  }
  return undefined;
}

/** The passes as they are laid, each a step inside the one below, still carry the full count where it is needed. */
function rolls({
  case: { wrap: stock, laminate: system },
  laminate,
  extent,
  wrap,
  rolls: laid,
}: Designed): string | undefined {
  if (wrap.form !== 'tape' || stock.form !== 'tape') return undefined;
  const { plyThickness } = system;
  if (laid.passes.length !== wrap.passes) return 'passes are missing';
  const tape = laid.passes.reduce((total, pass) => total + pass.tapeLength, 0);
  const rolled = laid.rolls.reduce((total, roll) => total + roll.length, 0);
  if (laid.rolls.length > 0 && !reaches(rolled, tape)) return 'the rolls end before the tape';
  if (!reaches(wrap.tapeLength, tape)) return 'the tape counted out is shorter than its passes';
  // The first layer runs steepest, and there a tape reaches farthest along the pipe.
  const first = laminate.wrappedDiameter + plyThickness;
  const sine = (stock.width * (1 - stock.overlap)) / (Math.PI * first);
  const along = stock.width / Math.sqrt(1 - sine * sine);
  const core = extent.totalLength - 2 * extent.taper;
  const short = laid.passes.find(({ from, to }) => !reaches(Math.abs(to - from) - 2 * along, core));
  return short === undefined ? undefined : `pass ${short.pass} does not reach over defect and overlaps`;
}

/** Every hour of the timeline stands in the plan and in the JSON as it does in the design. */
function times(design: Designed, plan: WorkPlan): string | undefined {
  if (!isDeepStrictEqual(plan.earliestReturn, design.timeline.earliestReturn)) return 'plan and design return apart';
  for (const step of design.timeline.steps) {
    const other = plan.steps.find(({ id }) => id === step.id);
    if (other === undefined) return `the plan lacks the step ${step.id}`;
    for (const key of ['startsAt', 'endsAt', 'duration', 'slack', 'critical'] as const)
      if (!isDeepStrictEqual(other[key], step[key])) return `the plan has another ${key} of ${step.id}`;
    if (step.endsAt < step.startsAt) return `${step.id} ends before it starts`;
  }
  const last = Math.max(...design.timeline.steps.map(({ endsAt }) => endsAt));
  const { earliestReturn } = design.timeline;
  if (earliestReturn.known && earliestReturn.time > last * (1 + 1e-12)) return 'the return lies after the last step';
  return undefined;
}

/** The first law that a design breaks; nothing where all hold. */
export function broken(design: RepairDesign): string | undefined {
  const unreal = notFinite(design);
  if (unreal !== undefined) return `design${unreal}`;
  if (design.verdict !== 'designed') {
    const told = design.verdict === 'needs input' ? design.missing.length : design.reasons.length;
    return told > 0 ? undefined : `${design.verdict}, and nothing says why`;
  }
  for (const part of PARTS) if (design[part] === undefined) return `the part ${part} is missing`;
  if (design.reasons.length + design.missing.length > 0) return 'designed with an open reason';
  const pressure = design.case.service.designPressure;
  for (const { criterion, value } of design.laminate.resistance.candidates)
    if (!reaches(value, pressure)) return `${criterion} resists ${value} of ${pressure} Pa`;
  if (!reaches(design.laminate.resistance.value, pressure)) return 'the repair resists less than the design pressure';
  const plan = planWork(design);
  return plies(design) ?? mixes(design) ?? rolls(design) ?? times(design, plan) ?? claims(design, plan);
}

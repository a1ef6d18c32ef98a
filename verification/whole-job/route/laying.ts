import { type Cure, coolestReading } from './cure.js';
import type { Extent } from './extent.js';
import type { Band } from './joints.js';
import { MIXING_TIME, type Mix, SHARE_OF_WORKING_TIME } from './mix.js';
import type { Job } from './read-job.js';
import { type Pass, passOf, type Sheet, type Tape } from './wrap.js';

const MOST_LAID_OUT = 500;
const upTo = (value: number): number => Math.ceil(value - 1e-9);

interface Laid {
  readonly pass: number;
  readonly direction: 'forward' | 'back';
  readonly from: number;
  readonly to: number;
  readonly tapeLength: number;
  readonly begins?: number;
  readonly width?: number;
}

interface RollLaid {
  readonly roll: number;
  readonly length: number;
  readonly endsInPass: number;
  readonly endsAt: number;
  readonly time?: number;
}

export interface Laying {
  readonly start: number;
  readonly end: number;
  readonly beforeDefect: number;
  readonly stagger: number;
  readonly passes: readonly Laid[];
  readonly rolls: readonly RollLaid[];
  readonly charge: string;
  readonly chargeLength: number;
  readonly workingTime: number;
  readonly allowedTime: number;
  readonly chargeTime?: number;
  readonly wrapTime?: number;
  readonly fits?: boolean;
  readonly remedies?: { readonly longestCharge?: number; readonly coolerThan?: number; readonly coolerHour?: number };
}

/** How far along the pipe a pass has come after a length of its tape: one turn without advance, the helix, one more turn. */
function reachedBy(pass: Pass, laid: number): number {
  const turn = Math.PI * pass.diameter;
  const onHelix = Math.min(Math.max(0, laid - turn), pass.turns * pass.turnLength);
  return pass.band + (onHelix / pass.turnLength) * pass.advance;
}

function tapePasses(
  job: Job,
  tape: Tape,
  extent: Extent,
  wrapped: number,
): { laid: Laid[]; passes: Pass[]; stagger: number } {
  const { wrap, laminate } = job;
  if (wrap.form !== 'tape') throw new Error('no tape');
  const half = tape.overallLength / 2;
  const first = passOf(wrap.width, wrap.overlap, wrapped + laminate.plyThickness, 1);
  const short = extent.taper - first.band;
  const stagger = short > 0 && tape.passes > 1 ? short / (tape.passes - 1) : 0;
  const build = (2 * laminate.plyThickness) / (1 - wrap.overlap);
  const laid: Laid[] = [];
  const passes: Pass[] = [];
  for (let index = 0; index < tape.passes; index++) {
    const side = (half - index * stagger) * (index % 2 === 0 ? 1 : -1);
    const pass = passOf(wrap.width, wrap.overlap, wrapped + build * (index + 0.5), 2 * Math.abs(side));
    passes.push(pass);
    laid.push({
      pass: index + 1,
      direction: index % 2 === 0 ? 'forward' : 'back',
      from: -side,
      to: side,
      tapeLength: pass.length,
    });
  }
  return { laid, passes, stagger };
}

function tapeRolls(
  job: Job,
  laid: readonly Laid[],
  passes: readonly Pass[],
  perRoll: (length: number) => number | undefined,
): RollLaid[] {
  const { rollLength } = job.wrap;
  const total = laid.reduce((sum, each) => sum + each.tapeLength, 0);
  const count = upTo(total / rollLength);
  const rolls: RollLaid[] = [];
  for (let roll = 1; roll <= count; roll++) {
    const length = roll < count ? rollLength : total - (count - 1) * rollLength;
    let into = roll < count ? roll * rollLength : total;
    let index = 0;
    while (index < laid.length - 1 && into > (laid[index] as Laid).tapeLength * (1 + 1e-12)) {
      into -= (laid[index] as Laid).tapeLength;
      index += 1;
    }
    const { from, to, pass } = laid[index] as Laid;
    const time = perRoll(length);
    rolls.push({
      roll,
      length,
      endsInPass: pass,
      endsAt: from + Math.sign(to - from) * reachedBy(passes[index] as Pass, into),
      ...(time === undefined ? {} : { time }),
    });
  }
  return rolls;
}

function sheetPasses(
  job: Job,
  sheet: Sheet,
  extent: Extent,
  wrapped: number,
  bands: readonly Band[],
): { laid: Laid[]; stagger: number } {
  const half = extent.totalLength / 2;
  const stagger = sheet.layers > 1 ? extent.taper / (sheet.layers - 1) : 0;
  if (bands.length === 0)
    return { laid: [{ pass: 1, direction: 'forward', from: -half, to: half, tapeLength: sheet.sheetLength }], stagger };
  const laid = bands.map(({ layer, begins, ends }) => ({
    pass: layer,
    direction: 'forward' as const,
    from: begins - half,
    to: ends - half,
    tapeLength: Math.PI * (wrapped + (2 * layer - 1) * job.laminate.plyThickness) + sheet.finalLap,
    begins,
    width: ends - begins,
  }));
  return { laid, stagger };
}

/** The wrap laid out from the centre of the defect, roll by roll, and whether one charge is laid in time. */
export function layingOf(
  job: Job,
  wrap: Tape | Sheet,
  extent: Extent,
  wrapped: number,
  resin: Mix | undefined,
  cure: Cure,
  bands: readonly Band[],
): Laying | undefined {
  if (wrap.form === 'sheet' && wrap.bands > MOST_LAID_OUT) return undefined;
  const { crew } = job;
  const soak = crew?.soakTime ?? 0;
  const perRoll = (length: number): number | undefined =>
    crew === undefined ? undefined : length / crew.layingSpeed + soak;
  const shape =
    wrap.form === 'tape'
      ? tapePasses(job, wrap, extent, wrapped)
      : { ...sheetPasses(job, wrap, extent, wrapped, bands), passes: [] };
  const total = wrap.form === 'tape' ? wrap.tapeLength : wrap.sheetLength;
  const laidLength = shape.laid.reduce((sum, each) => sum + each.tapeLength, 0);
  const listed = upTo(laidLength / job.wrap.rollLength);
  // Beyond what is listed the rolls that are brought stand for those that are laid.
  const count = wrap.form === 'sheet' ? shape.laid.length : listed > MOST_LAID_OUT ? wrap.rolls : listed;
  // Nobody follows a longer list.
  const rolls =
    wrap.form === 'tape' && count > MOST_LAID_OUT
      ? []
      : wrap.form === 'tape'
        ? tapeRolls(job, shape.laid, shape.passes, perRoll)
        : shape.laid.map(({ pass, to, tapeLength }, index) => {
            const time = perRoll(tapeLength);
            return {
              roll: index + 1,
              length: tapeLength,
              endsInPass: pass,
              endsAt: to,
              ...(time === undefined ? {} : { time }),
            };
          });
  const half = wrap.form === 'tape' ? wrap.overallLength / 2 : extent.totalLength / 2;
  const charge = resin !== undefined ? 'batch' : wrap.form === 'tape' ? 'roll' : 'band';
  const chargeLength =
    resin !== undefined
      ? total / resin.batches
      : rolls.length === 0
        ? job.wrap.rollLength
        : Math.max(...rolls.map(({ length }) => length));
  const mixing = resin === undefined ? 0 : MIXING_TIME;
  const allowedTime = SHARE_OF_WORKING_TIME * cure.workingTime;
  const base = {
    start: -half,
    end: half,
    beforeDefect: half - extent.defectLength / 2,
    stagger: shape.stagger,
    passes: shape.laid,
    rolls,
    charge,
    chargeLength,
    workingTime: cure.workingTime,
    allowedTime,
  };
  if (crew === undefined) return base;
  const chargeTime = mixing + soak + chargeLength / crew.layingSpeed;
  const charges = resin?.batches ?? count;
  const laying = total / crew.layingSpeed / (wrap.form === 'sheet' ? crew.crews : 1);
  const wrapTime = charges * mixing + count * soak + laying;
  const fits = chargeTime <= allowedTime;
  if (fits) return { ...base, chargeTime, wrapTime, fits };
  const longest = (allowedTime - mixing - soak) * crew.layingSpeed;
  const coolerThan = coolestReading(job, job.laminate.cure, chargeTime / SHARE_OF_WORKING_TIME);
  const coolerHour = coolerThan === undefined ? undefined : firstHourBelow(job, coolerThan);
  return {
    ...base,
    chargeTime,
    wrapTime,
    fits,
    remedies: {
      ...(longest > 0 ? { longestCharge: longest } : {}),
      ...(coolerThan === undefined ? {} : { coolerThan }),
      ...(coolerHour === undefined ? {} : { coolerHour }),
    },
  };
}

function firstHourBelow(job: Job, reading: number): number | undefined {
  let begins = 0;
  for (const { duration, pipeTemperature, airTemperature } of job.site.forecast ?? []) {
    if (Math.max(pipeTemperature, airTemperature) <= reading) return begins;
    begins += duration;
  }
  return undefined;
}

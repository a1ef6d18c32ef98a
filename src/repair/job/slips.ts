import { refuse } from '../../formula/index.js';
import { notNearSize, strangeDiameter } from '../../pipe/tables/strange-diameter.js';
import { tinyLoad } from '../../pipe/tables/tiny-load.js';
import { exactly, type Length, type Line, line, saidIn } from '../../quantity/index.js';
import { outsideUsual, slipsInto, withSlips } from '../../quantity/slips.js';
import { practice } from '../../rules/index.js';
import { siUnitOf, type Unusual } from '../case/check-case.js';
import type { DesignOptions } from '../design/design.js';
import { type Workbook, warn } from './workbook.js';

/** What the case holds that may be right and is more often a slip: each is warned of by its field, or refused. */
export function warnOfSlips(work: Workbook, unusual: readonly Unusual[], { strict }: DesignOptions): void {
  for (const { path, kind, value, usual } of unusual) {
    const [least, most] = usual;
    if (strict === true) refuseUnusual(path, kind, value, `must be within the usual ${least} to ${most}`);
    say(work, path, outsideUsual(path, kind, value, usual));
  }
  const path = work.case.pipe.outsideDiameter === undefined ? 'pipe.circumference' : 'pipe.outsideDiameter';
  if (!unusual.some((each) => each.path === path)) warnOfDiameter(work, path, strict === true);
  warnOfTinyLoads(work, strict === true);
  warnOfSwaps(work, strict === true);
}

/** Two numbers that stand beside each other, and are more often swapped than right. */
function warnOfSwaps(work: Workbook, strict: boolean): void {
  const { resin, filler, loads } = work.case;
  for (const [path, mixed] of [
    ['resin.parts.hardener', resin],
    ['filler.parts.hardener', filler],
  ] as const) {
    if (mixed === 'none') continue;
    const { base, hardener } = mixed.parts;
    warnOfSwap(work, strict, path, ['number', hardener, base], 'more hardener than base');
  }
  const { soil } = loads;
  if (soil === 'none' || soil.waterAbove === 'none') return;
  const deep = ['length', soil.waterAbove, soil.cover] as const;
  warnOfSwap(work, strict, 'loads.soil.waterAbove', deep, 'water above the surface of the soil');
}

function warnOfSwap(
  work: Workbook,
  strict: boolean,
  path: string,
  [kind, value, other]: readonly [kind: 'number' | 'length', value: number, other: number],
  means: string,
): void {
  if (value <= other) return;
  if (strict) refuseUnusual(path, kind, value, `must be at most ${other}, or there is ${means}`);
  const amounts = [exactly(path, kind, value), exactly('the other', kind, other)] as const;
  say(work, path, line(`${path} is {0} and the other {1}, which is ${means}: they may be swapped`, ...amounts));
}

/** A load far below the scale of the pipe is more often written in a unit a thousand times too small. */
function warnOfTinyLoads(work: Workbook, strict: boolean): void {
  const { loads, pipe } = work.case;
  const { outsideDiameter, circumference, wallThickness, material } = pipe;
  const { axialForce, bendingMoment, torsion, shearForce } = loads;
  const stated = [
    { path: 'loads.axialForce', kind: 'force', value: axialForce },
    { path: 'loads.bendingMoment', kind: 'moment', value: bendingMoment },
    { path: 'loads.torsion', kind: 'moment', value: torsion },
    { path: 'loads.shearForce', kind: 'force', value: shearForce },
  ] as const;
  for (const { path, kind, value } of stated) {
    if (value === 'none') continue;
    const { yieldStrength } = material;
    const span = tinyLoad({ kind, value, outsideDiameter, circumference, wallThickness, yieldStrength });
    if (span === undefined) continue;
    const [least, most] = span;
    const scale = 'from a thousandth of the load at which this pipe yields up to that load';
    if (strict) refuseUnusual(path, kind, value, `must lie within ${least} to ${most}, ${scale}`);
    const amounts = [exactly(path, kind, value), exactly(path, kind, least), exactly(path, kind, most)] as const;
    const text = `${path} is {0}, outside {1} to {2}, ${scale}`;
    say(work, path, withSlips(text, amounts, slipsInto(kind, value, span)));
  }
}

function warnOfDiameter(work: Workbook, path: string, strict: boolean): void {
  const { outsideDiameter, circumference, wallThickness } = work.case.pipe;
  const given = { outsideDiameter, circumference, wallThickness, tolerance: practice.pipeSizeTolerance.value };
  const strange = strangeDiameter(given);
  if (strange === undefined) return;
  if (strict) {
    const about = outsideDiameter === undefined ? 'go round a pipe near' : 'be near';
    const size = `a size of ASME B36.10M, of which NPS ${strange.nps} is the nearest`;
    refuseUnusual(
      path,
      'length',
      (outsideDiameter ?? circumference) as Length,
      `must ${about} ${size}, ${strange.nearest} m`,
    );
  }
  say(work, path, notNearSize(path, given, strange));
}

/** The first amount is that of the field: whoever writes the warning may put what was typed in its place. */
function say(work: Workbook, field: string, said: Line): void {
  warn(work, { ...saidIn(said, (text) => `${text}.`), field });
}

function refuseUnusual(parameter: string, kind: Unusual['kind'], value: number, constraint: string): never {
  refuse({
    code: 'invalid-input',
    parameter,
    value,
    unit: siUnitOf(kind),
    constraint: `${constraint} where a case is held strictly`,
  });
}

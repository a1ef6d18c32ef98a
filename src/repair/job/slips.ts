import { refuse } from '../../formula/index.js';
import { strangeDiameter } from '../../pipe/tables/strange-diameter.js';
import { tinyLoad } from '../../pipe/tables/tiny-load.js';
import { type Amount, exactly, type Length, roundedDown, roundedUp, siSymbol } from '../../quantity/index.js';
import { type Slip, slipsInto, slipsInWords } from '../../quantity/slips.js';
import { practice } from '../../rules/index.js';
import type { Unusual } from '../case/check-case.js';
import type { DesignOptions } from '../design/design.js';
import { type Workbook, warn } from './workbook.js';

/** What the case holds that may be right and is more often a slip: each is warned of by its field, or refused. */
export function warnOfSlips(work: Workbook, unusual: readonly Unusual[], { strict }: DesignOptions): void {
  for (const { path, kind, value, usual } of unusual) {
    const [least, most] = usual;
    if (strict === true) refuseUnusual(path, kind, value, `must be within the usual ${least} to ${most}`);
    const is = value < least ? roundedDown(path, kind, value) : roundedUp(path, kind, value);
    const span = [is, exactly(path, kind, least), exactly(path, kind, most)];
    say(work, path, 'is {0}, outside the usual {1} to {2}', span, slipsInto(kind, value, usual));
  }
  const path = work.case.pipe.outsideDiameter === undefined ? 'pipe.circumference' : 'pipe.outsideDiameter';
  if (!unusual.some((each) => each.path === path)) warnOfDiameter(work, path, strict === true);
  warnOfTinyLoads(work, strict === true);
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
    const amounts = [exactly(path, kind, value), exactly(path, kind, least), exactly(path, kind, most)];
    say(work, path, `is {0}, outside {1} to {2}, ${scale}`, amounts, slipsInto(kind, value, span));
  }
}

function warnOfDiameter(work: Workbook, path: string, strict: boolean): void {
  const { outsideDiameter, circumference, wallThickness } = work.case.pipe;
  const tolerance = practice.pipeSizeTolerance.value;
  const strange = strangeDiameter({ outsideDiameter, circumference, wallThickness, tolerance });
  if (strange === undefined) return;
  const size = `a size of ASME B36.10M, of which NPS ${strange.nps} is the nearest`;
  if (strict) {
    const about = outsideDiameter === undefined ? 'go round a pipe near' : 'be near';
    refuseUnusual(
      path,
      'length',
      (outsideDiameter ?? circumference) as Length,
      `must ${about} ${size}, ${strange.nearest} m`,
    );
  }
  const diameter = exactly(path, 'length', strange.outsideDiameter);
  const nearest = exactly(path, 'length', strange.nearest);
  // The first amount is that of the field: whoever writes the warning may put what was typed in its place.
  if (outsideDiameter !== undefined) {
    say(work, path, `is {0}, not near ${size} with {1}`, [diameter, nearest], strange.slips);
  } else {
    const amounts = [exactly(path, 'length', circumference as Length), diameter, nearest];
    say(work, path, `is {0}, a diameter of {1}, not near ${size} with {2}`, amounts, strange.slips);
  }
}

function say(work: Workbook, field: string, what: string, amounts: Amount[], slips: readonly Slip[]): void {
  const text = `${field} ${what}${slipsInWords(slips, amounts.length)}.`;
  const kind = amounts[0]?.kind ?? 'number';
  for (const { value } of slips) amounts.push(exactly(field, kind, value));
  warn(work, { text, amounts, field });
}

function refuseUnusual(parameter: string, kind: Unusual['kind'], value: number, constraint: string): never {
  const unit = kind === 'number' || kind === 'count' ? '' : siSymbol(kind);
  refuse({ code: 'invalid-input', parameter, value, unit, constraint: `${constraint} where a case is held strictly` });
}

import { decide, heading, step } from '../../formula/index.js';
import { bendFactor, thicknessAsStraight, thicknessOnFitting } from '../../laminate/index.js';
import type { Length } from '../../quantity/index.js';
import type { LaminateCriterion } from '../design/criteria.js';
import type { Candidate } from '../design/design.js';
import { need, use, type Workbook } from '../job/workbook.js';

/**
 * How much thicker a laminate is on the fitting than on straight pipe (ISO 24817, component factors): on a bend never less
 * than the hoop load at its inside. 1 on straight pipe; nothing where the radius of the bend is missing.
 */
export function factorOfFitting(work: Workbook, outsideDiameter: Length): number | undefined {
  const { fitting } = work.case;
  if (fitting === 'none') return 1;
  const { components } = work.rules;
  if (fitting.kind !== 'bend') return use(work, 'factor of a flange', components.flange);
  const { bendRadius } = fitting;
  if (bendRadius === undefined)
    return need(
      work,
      'fitting.bendRadius',
      'the laminate on a bend is the thicker the tighter the bend is: the radius of its centre line',
      'the drawing of the line, or a tape measure',
    );
  const flat = use(work, 'factor of a bend', components.bend);
  const inside = step(work.recorder, 'laminate/bend-factor', bendFactor, { bendRadius, outsideDiameter });
  decide(
    work.recorder,
    inside > flat ? 'factor of the bend by its inside' : 'factor of the bend by the rule set',
    'the larger one: the surface of a bend is shortest along its inside, and the hoop load highest',
  );
  return Math.max(flat, inside);
}

/** Every line of straight pipe, times the factor of the fitting. */
export function onFitting(
  work: Workbook,
  stressFactor: number,
  candidates: readonly Candidate<Length, LaminateCriterion>[],
): Candidate<Length, LaminateCriterion>[] {
  if (stressFactor === 1) return [...candidates];
  heading(work.recorder, 'Thickness on the fitting');
  const scaled: Candidate<Length, LaminateCriterion>[] = [];
  for (const { criterion, value: thickness } of candidates) {
    const value = step(
      work.recorder,
      'laminate/thickness-on-fitting',
      thicknessOnFitting,
      { thickness, stressFactor },
      criterion,
    );
    scaled.push({ criterion, value });
  }
  return scaled;
}

/** What a laid thickness counts by the lines of straight pipe. */
export function countedAsStraight(work: Workbook, stressFactor: number, thickness: Length): Length {
  if (stressFactor === 1) return thickness;
  return step(work.recorder, 'laminate/thickness-as-straight', thicknessAsStraight, { thickness, stressFactor });
}

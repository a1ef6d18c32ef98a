import { wrappedDiameterOf } from './filler.js';
import type { Job } from './read-job.js';
import { ruleOf } from './rules.js';
import type { Criterion } from './thickness.js';

const METHODS_ON_METAL = new Set(['substrate sharing load', 'substrate yielded']);

/** How much thicker than on straight pipe (2.9): a bend never below the hoop load of its inside; undefined where nobody knows. */
export function fittingFactor(job: Job, diameter: number): number | undefined {
  const { fitting } = job;
  if (fitting === undefined) return 1;
  if (fitting.kind === 'flange') return ruleOf(job, 'components.flange');
  if (fitting.kind !== 'bend' || fitting.bendRadius === undefined) return undefined;
  const tightness = fitting.bendRadius / diameter;
  return Math.max(ruleOf(job, 'components.bend'), (tightness - 0.25) / (tightness - 0.5));
}

/** A criterion of straight pipe as it holds on a fitting. */
export function onFitting({ criterion, thickness, resists }: Criterion, factor: number): Criterion {
  return { criterion, thickness: thickness * factor, resists: (laid) => resists(laid / factor) };
}

/** What a fitting is not designed with. */
export function fittingNotCovered({ fitting, wrap, seal, line, loads, defect, repair }: Job): boolean {
  if (fitting === undefined) return false;
  if (METHODS_ON_METAL.has(repair.method ?? '')) return true;
  if (fitting.kind === 'flange') return false;
  const flattens = [loads.bendingMoment, loads.torsion, loads.shearForce, loads.soil].some(
    (load) => load !== undefined,
  );
  const onlyStraight = wrap.form === 'sheet' || seal !== undefined || line.pressure !== undefined || flattens;
  return fitting.kind !== 'bend' || onlyStraight || defect.kind === 'through-wall slot';
}

/** A bend whose inside filler and laminate would close, so that turns fold over each other, or on which twenty lie on one place. */
export function bendTooTight(job: Job, diameter: number, laid: number): boolean {
  const { fitting, wrap } = job;
  if (fitting?.bendRadius === undefined) return false;
  const wrapped = wrappedDiameterOf(job, diameter);
  if (fitting.bendRadius <= wrapped / 2 + laid) return true;
  const shorter = insideOverOutside(job, wrapped) ?? 1;
  return wrap.form === 'tape' && shorter * (1 - wrap.overlap) < 1 / 20;
}

/** Inside of a bend over its outside, of a tube of a diameter; undefined on straight pipe. */
export function insideOverOutside({ fitting }: Job, diameter: number): number | undefined {
  const radius = fitting?.bendRadius;
  return radius === undefined ? undefined : (radius - diameter / 2) / (radius + diameter / 2);
}

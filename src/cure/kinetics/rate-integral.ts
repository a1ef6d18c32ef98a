import { refuse } from '../../formula/index.js';
import { bisect, integrate } from '../../numeric/index.js';

/** Rate of conversion [1/s] at a conversion; `left` is 1 minus it, given apart since the difference loses digits near 1. */
export type RateLaw = (conversion: number, left: number) => number;

/** How far apart the panels of the integration stand, and the conversion 1 - 2e-16 at which it is complete. */
const PANEL = 0.25;
const COMPLETE = 36;

interface Scale {
  readonly from: (conversion: number) => number;
  readonly conversion: (place: number) => number;
  readonly left: (place: number) => number;
  /** d conversion / d place. */
  readonly slope: (conversion: number, left: number) => number;
}

/** ln(a/(1 - a)): smooth for laws that start from a small conversion and end near 1. */
const logit: Scale = {
  from: (a) => Math.log(a) - Math.log1p(-a),
  conversion: (u) => 1 / (1 + Math.exp(-u)),
  left: (u) => 1 / (1 + Math.exp(u)),
  slope: (a, left) => a * left,
};

/** -ln(1 - a): for laws that start from exactly 0. */
const logLeft: Scale = {
  from: (a) => -Math.log1p(-a),
  conversion: (v) => -Math.expm1(-v),
  left: (v) => Math.exp(-v),
  slope: (_, left) => left,
};

function panelTime(rate: RateLaw, scale: Scale, from: number, to: number): number {
  const integrand = (place: number): number => {
    const [a, left] = [scale.conversion(place), scale.left(place)];
    const speed = rate(a, left);
    if (!(speed > 0 && speed < Number.POSITIVE_INFINITY)) stalled(a);
    return scale.slope(a, left) / speed;
  };
  const rough = ((to - from) / 6) * (integrand(from) + 4 * integrand((from + to) / 2) + integrand(to));
  return integrate(integrand, from, to, 1e-13 * rough);
}

function stalled(conversion: number): never {
  refuse({
    code: 'no-solution',
    parameter: 'conversion',
    value: conversion,
    unit: '',
    constraint: 'the rate must be above 0 here; the law stalls before it gets further',
  });
}

/** Time in which a law takes the conversion from `start` to `end`, at one temperature. */
export function timeBetween(rate: RateLaw, start: number, end: number): number {
  const scale = start > 0 ? logit : logLeft;
  const last = scale.from(end);
  let [place, time] = [scale.from(start), 0];
  while (place < last) {
    const next = Math.min(place + PANEL, last);
    time += panelTime(rate, scale, place, next);
    place = next;
  }
  return time;
}

/** Conversion that a law reaches from `start` in a time, at one temperature; 1 once less than 2e-16 is left. */
export function conversionAfter(rate: RateLaw, start: number, time: number): number {
  const scale = start > 0 ? logit : logLeft;
  let [place, clock] = [scale.from(start), 0];
  while (place < COMPLETE) {
    const panel = panelTime(rate, scale, place, place + PANEL);
    if (clock + panel >= time) {
      const [from, missing] = [place, time - clock];
      const found = bisect((to) => panelTime(rate, scale, from, to) - missing, from, from + PANEL);
      return scale.conversion(found?.root ?? from + PANEL);
    }
    clock += panel;
    place += PANEL;
  }
  return 1;
}

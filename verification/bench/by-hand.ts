import { budgets } from './budgets.js';
import { functionOf } from './built.js';
import { leastInFreshProcesses, type Times } from './fresh-process.js';
import { leastTimes, type Work } from './interleaved.js';
import type { Row } from './row.js';

/**
 * Formulas that are no single equation, beside the same arithmetic as a person would write it for one program: no guards, no
 * names, and of the result the one number that is compared.
 */
interface ByHand {
  readonly raw: Work;
  readonly call: Work;
}

const SECONDS = 1;
const PROCESSES = 2;

const written: Readonly<Record<string, () => ByHand>> = {
  'wrap/tape-plan, a call for four passes': tapePlan,
  'cure/equivalent-time, a call for 24 steps': equivalentTime,
};

/** A call of each against the arithmetic by hand. */
export function byHandRows(say: (what: string) => void): Row[] {
  return Object.keys(written).map((what) => {
    say(what);
    const { raw = Number.NaN, call = Number.NaN } = leastInFreshProcesses('by hand', what, PROCESSES);
    const note = `raw ${raw.toFixed(0)} ns, ${(call / raw).toFixed(2)} x`;
    return { what, measured: call, unit: 'ns', budget: budgets.call(raw), note };
  });
}

/** Times of one call and of the arithmetic [ns]. */
export function byHandTimes(what: string): Times {
  const pair = written[what]?.();
  if (pair === undefined) throw new Error(`nothing is written by hand for ${what}`);
  const { raw, call } = pair;
  if (Math.abs(raw() - call()) > 1e-9 * Math.abs(call()))
    throw new Error(`${what}: by hand ${raw()}, called ${call()}`);
  const [rawTime = Number.NaN, callTime = Number.NaN] = leastTimes([raw, call], SECONDS);
  return { raw: rawTime, call: callTime };
}

const TURN = 2 * Math.PI;

function tapePlan(): ByHand {
  const input = {
    outsideDiameter: 0.2191,
    tapeWidth: 0.1,
    overlap: 0.5,
    layerThickness: 0.0008,
    requiredLayers: 8,
    fullCountLength: 0.4,
  };
  const call = functionOf('wrap/tape-plan') as (given: typeof input) => { readonly tapeLength: number };
  return {
    raw: () => {
      const { outsideDiameter: D, tapeWidth: w, overlap: o, layerThickness: t, requiredLayers: n } = input;
      const step = w * (1 - o);
      const passes = Math.ceil(n / Math.floor(1 / (1 - o)));
      const atEdge = step / (Math.PI * (D + t));
      const length = input.fullCountLength + (2 * w) / Math.sqrt(1 - atEdge * atEdge);
      let tape = 0;
      for (let pass = 1; pass <= passes; pass++) {
        const diameter = D + (pass - 0.5) * ((2 * t) / (1 - o));
        const sine = step / (Math.PI * diameter);
        const cosine = Math.sqrt(1 - sine * sine);
        const turns = (length - w / cosine) / (step / cosine);
        tape += (turns * Math.PI * diameter) / cosine + TURN * diameter;
      }
      return tape;
    },
    call: () => call(input).tapeLength,
  };
}

function equivalentTime(): ByHand {
  const steps = Array.from({ length: 24 }, (_, hour) => ({ duration: 3600, temperature: 291 + (hour % 12) }));
  const input = {
    steps,
    referenceTemperature: 298.15,
    activationEnergy: 55_000,
    minimumTemperature: 283.15,
    mechanism: 'two-part reaction',
    testedFrom: 283.15,
    testedTo: 313.15,
  };
  const call = functionOf('cure/equivalent-time') as (given: typeof input) => { readonly equivalentTime: number };
  return {
    raw: () => {
      let time = 0;
      for (const { duration, temperature } of steps)
        if (temperature >= input.minimumTemperature)
          time += duration * Math.exp((input.activationEnergy / 8.31446261815324) * (1 / 298.15 - 1 / temperature));
      return time;
    },
    call: () => call(input).equivalentTime,
  };
}

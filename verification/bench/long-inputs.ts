import { budgets } from './budgets.js';
import { built, functionOf } from './built.js';
import { examples } from './examples.js';
import { leastInFreshProcesses, type Times } from './fresh-process.js';
import type { Row } from './row.js';

/** What grows with a list that a user brings: the least of many runs, and the first, since it is mostly asked once. */
const SECONDS = 6;
const PROCESSES = 2;
const HOURS = 1000;

const asked: Readonly<Record<string, { readonly budget: number; readonly make: () => () => number }>> = {
  'weakest stretch of a profile of 10,000 points': { budget: budgets.long.profile, make: profile },
  'best start over 1,000 h of forecast': { budget: budgets.long.bestStart, make: bestStart },
};

/** Processor time of each, since a machine that is shared gives no other honest one. */
export function longRows(say: (what: string) => void): Row[] {
  return Object.entries(asked).map(([what, { budget }]) => {
    say(what);
    const { time = Number.NaN, first = Number.NaN } = leastInFreshProcesses('long', what, PROCESSES);
    const note = `processor time; ${(first / 1e6).toFixed(0)} ms when it is asked first`;
    return { what, measured: time / 1e6, unit: 'ms', budget, note };
  });
}

/** The first run and the least of all [ns of processor time]. */
export function longTimes(what: string): Times {
  const work = asked[what]?.make();
  if (work === undefined) throw new Error(`the bench knows nothing long of the name ${what}`);
  const first = processorTime(what, work);
  let [time, spent] = [first, first];
  while (spent < SECONDS * 1e9) {
    const taken = processorTime(what, work);
    time = Math.min(time, taken);
    spent += taken;
  }
  return { time, first };
}

function processorTime(what: string, work: () => number): number {
  const start = process.cpuUsage();
  if (!Number.isFinite(work())) throw new Error(`${what} gave no number`);
  const { user, system } = process.cpuUsage(start);
  return 1000 * (user + system);
}

function profile(): () => number {
  const points = Array.from({ length: 10_000 }, (_, index) => ({
    position: index / 1000,
    depth: 0.002 + 0.001 * Math.sin(index / 40) * Math.cos(index / 700),
  }));
  const compute = functionOf('pipe/effective-area') as (input: object) => { readonly failurePressure: number };
  const input = { outsideDiameter: 0.3239, wallThickness: 0.00953, flowStress: 395e6, profile: points };
  return () => compute(input).failurePressure;
}

/** Days of one course, so that there are hours at which work may start and others at which it may not. */
function bestStart(): () => number {
  const [example] = examples;
  if (example === undefined) throw new Error('there is no example that can be designed');
  const forecast = Array.from({ length: HOURS }, (_, hour) => {
    const day = Math.sin((2 * Math.PI * hour) / 24);
    return {
      duration: 3600,
      pipeTemperature: 293 + 3 * day,
      airTemperature: 293 + 5 * day,
      relativeHumidity: 0.6 - 0.25 * day,
    };
  });
  const site = { ...example.case.site, history: undefined, forecast };
  return () => {
    const { tried } = built.root.bestStart({ ...example.case, site } as unknown as typeof example.case);
    return tried.length === HOURS ? tried.filter(({ weather }) => weather === 'go').length : Number.NaN;
  };
}

import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** Times by what was timed [ns]. */
export type Times = Readonly<Record<string, number>>;

/**
 * The least of each time over some processes that measure this and nothing else: what the compiler makes of a function
 * hangs on what ran before it, and now and then on chance. What is compared still ran in turn within one process.
 */
export function leastInFreshProcesses(measurement: string, name: string, processes: number): Times {
  const all = Array.from({ length: processes }, () => timesOf(measurement, name));
  const keys = Object.keys(all[0] ?? {});
  return Object.fromEntries(keys.map((key) => [key, Math.min(...all.map((times) => times[key] ?? Number.NaN))]));
}

function timesOf(measurement: string, name: string): Times {
  const script = fileURLToPath(new URL('measure.ts', import.meta.url));
  const args = [...process.execArgv, script, measurement, name];
  const { status, stdout } = spawnSync(process.execPath, args, {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  if (status !== 0) throw new Error(`the measurement ${measurement} of ${name} ended with ${status}`);
  return JSON.parse(stdout) as Times;
}

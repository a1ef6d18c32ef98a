import { spawnSync } from 'node:child_process';
import { performance } from 'node:perf_hooks';

/** Median over pairs of (our command : an empty Node process), run in turn so that a drifting machine hits both alike. */
export function coldStartRatio(command: readonly string[], pairs: number): number {
  const ratios = Array.from({ length: pairs }, () => wallTime(command) / wallTime(['-e', '0']));
  ratios.sort((a, b) => a - b);
  return ratios[Math.floor(pairs / 2)] ?? Number.NaN;
}

function wallTime(args: readonly string[]): number {
  const start = performance.now();
  const { status } = spawnSync(process.execPath, args, { stdio: 'ignore' });
  if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}`);
  return performance.now() - start;
}

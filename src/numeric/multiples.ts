/** Slack of the last multiple: a ninth of life that was rounded is still a ninth of it. */
const SLACK = 1e-9;

/** The multiples of a step up to an end, the first being the step itself; at most so many. */
export function multiples(step: number, end: number, most: number): number[] {
  const found: number[] = [];
  for (let n = 1; n <= most && n * step <= end * (1 + SLACK); n += 1) found.push(Math.min(n * step, end));
  return found;
}

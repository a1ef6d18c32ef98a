/** Where an increasing function passes zero in (0, infinity), by doubling and halving; undefined where it never does. */
export function rootOfIncreasing(f: (x: number) => number, start: number): number | undefined {
  let high = start;
  while (!(f(high) >= 0)) {
    high *= 2;
    if (high > 1e30) return undefined;
  }
  let low = 0;
  for (let step = 0; step < 300; step++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) return high;
    if (f(middle) >= 0) high = middle;
    else low = middle;
  }
  return high;
}

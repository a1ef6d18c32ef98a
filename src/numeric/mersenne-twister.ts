const STATE = 624;
const MIDDLE = 397;

/**
 * The 32-bit Mersenne Twister MT19937 of Matsumoto and Nishimura (ACM Transactions on Modeling and Computer Simulation 8
 * (1998) 3-30), seeded as by their `init_genrand` of 2002. The standard of C++ states its 10,000th number for the seed 5489:
 * 4123659995.
 *
 * @param seed its 32 lowest bits count
 * @returns a function that gives the next whole number from 0 to 2^32 - 1
 */
export function mersenneTwister(seed: number): () => number {
  const state = new Uint32Array(STATE);
  state[0] = seed >>> 0;
  for (let i = 1; i < STATE; i += 1) {
    const before = state[i - 1] as number;
    state[i] = Math.imul(1_812_433_253, before ^ (before >>> 30)) + i;
  }
  let next = STATE;
  return () => {
    if (next >= STATE) {
      twist(state);
      next = 0;
    }
    let y = state[next] as number;
    next += 1;
    y ^= y >>> 11;
    y ^= (y << 7) & 0x9d2c5680;
    y ^= (y << 15) & 0xefc60000;
    return (y ^ (y >>> 18)) >>> 0;
  };
}

function twist(state: Uint32Array): void {
  for (let i = 0; i < STATE; i += 1) {
    const y = ((state[i] as number) & 0x80000000) | ((state[(i + 1) % STATE] as number) & 0x7fffffff);
    state[i] = (state[(i + MIDDLE) % STATE] as number) ^ (y >>> 1) ^ (y & 1 ? 0x9908b0df : 0);
  }
}

/** A number above 0 and below 1 of a whole one from 0 to 2^32 - 1: the middle of its step. */
export function openFraction(whole: number): number {
  return (whole + 0.5) / 4_294_967_296;
}

import { describe, expect, it } from 'vitest';
import { lowestOf, meets, rootOf } from './second-route.js';

describe('a second route', () => {
  it('is met by the same number', () => {
    meets(1 + 1e-12, 1);
    meets(-250.01, -250, 1e-4);
  });

  it('is not met by a number that is off', () => {
    expect(() => meets(1.001, 1)).toThrow();
    expect(() => meets(0.999, 1)).toThrow();
  });

  it('counts for nothing where it is too coarse to see a part in a thousand, or has nothing to see', () => {
    expect(() => meets(1, 1, 2e-3)).toThrow();
    expect(() => meets(0, 0)).toThrow();
  });
});

describe('its searches', () => {
  it('find where a function passes zero, and where it is lowest', () => {
    meets(
      rootOf((x) => x * x - 2, 0, 2),
      Math.SQRT2,
      1e-15,
    );
    meets(
      lowestOf((x) => (x - 3) ** 2 + 1, 0, 10),
      3,
      1e-7,
    );
  });
});

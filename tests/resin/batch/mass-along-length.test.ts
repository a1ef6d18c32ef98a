import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Length, Mass } from '../../../src/quantity/index.js';
import { massAlongLength } from '../../../src/resin/index.js';
import { evenSpan, run } from '../../properties/spans.js';

describe('the resin for a part of the tape', () => {
  it('is all of it where the parts are all of the tape', () => {
    run(
      fc.property(evenSpan(0.1, 50), fc.array(evenSpan(0.1, 40), { minLength: 1, maxLength: 8 }), (mass, parts) => {
        const length = parts.reduce((sum, part) => sum + part, 0);
        const masses = parts.map((part) =>
          massAlongLength({ mass: mass as Mass, length: length as Length, part: part as Length }),
        );
        expect(masses.reduce((sum, each) => sum + each, 0) / mass).toBeCloseTo(1, 9);
      }),
    );
  });
});

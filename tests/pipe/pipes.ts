import fc from 'fast-check';
import type { GaugePressure, Length } from '../../src/quantity/index.js';
import { span as real } from '../properties/spans.js';

/** Fixed seed and number of runs of the property tests of this room. */
export const runs = { seed: 20261125, numRuns: 300 };

/** A pipe under pressure: from 0.1 to 40 MPa, with a wall between two fractions of its diameter. */
export const pipes = (thinnest: number, thickest: number) =>
  fc.tuple(real(0.1e6, 40e6), real(0.01, 2), real(thinnest, thickest)).map(([pressure, outsideDiameter, share]) => ({
    pressure: pressure as GaugePressure,
    outsideDiameter: outsideDiameter as Length,
    wallThickness: (outsideDiameter * share) as Length,
  }));

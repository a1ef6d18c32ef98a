import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawnInputs, formulaNamed, type Inputs, numberFrom } from './draws.js';

/** Formulas that undo each other, where the tests of their rooms do not say so already. */

const runs = { seed: 20261125, numRuns: 200 };

interface RoundTrip {
  /** The formula that is called first. */
  readonly there: string;
  /** Inputs of the first call that are not drawn. */
  readonly set?: Inputs;
  /** The formula that is called with the result of the first. */
  readonly back: string;
  /** What the result of the first is called there. */
  readonly as: string;
  /** Inputs of the second call that are called otherwise there, or that only it has. */
  readonly with?: (input: Inputs) => Inputs;
  /** The input of the first that must come back. */
  readonly returns: string;
}

const trips: readonly RoundTrip[] = [
  { there: 'pipe/remaining-life', back: 'pipe/wall-at-end-of-life', as: 'life', returns: 'requiredWall' },
  {
    there: 'pipe/defect-depth-at-end-of-life',
    back: 'pipe/wall-loss-rate',
    as: 'earlierWall',
    with: (x) => ({ laterWall: x['defectDepth'] ?? 0, elapsed: x['life'] ?? 0 }),
    returns: 'rate',
  },
  {
    there: 'pipe/design-thickness-outside',
    back: 'pipe/allowable-pressure',
    as: 'wallThickness',
    with: () => ({ allowance: 0, underTolerance: 0 }),
    returns: 'pressure',
  },
  {
    there: 'laminate/thickness-slot',
    back: 'laminate/slot-resistance',
    as: 'laminateThickness',
    returns: 'pressure',
  },
  {
    there: 'laminate/thickness-wide-slot',
    back: 'laminate/wide-slot-resistance',
    as: 'laminateThickness',
    with: () => ({ bondedShare: 0 }),
    returns: 'pressure',
  },
  {
    there: 'laminate/thickness-on-fitting',
    back: 'laminate/thickness-as-straight',
    as: 'thickness',
    returns: 'thickness',
  },
  { there: 'wrap/least-overlap', back: 'wrap/minimum-layers', as: 'overlap', returns: 'layers' },
  { there: 'wrap/least-overlap', back: 'wrap/maximum-layers', as: 'overlap', returns: 'layers' },
  {
    there: 'cure/time-at-temperature',
    back: 'cure/time-at-temperature',
    as: 'time',
    with: (x) => ({ temperature: x['referenceTemperature'] ?? 0, referenceTemperature: x['temperature'] ?? 0 }),
    returns: 'time',
  },
  {
    there: 'site/saturation-pressure',
    back: 'site/dew-point-from-vapour-pressure',
    as: 'vapourPressure',
    returns: 'temperature',
  },
  {
    there: 'site/humidity-at-steel',
    back: 'site/dew-point',
    as: 'humidity',
    with: (x) => ({ temperature: x['steelTemperature'] ?? 0 }),
    returns: 'dewPoint',
  },
  { there: 'seal/contact-pressure', back: 'seal/tension-from-contact-pressure', as: 'pressure', returns: 'tension' },
  {
    there: 'seal/fastener-torque',
    back: 'seal/tension-from-torque',
    as: 'torque',
    with: () => ({ scatter: 0.25 }),
    returns: 'tension',
  },
  { there: 'seal/fastener-tension', back: 'seal/tension-along-band', as: 'fastenerTension', returns: 'padTension' },
  {
    there: 'seal/tension-along-band',
    back: 'seal/friction-from-tensions',
    as: 'looseTension',
    with: (x) => ({ tightTension: x['fastenerTension'] ?? 0 }),
    returns: 'friction',
  },
  { there: 'seal/band-tension', set: { factor: 1 }, back: 'seal/clamping-force', as: 'tension', returns: 'force' },
  { there: 'seal/strap-capacity', set: { factor: 1 }, back: 'seal/strap-stress', as: 'tension', returns: 'strength' },
  { there: 'seal/backing-plate-thickness', back: 'seal/backing-plate-pressure', as: 'thickness', returns: 'pressure' },
];

describe('there and back', () => {
  it.each(trips.map((trip) => [trip.there, trip.returns, trip.back, trip] as const))(
    '%s keeps its %s on the way back through %s',
    (_, returns, __, { there, set, back, as, with: others }) => {
      const [first, second] = [formulaNamed(there), formulaNamed(back)];
      fc.assert(
        fc.property(fc.nat(), (draw) => {
          const input = { ...drawnInputs(first, draw), ...set };
          const made = numberFrom(first, input);
          fc.pre(made > 0 && Number.isFinite(made));
          const found = numberFrom(second, { ...input, ...others?.(input), [as]: made });
          const given = input[returns] as number;
          expect(Math.abs(found - given), JSON.stringify(input)).toBeLessThanOrEqual(1e-9 * Math.abs(given));
        }),
        runs,
      );
    },
  );
});

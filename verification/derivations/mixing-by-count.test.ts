import { describe } from 'vitest';
import {
  arealWeight,
  density,
  length,
  type Mass,
  type MassFlow,
  mass,
  type Ratio,
  ratio,
  time,
} from '../../src/quantity/index.js';
import {
  conversionLimit,
  hardenerDeviation,
  leastWeighedMass,
  massAlongLength,
  massForLayers,
  measuredFibreFraction,
  mixingRatioError,
  plyDensity,
  scaleStep,
  usableMass,
  weighingError,
} from '../../src/resin/index.js';
import { meets, rootOf, secondRoute } from './second-route.js';

/** A mix by its groups, portions, readings and seconds. */

describe('resin and hardener', () => {
  const batches = [
    { massA: 1200, massB: 396, partsA: 100, partsB: 32 },
    { massA: 850, massB: 250, partsA: 100, partsB: 32 },
  ] as const;
  const gramsOf = ({ massA, massB, partsA, partsB }: (typeof batches)[number]) => ({
    massA: mass.g(massA),
    massB: mass.g(massB),
    partsA,
    partsB,
  });
  /** Hardener that is due: portions of the stated parts, put together until the resin is used up. */
  const due = ({ massA, partsA, partsB }: (typeof batches)[number]): number => {
    let hardener = 0;
    const part = 1 / 64;
    for (let resin = massA; resin > 0; resin -= part * partsA)
      hardener += Math.min(1, resin / (part * partsA)) * part * partsB;
    return hardener;
  };

  secondRoute(
    'resin/mixing-ratio-error',
    'arithmetic',
    'portions of the stated parts, put together until the resin is used up',
    () => {
      for (const batch of batches) meets(mixingRatioError(gramsOf(batch)), batch.massB / due(batch));
    },
  );

  secondRoute('resin/hardener-deviation', 'arithmetic', 'the grams beyond those portions, or short of them', () => {
    for (const batch of batches)
      meets(hardenerDeviation(gramsOf(batch)), (batch.massB - due(batch)) / due(batch), 1e-8);
  });

  secondRoute('resin/conversion-limit', 'counting', 'pairs of groups that react until one side has none left', () => {
    for (const [resin, hardener] of [
      [5000, 5500],
      [5000, 4100],
      [5000, 5000],
    ] as const) {
      let [left, over, pairs] = [resin as number, hardener as number, 0];
      for (; left > 0 && over > 0; left--, over--) pairs++;
      meets(conversionLimit({ ratioError: (hardener / resin) as Ratio }), pairs / Math.max(resin, hardener));
    }
  });
});

describe('a scale that shows whole steps', () => {
  /** Worst error of a net mass over all that the scale may show for the empty and for the full pot, each within a step. */
  const worst = (step: number, net: number): number => {
    let most = 0;
    for (let empty = -10; empty <= 10; empty++)
      for (let full = -10; full <= 10; full++) most = Math.max(most, Math.abs(((full - empty) / 10) * step) / net);
    return most;
  };

  secondRoute('resin/weighing-error', 'counting', 'the worst of all pairs of tare and reading', () => {
    for (const [step, net] of [
      [1, 100],
      [5, 320],
    ] as const)
      meets(weighingError({ resolution: mass.g(step), mass: mass.g(net) }), worst(step, net));
  });

  secondRoute(
    'resin/least-weighed-mass',
    'counting',
    'the mass from which on no pair of tare and reading is too far off',
    () => {
      for (const [step, tolerance] of [
        [1, 0.05],
        [2, 0.02],
      ] as const) {
        const least = rootOf((net) => tolerance - worst(step, net), 1e-3, 1e5);
        const found = leastWeighedMass({ resolution: mass.g(step), tolerance: ratio.fraction(tolerance) });
        meets(mass.inG(found), least);
      }
      meets(mass.inG(leastWeighedMass({ resolution: mass.g(1) })), 40);
    },
  );

  secondRoute('resin/scale-step', 'counting', 'the step up to which no pair of tare and reading is too far off', () => {
    for (const [net, tolerance] of [
      [80, 0.05],
      [310, 0.02],
    ] as const) {
      const coarsest = rootOf((step) => worst(step, net) - tolerance, 1e-6, 1e3);
      meets(mass.inG(scaleStep({ mass: mass.g(net), tolerance: ratio.fraction(tolerance) })), coarsest);
    }
  });
});

describe('resin on its way', () => {
  secondRoute(
    'resin/mass-along-length',
    'arithmetic',
    'drops spread along the tape, and those that fall on the part',
    () => {
      for (const [all, part] of [
        [24_000, 9000],
        [7000, 7000],
        [12_500, 250],
      ] as const) {
        let drops = 0;
        for (let mm = 0; mm < all; mm++) if (mm < part) drops++;
        const found = massAlongLength({ mass: 3.6 as Mass, length: length.mm(all), part: length.mm(part) });
        meets(found, (3.6 / all) * drops);
      }
    },
  );

  secondRoute('resin/mass-for-layers', 'arithmetic', 'a wetted layer at a time', () => {
    for (const [planned, layers] of [
      [6, 9],
      [11, 4],
    ] as const) {
      let resin = 0;
      for (let layer = 0; layer < layers; layer++) resin += 3.6 / planned;
      meets(massForLayers({ mass: 3.6 as Mass, planned, layers }), resin);
    }
  });

  secondRoute('resin/usable-mass', 'arithmetic', 'grams placed second by second until the mix sets', () => {
    for (const [rate, working, mixing] of [
      [2.5, 1800, 300],
      [0.8, 2400, 240],
    ] as const) {
      let placed = 0;
      for (let second = 0; second < working; second++) if (second >= mixing) placed += rate;
      const found = usableMass({
        placingRate: (rate / 1000) as MassFlow,
        workingTime: time.s(working),
        mixingTime: time.s(mixing),
      });
      meets(mass.inG(found), placed);
    }
    // Five minutes of mixing where nothing is stated.
    meets(mass.inG(usableMass({ placingRate: 0.001 as MassFlow, workingTime: time.s(1000) })), 700);
  });
});

describe('a laminate on the balance', () => {
  secondRoute(
    'resin/measured-fibre-fraction',
    'physics',
    'the fraction at which a block of the laminate holds the fabric that went in',
    () => {
      for (const [plies, weight, rho, thickness] of [
        [6, 0.45, 2540, 2.9],
        [10, 0.3, 1790, 3.55],
      ] as const) {
        // A block of a square metre.
        const holds = (V: number): number => (thickness / 1000) * V * rho;
        const found = measuredFibreFraction({
          plies,
          arealWeight: arealWeight.kgPerM2(weight),
          fibreDensity: density.kgPerM3(rho),
          thickness: length.mm(thickness),
        });
        meets(
          found,
          rootOf((V) => holds(V) - plies * weight, 0, 1),
        );
      }
    },
  );

  secondRoute(
    'resin/ply-density',
    'physics',
    'the density at which a block of the ply weighs what its fabric and its share of fibre say',
    () => {
      for (const [weight, share, thickness] of [
        [0.8, 0.6, 0.78],
        [0.4, 0.55, 0.5],
      ] as const) {
        const found = plyDensity({
          arealWeight: arealWeight.kgPerM2(weight),
          fibreMassFraction: ratio.fraction(share),
          plyThickness: length.mm(thickness),
        });
        meets(
          found,
          rootOf((rho) => rho * (thickness / 1000) * share - weight, 0, 1e4),
        );
      }
    },
  );
});

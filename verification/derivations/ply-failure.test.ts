import { describe } from 'vitest';
import { maximumStrainRatio, maximumStressRatio, tsaiHillRatio, tsaiWuRatio } from '../../src/laminate/index.js';
import { type Modulus, modulus, type Stress, stress } from '../../src/quantity/index.js';
import { meets, rootOf, secondRoute } from './second-route.js';

/** A ply that is loaded more and more until its criterion, coded anew, is met. */

const strengths = { Xt: 1080, Xc: 620, Yt: 39, Yc: 128, S: 89 };
const ply = { E1: 39e3, E2: 8.6e3, nu: 0.28, G: 3.254e3 };
/** Along, across, shear [MPa]: each of them governs somewhere, and each sign occurs. */
const loads = [
  [200, 5, 10],
  [-150, 12, -20],
  [100, -40, 15],
  [-90, -30, 5],
  [20, 1, 40],
  [400, 1, 1],
  [-300, 2, 1],
] as const;

type Load = readonly [along: number, across: number, shear: number];

const inputOf = ([along, across, shear]: Load) => ({
  alongStress: stress.MPa(along),
  acrossStress: stress.MPa(across),
  shearStress: stress.MPa(shear),
  alongTension: stress.MPa(strengths.Xt),
  alongCompression: stress.MPa(strengths.Xc),
  acrossTension: stress.MPa(strengths.Yt),
  acrossCompression: stress.MPa(strengths.Yc),
  shearStrength: stress.MPa(strengths.S) as Stress,
});

/** How far a load can be raised before a ply holds it no longer. */
const raised = (load: Load, holds: (load: Load) => boolean): number =>
  rootOf((times) => (holds(load.map((each) => each * times) as unknown as Load) ? -1 : 1), 0, 1e4);

const inside = (value: number, pulled: number, pushed: number): boolean => value <= pulled && value >= -pushed;

describe('a ply under a load that is raised', () => {
  secondRoute('laminate/maximum-stress-ratio', 'mathematics', 'raising the load until a stress leaves its box', () => {
    const { Xt, Xc, Yt, Yc, S } = strengths;
    for (const load of loads) {
      const times = raised(load, ([a, b, c]) => inside(a, Xt, Xc) && inside(b, Yt, Yc) && inside(c, S, S));
      meets(maximumStressRatio(inputOf(load)), times);
    }
  });

  secondRoute('laminate/maximum-strain-ratio', 'mathematics', 'raising the load until a strain leaves its box', () => {
    const { Xt, Xc, Yt, Yc, S } = strengths;
    const { E1, E2, nu, G } = ply;
    for (const load of loads) {
      const times = raised(load, ([a, b, c]) => {
        const [along, across, shear] = [a / E1 - (nu * b) / E1, b / E2 - (nu * a) / E1, c / G];
        return inside(along, Xt / E1, Xc / E1) && inside(across, Yt / E2, Yc / E2) && inside(shear, S / G, S / G);
      });
      const moduli = {
        alongModulus: modulus.MPa(E1),
        acrossModulus: modulus.MPa(E2),
        shearModulus: modulus.MPa(G) as Modulus,
        poissonRatio: nu,
      };
      meets(maximumStrainRatio({ ...inputOf(load), ...moduli }), times);
    }
  });

  secondRoute(
    'laminate/tsai-hill-ratio',
    'mathematics',
    "raising the load until Hill's potential of three axes is 1",
    () => {
      for (const load of loads)
        for (const choice of ['by sign', 'tension throughout'] as const) {
          const times = raised(load, ([a, b, c]) => {
            const X = choice === 'by sign' && a < 0 ? strengths.Xc : strengths.Xt;
            const Y = choice === 'by sign' && b < 0 ? strengths.Yc : strengths.Yt;
            // Alike across and through the ply, with nothing through it.
            const H = 1 / (2 * X * X);
            const F = 1 / (Y * Y) - H;
            return F * (b - 0) ** 2 + H * (0 - a) ** 2 + H * (a - b) ** 2 + (c / strengths.S) ** 2 <= 1;
          });
          meets(tsaiHillRatio({ ...inputOf(load), strengths: choice }), times);
        }
    },
  );

  secondRoute(
    'laminate/tsai-wu-ratio',
    'mathematics',
    'raising the load until the polynomial of two tensors is 1',
    () => {
      const { Xt, Xc, Yt, Yc, S } = strengths;
      const linear = [1 / Xt - 1 / Xc, 1 / Yt - 1 / Yc, 0];
      const F11 = 1 / (Xt * Xc);
      const F22 = 1 / (Yt * Yc);
      const F12 = -Math.sqrt(F11 * F22) / 2;
      const square = [
        [F11, F12, 0],
        [F12, F22, 0],
        [0, 0, 1 / (S * S)],
      ];
      for (const load of loads) {
        const times = raised(load, (at) => {
          let sum = 0;
          at.forEach((p, i) => {
            sum += (linear[i] ?? 0) * p;
            at.forEach((q, j) => {
              sum += (square[i]?.[j] ?? 0) * p * q;
            });
          });
          return sum <= 1;
        });
        meets(tsaiWuRatio(inputOf(load)), times);
      }
    },
  );
});

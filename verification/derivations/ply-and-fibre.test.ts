import { describe } from 'vitest';
import {
  acrossExpansionSchapery,
  alongExpansion,
  fabricModulus,
  halpinTsai,
  meanModulus,
  poissonRatioLimit,
} from '../../src/laminate/index.js';
import { type Modulus, modulus, type ThermalExpansion, thermalExpansion } from '../../src/quantity/index.js';
import { meets, rootOf, secondRoute } from './second-route.js';

/** Fibre and matrix side by side, as bars that are heated and pulled. */

const phases = [
  [0.6, { E: 72.4e9, nu: 0.2, alpha: 5e-6 }, { E: 3.4e9, nu: 0.35, alpha: 63e-6 }],
  [0.45, { E: 230e9, nu: 0.25, alpha: -0.6e-6 }, { E: 2.9e9, nu: 0.38, alpha: 55e-6 }],
] as const;

type Phase = (typeof phases)[number][1 | 2];

/** One length of all bars, for a kelvin: the one at which what each is pulled by sums up to nothing. */
const commonStrain = (V: number, fibre: Phase, matrix: Phase): number =>
  rootOf((strain) => V * fibre.E * (strain - fibre.alpha) + (1 - V) * matrix.E * (strain - matrix.alpha), -1e-3, 1e-3);

describe('a ply that is heated by a kelvin', () => {
  secondRoute('laminate/along-expansion', 'physics', 'bars of one length whose forces balance', () => {
    for (const [V, fibre, matrix] of phases) {
      const found = alongExpansion({
        fibreExpansion: fibre.alpha as ThermalExpansion,
        matrixExpansion: matrix.alpha as ThermalExpansion,
        fibreModulus: fibre.E as Modulus,
        matrixModulus: matrix.E as Modulus,
        fibreVolumeFraction: V,
      });
      meets(found, commonStrain(V, fibre, matrix));
    }
  });

  secondRoute(
    'laminate/across-expansion-schapery',
    'physics',
    'a stack of slices, each pulled to the common length and thinned by it',
    () => {
      for (const [V, fibre, matrix] of phases) {
        const along = commonStrain(V, fibre, matrix);
        const slices = 1000;
        let thicker = 0;
        for (let i = 0; i < slices; i++) {
          const { E, nu, alpha } = i < V * slices ? fibre : matrix;
          const pull = E * (along - alpha);
          thicker += (alpha - (nu * pull) / E) / slices;
        }
        const found = acrossExpansionSchapery({
          fibreExpansion: fibre.alpha as ThermalExpansion,
          matrixExpansion: matrix.alpha as ThermalExpansion,
          fibrePoisson: fibre.nu,
          matrixPoisson: matrix.nu,
          fibreVolumeFraction: V,
          alongExpansion: thermalExpansion.perK(along),
        });
        meets(found, thicker);
      }
    },
  );
});

describe('a ply that is pulled', () => {
  secondRoute('laminate/fabric-modulus', 'physics', 'the curvature of the energy of fibres that lie every way', () => {
    const [V, Ef, Em, lengthFactor] = [0.35, 72e9, 3.2e9, 0.95];
    const directions = 3600;
    /** Energy per volume of fibres spread evenly over all directions of the plane, and of the matrix, which is pulled alone. */
    const energy = (strain: number): number => {
      let sum = 0;
      for (let i = 0; i < directions; i++) {
        const ofFibre = strain * Math.cos((Math.PI * i) / directions) ** 2;
        sum += (V * lengthFactor * Ef * ofFibre * ofFibre) / 2 / directions;
      }
      return sum + ((1 - V) * Em * strain * strain) / 2;
    };
    const step = 1e-3;
    const found = fabricModulus({
      orientationFactor: 3 / 8,
      lengthFactor,
      fibreModulus: modulus.Pa(Ef),
      matrixModulus: modulus.Pa(Em),
      fibreVolumeFraction: V,
    });
    meets(found, (energy(step) + energy(-step) - 2 * energy(0)) / step ** 2, 1e-8);
  });

  const mixes = [
    [72e9, 3.4e9, 0.6],
    [15e9, 2.9e9, 0.3],
    [30e9, 1.26e9, 0.7],
  ] as const;
  const ofPly = (Pf: number, Pm: number, V: number, shape: number): number =>
    halpinTsai({ fibreModulus: modulus.Pa(Pf), matrixModulus: modulus.Pa(Pm), fibreVolumeFraction: V, shape });

  secondRoute(
    'laminate/halpin-tsai',
    'physics',
    'shear round a fibre in its sheath of matrix, for a shape of 1',
    () => {
      for (const [Gf, Gm, V] of mixes) {
        // Warping is c r cos in the fibre, (a r + b/r) cos in the sheath of radius 1: warping and shear pass the interface of
        // radius sqrt(V), and the warping at the outside is that of a shear strain of 1. Cramer, for a and b.
        const s = Math.sqrt(V);
        const [p, q] = [Gf - Gm, (Gf + Gm) / (s * s)];
        const b = -p / (q - p);
        const a = 1 - b;
        // The force on the outside, per strain.
        meets(ofPly(Gf, Gm, V, 1), Gm * (a - b));
      }
    },
  );

  secondRoute(
    'laminate/halpin-tsai',
    'mathematics',
    'springs in a row, each stiffer by the shape times the matrix',
    () => {
      for (const [Pf, Pm, V] of mixes)
        for (const shape of [0.5, 1, 2, 10]) {
          const give = (P: number): number => 1 / (P + shape * Pm);
          const whole = rootOf((P) => V * give(Pf) + (1 - V) * give(Pm) - give(P), Pm, Pf);
          meets(ofPly(Pf, Pm, V, shape), whole);
        }
    },
  );

  const laminates = [
    [24e9, 14e9],
    [12e9, 60e9],
  ] as const;

  secondRoute(
    'laminate/poisson-ratio-limit',
    'physics',
    'the contraction at which some strain first costs no energy',
    () => {
      for (const [Ec, Ea] of laminates) {
        /** Least energy of any stress of size 1, over all its directions; axes scaled so that both moduli are 1. */
        const least = (nu: number): number => {
          let lowest = Number.POSITIVE_INFINITY;
          for (let i = 0; i < 720; i++) {
            const [c, a] = [Math.cos((Math.PI * i) / 720), Math.sin((Math.PI * i) / 720)];
            const [sc, sa] = [c * Math.sqrt(Ec), a * Math.sqrt(Ea)];
            lowest = Math.min(lowest, (sc * sc) / Ec + (sa * sa) / Ea - (2 * nu * sc * sa) / Ec);
          }
          return lowest;
        };
        const found = poissonRatioLimit({ hoopModulus: modulus.Pa(Ec), axialModulus: modulus.Pa(Ea) });
        meets(
          found,
          rootOf((nu) => -least(nu), 0, 10),
          1e-8,
        );
      }
    },
  );

  secondRoute(
    'laminate/mean-modulus',
    'arithmetic',
    'the number that is as many times the lower as the higher is of it',
    () => {
      for (const [Ec, Ea] of laminates) {
        const mean = rootOf((E) => E / Math.min(Ec, Ea) - Math.max(Ec, Ea) / E, 1e9, 1e11);
        meets(meanModulus({ hoopModulus: modulus.Pa(Ec), axialModulus: modulus.Pa(Ea) }), mean);
      }
    },
  );
});

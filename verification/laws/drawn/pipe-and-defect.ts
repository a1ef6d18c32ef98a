import { corrosionRate, length, stress } from '../../../src/quantity/index.js';
import type { RepairCase } from '../../../src/repair/index.js';
import { partWall } from '../../../tests/repair/example-case.js';
import type { Random } from '../../oracles/random.js';
import { between, often, oneOf } from './draw.js';

const PIPES = [
  [60.3, 3.91],
  [114.3, 6.02],
  [168.3, 7.11],
  [219.1, 8.18],
  [323.9, 8.38],
  [508, 12.7],
] as const;

/** This version designs for none of these; they are drawn so that a worse case of one is seen too. */
const OTHER_KINDS = ['through-wall slot', 'crack', 'dent', 'gouge', 'lamination', 'bulge', 'seam defect'] as const;

/** A pipe, and a defect that lies on it. */
export function pipeAndDefect(random: Random, leaks: boolean): Pick<RepairCase, 'pipe' | 'defect'> {
  const [outside, wall] = oneOf(random, PIPES);
  const yieldStrength = between(random, 200, often(random, 0.85) ? 450 : 550);
  const axial = between(random, 10, 1.5 * outside);
  // Now and then a groove all round, or a pit near the limit of the methods.
  const width = often(random, 0.85) ? between(random, 10, 1.2 * outside) : between(random, 0.5, 3.1) * outside;
  const left = often(random, 0.9)
    ? between(random, leaks ? 0.3 : 0.25, 0.95) * wall
    : between(random, 0.12, 0.3) * wall;
  const rate = (most: number) => corrosionRate.mmPerYear(between(random, 0, most));
  const cause = leaks
    ? 'internal corrosion'
    : oneOf(random, ['external corrosion', 'external corrosion', 'internal corrosion'] as const);
  const grows = often(random, 0.5) || (cause === 'internal corrosion' && often(random, 0.8));
  return {
    pipe: {
      outsideDiameter: length.mm(outside),
      wallThickness: length.mm(wall),
      cathodicProtection: 'none',
      material: {
        name: 'carbon steel',
        yieldStrength: stress.MPa(yieldStrength),
        tensileStrength: stress.MPa(yieldStrength * between(random, 1.2, 1.6)),
        allowableStress: stress.MPa(yieldStrength * between(random, 0.45, 0.72)),
        modulus: partWall.pipe.material.modulus,
        thermalExpansion: partWall.pipe.material.thermalExpansion,
      },
    },
    defect: {
      kind: leaks ? 'through-wall hole' : often(random, 0.98) ? 'metal loss' : oneOf(random, OTHER_KINDS),
      nearestAttachment: length.m(between(random, 0.4, 10)),
      neighbours: 'none',
      cause,
      axialLength: length.mm(axial),
      circumferentialWidth: length.mm(width),
      remainingWall: length.mm(left),
      readingError: often(random, 0.5) ? 'none' : length.mm(between(random, 0, 0.1 * wall)),
      growth: grows || leaks ? { depth: rate(leaks ? 0.05 : 0.2), length: rate(0.5) } : 'none',
      ...(!leaks && often(random, 0.15) ? { profile: pitOf(axial, wall - left) } : {}),
      ...(leaks
        ? { holeDiameter: length.mm(Math.min(axial, width, between(random, 1, often(random, 0.8) ? 12 : 24))) }
        : {}),
    },
  };
}

/** The deepest place in the middle, sloping up to both ends. */
function pitOf(axial: number, depth: number): NonNullable<RepairCase['defect']['profile']> {
  const shares = [0, 0.6, 1, 0.6, 0];
  return shares.map((share, index) => ({
    position: length.mm((axial * index) / (shares.length - 1)),
    depth: length.mm(depth * share),
  }));
}

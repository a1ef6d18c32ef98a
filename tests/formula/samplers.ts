import type { ColumnKind, InputDeclaration } from '../../src/formula/index.js';
import type { Random } from '../../verification/oracles/random.js';

/**
 * Lists for the tests that draw inputs. A formula whose lists need more than rising positions and plausible values has a
 * sampler of its own here, by its id and the name of the input.
 */
type Sampler = (random: Random) => readonly unknown[];

/** Spans of columns, in SI. */
const SPANS: Readonly<Partial<Record<ColumnKind, readonly [number, number]>>> = {
  length: [0.0005, 0.01],
  area: [1e-4, 1e-2],
  volume: [1e-4, 5e-3],
  time: [600, 86400],
  mass: [0.1, 5],
  force: [1e2, 1e5],
  moment: [10, 1e4],
  energy: [1e3, 1e6],
  'gauge pressure': [1e5, 1e7],
  'absolute pressure': [9e4, 1.1e5],
  stress: [1e6, 4e8],
  modulus: [1e9, 2e11],
  density: [900, 2600],
  'areal weight': [0.1, 1],
  'energy release rate': [50, 500],
  'leak severity': [1e5, 1e7],
  temperature: [278, 318],
  'temperature difference': [0, 10],
  'thermal expansion': [1e-6, 1e-4],
  ratio: [0.05, 0.9],
  strain: [1e-4, 4e-3],
  angle: [0, 1.5],
  'corrosion rate': [1e-12, 1e-11],
  speed: [0.001, 1],
  'volume flow': [1e-6, 1e-3],
  'mass flow': [1e-4, 1],
  'activation energy': [3e4, 9e4],
  'rate constant': [1e-6, 1e-3],
  'molar mass': [0.05, 0.5],
  'specific energy': [1e4, 5e5],
  'specific heat': [800, 2500],
  conductivity: [1e-4, 1e-2],
  'molar heat capacity': [8, 9],
  'temperature coefficient': [1e-6, 1e-4],
  'salt conductance factor': [1e-3, 1e-1],
  'line load': [1e3, 1e6],
  'line moment': [1, 1e3],
  curvature: [1e-3, 1],
  'extensional stiffness': [1e7, 1e9],
  'coupling stiffness': [1e3, 1e6],
  'bending stiffness': [10, 1e5],
  number: [60, 90],
  count: [1, 12],
};

/** Columns that run along something: each row lies beyond the one before. */
const RISING = /position|time|distance|start|end|station/iu;

const between = (random: Random, [low, high]: readonly [number, number]): number => low + (high - low) * random();

/** Lives of table columns, in seconds: 2, 10 and 20 years. */
const LIVES = [63_115_200, 315_576_000, 631_152_000];

/** Steps of a job, in order. */
const JOB = ['permit', 'steel', 'filler', 'wrap', 'cure', 'test'];

/** A ply that is stiffer along its fibres than across, with what any list of plies may ask of it. */
const drawPly = (random: Random): Record<string, number> => ({
  thickness: between(random, [1e-4, 2e-3]),
  angle: between(random, [-1.5, 1.5]),
  alongModulus: between(random, [20e9, 160e9]),
  acrossModulus: between(random, [4e9, 12e9]),
  shearModulus: between(random, [2e9, 6e9]),
  poissonRatio: between(random, [0.05, 0.35]),
});
const drawPlies =
  (more: (random: Random) => Record<string, number>): Sampler =>
  (random) =>
    Array.from({ length: 2 + Math.floor(random() * 6) }, () => ({ ...drawPly(random), ...more(random) }));
const growing = drawPlies((random) => ({
  alongExpansion: between(random, [-1e-6, 8e-6]),
  acrossExpansion: between(random, [1e-5, 5e-5]),
  alongSwelling: between(random, [0, 0.05]),
  acrossSwelling: between(random, [0.2, 0.6]),
}));
const strong = drawPlies((random) => ({
  alongTension: between(random, [5e8, 2e9]),
  alongCompression: between(random, [3e8, 1e9]),
  acrossTension: between(random, [2e7, 6e7]),
  acrossCompression: between(random, [8e7, 2e8]),
  shearStrength: between(random, [3e7, 8e7]),
}));

const SAMPLERS: Readonly<Record<string, Sampler>> = {
  'laminate/default-strains table': (random) =>
    LIVES.map((life) => ({
      life,
      hoop: between(random, [2e-3, 4e-3]),
      axial: between(random, [2e-3, 4e-3]),
      softAxial: between(random, [1e-3, 2e-3]),
    })),
  'acceptance/barcol-shop-mean readings': (random) =>
    Array.from({ length: 10 + Math.floor(random() * 3) }, () => between(random, [30, 60])),
  'site/schedule steps': (random) => JOB.map((name) => ({ name, duration: between(random, [0, 86_400]) })),
  'site/schedule links': (random) => {
    const links = JOB.slice(1).map((step, index) => ({ step, after: JOB[Math.floor(random() * (index + 1))] }));
    return [...links, { step: JOB[4], after: JOB[Math.floor(random() * 4)] }];
  },
  'site/schedule entered': (random) => [{ step: JOB[3], at: between(random, [0, 200_000]) }],
  // Holes of three sizes, leaking at what the equation gives for a bond of 250 J/m2 or so.
  'laminate/energy-from-tests tests': (random) =>
    Array.from({ length: 9 + Math.floor(random() * 3) }, (_, place) => ({
      holeDiameter: 0.01 + 0.005 * (place % 3),
      laminateThickness: between(random, [0.005, 0.007]),
      pressure: between(random, [22e6, 24e6]) / (1 + (place % 3) / 2),
    })),
  'laminate/laminate-stiffness plies': drawPlies(() => ({})),
  'laminate/effective-constants plies': drawPlies(() => ({})),
  'laminate/mid-plane-strains plies': drawPlies(() => ({})),
  'laminate/hygrothermal-resultants plies': growing,
  'laminate/laminate-expansion plies': growing,
  'laminate/ply-stresses plies': growing,
  'laminate/first-ply-failure plies': strong,
  'laminate/performance-factor table': (random) => LIVES.map((life) => ({ life, factor: between(random, [0.3, 0.9]) })),
};

/** A list of three to nine rows, by the declared columns. */
export function drawList(random: Random, id: string, name: string, input: InputDeclaration<never>): readonly unknown[] {
  const own = SAMPLERS[`${id} ${name}`];
  if (own !== undefined) return own(random);
  const { columns } = input as InputDeclaration;
  if (columns === undefined)
    throw new Error(`${id}: ${name} is a list without columns, so nothing can be drawn for it`);
  const rows = 3 + Math.floor(random() * 7);
  const reached: Record<string, number> = {};
  return Array.from({ length: rows }, () => {
    const row: Record<string, unknown> = {};
    for (const [column, kind] of Object.entries(columns)) {
      const span = SPANS[kind];
      if (span === undefined) {
        throw new Error(
          `${id}: tests/formula/samplers.ts has no span for ${kind} (${column} of ${name}); add one, or a sampler`,
        );
      }
      const drawn = kind === 'count' ? Math.floor(between(random, span)) : between(random, span);
      reached[column] = (reached[column] ?? 0) + drawn;
      row[column] = RISING.test(column) ? reached[column] : drawn;
    }
    return Object.keys(columns).join() === 'value' ? row['value'] : row;
  });
}

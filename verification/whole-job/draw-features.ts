import { type Draw, drawFrom, figure, randomNumbers } from './random.js';

type Drawn = Record<string, unknown>;

const partOf = (document: Drawn, key: string): Drawn => document[key] as Drawn;

/** Puts what few cases have into a share of the plain ones, by numbers of its own: the plain draw stays as it is. */
export function drawFeatures(document: Drawn, seed: number): Drawn {
  const draw = drawFrom(randomNumbers(Math.imul(seed, 0x85ebca6b) ^ 0x5bd1e995));
  const slot = draw.chance(0.14);
  return slot ? withSlot(document, draw) : document;
}

/** An opening short one way and long the other, in either direction, and seldom anything else than a laminate alone over it. */
function withSlot(document: Drawn, { chance, one, between }: Draw): Drawn {
  const { holeDiameter: _, holeAtEndOfLife: __, profile: ___, ...defect } = partOf(document, 'defect');
  const [long, wide] = [millimetres(defect['axialLength']), millimetres(defect['circumferentialWidth'])];
  const axial = one(0.9, 0.9, 0.1, 0.3) * between(0.5, 1) * long;
  const round = (axial > 0.4 * long ? one(0.1, 0.3) : one(0.9, 0.9, 0.4)) * between(0.5, 1) * wide;
  const { method, ...repair } = partOf(document, 'repair');
  return {
    ...document,
    ...(chance(0.85) ? { line: { state: 'empty, dry, isolated, vented' } } : {}),
    defect: {
      ...defect,
      kind: 'through-wall slot',
      ...(chance(0.97)
        ? { slot: { axialLength: `${figure(axial, 3)} mm`, circumferentialWidth: `${figure(round, 3)} mm` } }
        : {}),
    },
    repair: { ...repair, ...(chance(0.1) && method !== undefined ? { method } : {}) },
    ...(chance(0.9) ? { seal: undefined } : {}),
  };
}

function millimetres(text: unknown): number {
  return Number(String(text).replace(' mm', ''));
}

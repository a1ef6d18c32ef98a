import { withConfirmed } from './draw-confirmed.js';
import { withNeighbours } from './draw-neighbours.js';
import { type Draw, drawFrom, figure, randomNumbers } from './random.js';

type Drawn = Record<string, unknown>;

const partOf = (document: Drawn, key: string): Drawn => document[key] as Drawn;
const millimetres = (text: unknown): number => Number(String(text).replace(' mm', ''));
const EMPTY_LINE = { state: 'empty, dry, isolated, vented' };

/** Puts what few cases have into a share of the plain ones, by numbers of its own: the plain draw stays as it is. */
export function drawFeatures(document: Drawn, seed: number): Drawn {
  const draw = drawFrom(randomNumbers(Math.imul(seed, 0x85ebca6b) ^ 0x5bd1e995));
  const features: readonly (readonly [number, (document: Drawn, draw: Draw) => Drawn])[] = [
    [0.14, withSlot],
    [0.16, onFitting],
    [0.14, withTestsOfHoles],
    [0.06, withLittleLap],
    [0.25, withConfirmed],
    [0.25, withNeighbours],
    [0.25, onHeldLine],
  ];
  return features.reduce((drawn, [share, put]) => (draw.chance(share) ? put(drawn, draw) : drawn), document);
}

/** An opening short one way and long the other, in either direction, and seldom anything else than a laminate alone over it. */
function withSlot(document: Drawn, { chance, one, between }: Draw): Drawn {
  const { holeDiameter: _, holeAtEndOfLife: __, profile: ___, ...defect } = partOf(document, 'defect');
  const [long, wide] = [millimetres(defect['axialLength']), millimetres(defect['circumferentialWidth'])];
  const axial = one(0.9, 0.9, 0.1, 0.3) * between(0.5, 1) * long;
  const round = (axial > 0.4 * long ? one(0.1, 0.3) : one(0.9, 0.9, 0.4)) * between(0.5, 1) * wide;
  const { method, ...repair } = partOf(document, 'repair');
  const slot = { axialLength: `${figure(axial, 3)} mm`, circumferentialWidth: `${figure(round, 3)} mm` };
  const { seal, ...rest } = document;
  return {
    ...rest,
    ...(chance(0.85) ? { line: EMPTY_LINE } : {}),
    defect: { ...defect, kind: 'through-wall slot', ...(chance(0.97) ? { slot } : {}) },
    repair: { ...repair, ...(chance(0.1) && method !== undefined ? { method } : {}) },
    ...(seal !== undefined && chance(0.1) ? { seal } : {}),
  };
}

/** A bend or a flange, mostly under what is designed there; now and then what is not. */
function onFitting(document: Drawn, { chance, one, between, as }: Draw): Drawn {
  const kind = one('bend', 'bend', 'bend', 'bend', 'flange', 'flange', one('tee', 'reducer', 'nozzle', 'weld'));
  const { method, ...repair } = partOf(document, 'repair');
  const ignored = { repair: { ...repair, ...(chance(0.15) && method !== undefined ? { method } : {}) } };
  if (kind !== 'bend') return { ...document, fitting: { kind }, ...ignored };
  const pipe = partOf(document, 'pipe');
  const diameter = millimetres(pipe['outsideDiameter'] ?? `${millimetres(pipe['circumference']) / Math.PI} mm`);
  const radius = one(1.5, 3, 5, between(0.8, 8)) * diameter;
  const bend = { kind, ...(chance(0.97) ? { bendRadius: `${figure(radius, 4)} mm` } : {}) };
  const { seal, ...rest } = document;
  const loads = partOf(document, 'loads');
  const unbent = { bendingMoment: 'none', torsion: 'none', shearForce: 'none', soil: 'none' };
  const tape = {
    form: 'tape',
    width: as(40, 100, 'mm', 2),
    overlap: `${one(50, 52, 55, 70)} %`,
    rollLength: as(8, 25, 'm', 3),
  };
  return {
    ...rest,
    fitting: bend,
    ...ignored,
    ...(chance(0.9) ? { line: EMPTY_LINE } : {}),
    ...(chance(0.95) ? { loads: { ...loads, ...unbent } } : {}),
    ...(chance(0.95) ? { wrap: tape } : {}),
    ...(seal !== undefined && chance(0.1) ? { seal } : {}),
  };
}

/** What a maker's tests of pressurised holes would show in place of one energy, scattered, seldom too few or too alike. */
function withTestsOfHoles(document: Drawn, { chance, one, between }: Draw): Drawn {
  const { energyReleaseRate, ...laminate } = partOf(document, 'laminate');
  if (energyReleaseRate === undefined) return document;
  const sizes = one([10, 15, 25], [12, 20, 30], [10, 12.5, 15, 20, 25], chance(0.3) ? [10, 10.5, 25] : [15, 20, 25]);
  const count = chance(0.1) ? 8 : one(9, 9, 10, 12, 15);
  const thickness = between(4, 8);
  const scatter = one(0.03, 0.08, 0.15);
  const holeTests = Array.from({ length: count }, (_, index) => {
    const hole = sizes[index % sizes.length] as number;
    // A hole in a thick plate, near enough: 250 J/m2 at 35 GPa over d/pi, less its bending.
    const pressure = (Math.sqrt((0.25 * 35e3 * Math.PI) / hole) / (1 + hole / 20)) * (1 + scatter * between(-1, 1));
    return {
      holeDiameter: `${hole} mm`,
      laminateThickness: `${figure(thickness * between(0.97, 1.03), 3)} mm`,
      pressure: `${figure(pressure, 3)} MPa`,
    };
  });
  return { ...document, laminate: { ...laminate, holeTests } };
}

/** Turns that hardly lap, or lie edge to edge. */
function withLittleLap(document: Drawn, { between }: Draw): Drawn {
  const wrap = partOf(document, 'wrap');
  return wrap['form'] === 'tape'
    ? { ...document, wrap: { ...wrap, overlap: `${figure(between(3, 49), 2)} %` } }
    : document;
}

/** A line that soil or anchors hold along itself, tied in on a colder or a warmer day; seldom nobody says. */
function onHeldLine(document: Drawn, { chance, between }: Draw): Drawn {
  const { heldLine: _, ...loads } = partOf(document, 'loads');
  if (chance(0.03)) return { ...document, loads };
  const service = partOf(document, 'service');
  const site = partOf(document, 'site');
  const [steel, hot] = [site['pipeTemperature'], service['designTemperature']].map((text) =>
    Number(String(text).replace(' degC', '')),
  ) as [number, number];
  const heldLine = { tieInTemperature: `${figure(steel + between(-25, 25) * (chance(0.5) ? 0.3 : 1), 3)} degC` };
  const coldest = chance(0.9)
    ? { lowestTemperature: `${figure(Math.min(steel, hot) - between(0.1, 20), 3)} degC` }
    : {};
  return { ...document, loads: { ...loads, heldLine }, service: { ...coldest, ...service } };
}

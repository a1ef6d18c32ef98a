import { type Layers, thicknessBiaxial, usage } from './biaxial.js';
import { type Beside, equivalentPressure, MORE_OVAL, momentOfRing } from './loads-of-case.js';
import type { Readings } from './open-readings.js';
import { rootOfIncreasing } from './root.js';

/** What every method for the thickness of the laminate works on. */
export interface Loads {
  readonly pressure: number;
  /** On the pipe. */
  readonly diameter: number;
  /** Over the filler. */
  readonly wrapped: number;
  /** What the case holds beside the pressure. */
  readonly beside: Beside;
  readonly hoopModulus: number;
  readonly axialModulus: number;
  readonly poisson: number;
  readonly hoopStrain: number;
  readonly axialStrain: number;
}

/** The metal that counts. */
export interface Metal {
  readonly modulus: number;
  readonly yieldStrength: number;
  readonly wall: number;
  readonly allowableStress?: number;
  readonly safePressure?: number;
  readonly livePressure: number;
}

export interface Row {
  readonly criterion: string;
  readonly value: number;
}

/** A criterion: the thickness that it asks for, and the pressure that a thickness resists. */
export interface Criterion {
  readonly criterion: string;
  readonly thickness: number;
  readonly resists: (thickness: number) => number;
}

const endForce = (pressure: number, diameter: number): number => (pressure * Math.PI * diameter * diameter) / 4;

/** The pressure at which a thickness that grows with it reaches the one that lies there. */
function pressureAt(thicknessOf: (pressure: number) => number, laid: number): number {
  return rootOfIncreasing((pressure) => thicknessOf(pressure) - laid, 1e5) ?? Number.POSITIVE_INFINITY;
}

function of(criterion: string, thicknessOf: (pressure: number) => number, pressure: number): Criterion {
  return {
    criterion,
    thickness: Math.max(0, thicknessOf(pressure)),
    resists: (laid) => pressureAt(thicknessOf, laid),
  };
}

/** Substrate ignored (repair-design.md, 2.5): hoop without relief, a push along the pipe counts against it; axial on the pipe. */
export function ignored(load: Loads): Criterion[] {
  const { diameter: D, wrapped: Dw, beside, poisson } = load;
  const hoop = (pressure: number): number =>
    ((equivalentPressure(beside, pressure) * Dw) / 2 - (beside.pushed / (Math.PI * Dw)) * poisson) /
    (load.hoopModulus * load.hoopStrain);
  const axial = (pressure: number): number => {
    const line = (endForce(pressure, D) + beside.force) / (Math.PI * D * load.axialModulus);
    return (line - ((pressure * D) / 2) * (poisson / load.hoopModulus)) / load.axialStrain;
  };
  const rows = [
    of('hoop strain, substrate ignored', hoop, load.pressure),
    of('axial strain, substrate ignored', axial, load.pressure),
  ];
  if (beside.force !== 0) {
    const alone = beside.force / (Math.PI * D * load.axialModulus * load.axialStrain);
    rows.push({
      criterion: 'axial strain, external force without pressure',
      thickness: alone,
      resists: () => Number.POSITIVE_INFINITY,
    });
  }
  return rows;
}

/** The hoop line with the relief that the end load of the pressure gives: shown beside, never taken. */
export function ignoredWithRelief(load: Loads): number {
  const { diameter: D, wrapped: Dw, pressure, poisson } = load;
  const end = (endForce(pressure, D) + load.beside.pushed) / (Math.PI * Dw);
  const round = equivalentPressure(load.beside, pressure);
  return Math.max(0, ((round * Dw) / 2 - end * poisson) / (load.hoopModulus * load.hoopStrain));
}

/** Substrate shares the load (2.3, issue on the joints, part two, items 1, 3 and 21). */
export function sharing(load: Loads, metal: Metal, readings: Readings): Criterion[] {
  const { diameter: D, wrapped: Dw, beside } = load;
  const { force } = beside;
  const round = (pressure: number): number => equivalentPressure(beside, pressure);
  const s = metal.allowableStress as number;
  const safe = metal.safePressure as number;
  const E = metal.modulus;
  const sh = Math.min(s, E * load.hoopStrain);
  const sa = Math.min(s, E * load.axialStrain);
  const hoop = (pressure: number): number =>
    (Dw / (2 * sh)) * (E / load.hoopModulus) * (round(pressure) - (((safe * sh) / s) * D) / Dw);
  const axial = (pressure: number): number =>
    (E / (load.axialModulus * sa)) * ((endForce(pressure, D) + force - Math.PI * D * sa * metal.wall) / (Math.PI * Dw));
  const rows = [
    of('hoop stress of the pipe, load shared', hoop, load.pressure),
    of('axial stress of the pipe, load shared', axial, load.pressure),
  ];
  // What the pipe may still take after the pressure that was there (2.3). The strain of the laminate is held by the line above
  // and by the one in both directions, each with the whole pressure.
  const spare = s - (metal.livePressure * Dw) / (2 * metal.wall);
  // A pipe that the pressure at work takes to its allowable stress has nothing left to share, whatever is laid on it.
  const live = (pressure: number): number =>
    spare > 0
      ? ((E * (round(pressure) - metal.livePressure) * Dw) / 2 / spare - E * metal.wall) / load.hoopModulus
      : Number.POSITIVE_INFINITY;
  rows.push(of('hoop stress of the pipe, with pressure during application', live, load.pressure));
  const pipeWall = (safe * D) / (2 * s);
  const atWork = Math.max(
    (metal.livePressure * D) / (2 * pipeWall),
    (endForce(metal.livePressure, D) + beside.pull) / (Math.PI * D * pipeWall),
  );
  // A wall that counts for nothing bears nothing while people work either.
  const left = metal.livePressure > 0 && pipeWall > 0 ? s - atWork : s;
  const layersAt = (allowableStress: number): Layers => ({
    pipeModulus: E,
    pipePoisson: 0.3,
    pipeWall,
    hoopModulus: load.hoopModulus,
    axialModulus: load.axialModulus,
    poisson: load.poisson,
    allowableStress,
    hoopStrain: load.hoopStrain,
    axialStrain: load.axialStrain,
    circles: Dw / D,
  });
  // Closed ends and open ones. By the note what comes after the laminate was laid is shared within what stress is left,
  // and no ply is saved against a laminate laid on an empty pipe.
  const states: readonly { readonly layers: Layers; readonly before: number }[] =
    readings.biaxialAtWork === 'library'
      ? [{ layers: layersAt(left), before: 0 }]
      : [
          { layers: layersAt(s), before: 0 },
          { layers: layersAt(left), before: metal.livePressure },
        ];
  const lines = states.flatMap(({ layers, before }) =>
    [1, 0].map((ends) => ({
      layers,
      loads: (pressure: number): readonly [number, number] => [
        ((round(pressure) - before) * Dw) / 2,
        // Without the end load of the pressure a push is left of the force of the case.
        (ends * endForce(round(pressure) - before, D) + (before > 0 ? 0 : ends > 0 ? force : beside.pushed)) /
          (Math.PI * D),
      ],
    })),
  );
  rows.push({
    criterion: 'both stresses of the pipe and both strains, closed ends, load shared',
    thickness:
      left > 0
        ? Math.max(...lines.map(({ layers, loads }) => thicknessBiaxial(layers, ...loads(load.pressure))))
        : Number.POSITIVE_INFINITY,
    resists: (laid) =>
      Math.min(
        ...lines.map(
          ({ layers, loads }) =>
            rootOfIncreasing((pressure) => usage(layers, laid, ...loads(pressure)) - 1, 1e5) ??
            Number.POSITIVE_INFINITY,
        ),
      ),
  });
  return rows;
}

/** The pipe yields (2.4): the metal carries its yield stress or what it has at the strain of the laminate. */
export function yielded(load: Loads, metal: Metal): Criterion[] {
  const { diameter: D, wrapped: Dw, beside } = load;
  const { force } = beside;
  const sh = Math.min(metal.yieldStrength, metal.modulus * load.hoopStrain);
  const sa = Math.min(metal.yieldStrength, metal.modulus * load.axialStrain);
  const hoop = (pressure: number): number =>
    ((equivalentPressure(beside, pressure) * Dw) / 2 - sh * metal.wall) / (load.hoopModulus * load.hoopStrain);
  const axial = (pressure: number): number =>
    (endForce(pressure, D) + force - Math.PI * D * sa * metal.wall) /
    (Math.PI * D * load.axialModulus * load.axialStrain);
  return [
    of('hoop strain, substrate yielded', hoop, load.pressure),
    of('axial strain, substrate yielded', axial, load.pressure),
  ];
}

/** The yielded form with credit for pressure during application (2.4, PCC-2 Eq. 4): shown beside, never taken. */
export function yieldedWithCredit(load: Loads, metal: Metal): number {
  const { pressure, wrapped: Dw, hoopModulus: Ec, hoopStrain: eps } = load;
  const A = (equivalentPressure(load.beside, pressure) * Dw) / 2 - metal.yieldStrength * metal.wall;
  if (A <= 0) return 0;
  const S = metal.modulus * metal.wall;
  const b = A - (metal.livePressure * Dw) / 2 - eps * S;
  return (b + Math.sqrt(b * b + 4 * eps * A * S)) / (2 * eps * Ec);
}

/** Long-term strength round the pipe, substrate ignored (2.7); along it by strain. */
export function longTerm(load: Loads, strength: number): Criterion[] {
  const hoop = (pressure: number): number => (equivalentPressure(load.beside, pressure) * load.wrapped) / 2 / strength;
  return [of('hoop stress, long-term strength, substrate ignored', hoop, load.pressure), ...ignored(load).slice(1)];
}

/** What presses from outside (2.10), the pipe ignored: the ring buckles at three times it, and soil bends the ring. */
export function fromOutside(load: Loads): Criterion[] {
  const { beside, wrapped: Dw, hoopModulus: Ec, axialModulus: Ea, poisson, hoopStrain: eps } = load;
  if (!(beside.outside > 0)) return [];
  // Long ring: 2 E' (t/D)3 over 3.
  const plate = Ec / (1 - (poisson * poisson * Ea) / Ec);
  const rows: Criterion[] = [
    {
      criterion: 'ring buckling under pressure from outside',
      thickness: Dw * Math.cbrt((3 * beside.outside) / (2 * plate)),
      resists: () => Number.POSITIVE_INFINITY,
    },
  ];
  if (beside.soil > 0) {
    const moment = MORE_OVAL * beside.soil * momentOfRing(Dw / 2);
    // Strain of thrust and bending at the edge: N/(E t) + 6 M/(E t2) = eps.
    const bent = (pressure: number): number => {
      const thrust = (equivalentPressure(beside, pressure) * Dw) / 2 - (poisson * beside.pushed) / (Math.PI * Dw);
      return (thrust + Math.sqrt(thrust * thrust + 24 * eps * Ec * moment)) / (2 * eps * Ec);
    };
    rows.push(of('hoop strain with ring bending under soil', bent, load.pressure));
  }
  return rows;
}

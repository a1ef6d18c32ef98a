/**
 * A thick cylinder by another route: radial equilibrium in the displacement, u'' + u'/r - u/r^2 = 0, integrated step by
 * step (Runge-Kutta) from the bore for two starts, which are then combined to meet the pressures on both surfaces.
 * Nothing here knows a closed form of the stresses.
 */
export interface WallState {
  readonly hoop: number;
  readonly radial: number;
  /** Axial stress when the axial strain is held at zero. */
  readonly axialRestrained: number;
}

export interface Wall {
  readonly innerRadius: number;
  readonly outerRadius: number;
  readonly internalPressure: number;
  readonly externalPressure: number;
  readonly poissonRatio: number;
}

type State = readonly [u: number, slope: number];

/** Stresses at a radius. Young's modulus drops out and is taken as 1. */
export function wallState(wall: Wall, radius: number, steps = 4000): WallState {
  const { innerRadius, outerRadius, poissonRatio: nu } = wall;
  const [a, b] = [1 / ((1 + nu) * (1 - 2 * nu)), nu];
  const radial = ([u, slope]: State, r: number) => a * ((1 - b) * slope + (b * u) / r);
  const hoop = ([u, slope]: State, r: number) => a * (((1 - b) * u) / r + b * slope);
  const starts: readonly State[] = [
    [innerRadius, 0],
    [0, 1],
  ];
  const atOuter = starts.map((start) => radial(march(start, innerRadius, outerRadius, steps), outerRadius));
  const atInner = starts.map((start) => radial(start, innerRadius));
  const [p, q] = solve(atInner, atOuter, -wall.internalPressure, -wall.externalPressure);
  const [first, second] = starts.map((start) => march(start, innerRadius, radius, steps)) as [State, State];
  const state: State = [p * first[0] + q * second[0], p * first[1] + q * second[1]];
  const [h, s] = [hoop(state, radius), radial(state, radius)];
  return { hoop: h, radial: s, axialRestrained: nu * (h + s) };
}

function march(start: State, from: number, to: number, steps: number): State {
  const h = (to - from) / steps;
  const rate = ([u, v]: State, r: number): State => [v, u / (r * r) - v / r];
  const ahead = ([u, v]: State, [du, dv]: State, step: number): State => [u + step * du, v + step * dv];
  let state = start;
  for (let i = 0; i < steps; i++) {
    const r = from + i * h;
    const k1 = rate(state, r);
    const k2 = rate(ahead(state, k1, h / 2), r + h / 2);
    const k3 = rate(ahead(state, k2, h / 2), r + h / 2);
    const k4 = rate(ahead(state, k3, h), r + h);
    state = [0, 1].map(
      (i) =>
        (state[i] as number) +
        (h / 6) * ((k1[i] as number) + 2 * (k2[i] as number) + 2 * (k3[i] as number) + (k4[i] as number)),
    ) as unknown as State;
  }
  return state;
}

/** p and q with p c0 + q c1 = x at the bore and p d0 + q d1 = y at the outside. */
function solve([c0, c1]: number[], [d0, d1]: number[], x: number, y: number): readonly [p: number, q: number] {
  const [a, b, c, d] = [c0 as number, c1 as number, d0 as number, d1 as number];
  const determinant = a * d - b * c;
  return [(x * d - b * y) / determinant, (a * y - c * x) / determinant];
}

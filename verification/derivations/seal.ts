/** Bands that touch a pad, counted in strips a micrometre wide: every strip over the pad, over the strips of one band. */
export function bandsCountedInStrips(bands: number, width: number, pad: number): number {
  const strip = 1e-6;
  let over = 0;
  for (let at = strip / 2; at < bands * width; at += strip) if (at < pad) over += 1;
  return (over * strip) / width;
}

/** The leak seal by other routes, in plain SI numbers, without importing what it checks. */

/** One step of the classical Runge-Kutta rule for a system. */
function step(f: (x: number, y: readonly number[]) => number[], x: number, y: readonly number[], h: number): number[] {
  const along = (k: readonly number[], part: number): number[] => y.map((value, i) => value + part * (k[i] ?? 0));
  const k1 = f(x, y);
  const k2 = f(x + h / 2, along(k1, h / 2));
  const k3 = f(x + h / 2, along(k2, h / 2));
  const k4 = f(x + h, along(k3, h));
  return y.map((value, i) => value + (h / 6) * ((k1[i] ?? 0) + 2 * (k2[i] ?? 0) + 2 * (k3[i] ?? 0) + (k4[i] ?? 0)));
}

/** Tension along a band and its mean from 0 to `angle`, marched: a small arc loses mu T dbeta to friction. */
export function tensionMarched(tension: number, friction: number, angle: number): { end: number; mean: number } {
  const n = 2000;
  const h = angle / n;
  let y = [tension, 0];
  for (let i = 0; i < n; i++) y = step((_, [T = 0]) => [-friction * T, T], i * h, y, h);
  return { end: y[0] ?? Number.NaN, mean: (y[1] ?? Number.NaN) / angle };
}

/** Force of a band on a pad: its contact pressure T/(R w), summed as components toward the pipe over the arc of the pad. */
export function padForceSummed(tension: number, halfAngle: number, diameter: number, width: number): number {
  const n = 20000;
  const arc = (2 * halfAngle) / n;
  const pressure = tension / ((diameter / 2) * width);
  let force = 0;
  for (let i = 0; i < n; i++) {
    force += pressure * Math.cos(-halfAngle + (i + 0.5) * arc) * arc * (diameter / 2) * width;
  }
  return force;
}

/** Force of a pressure on a disc, summed over rings. */
export function discForceSummed(pressure: number, diameter: number): number {
  const n = 1000;
  const dr = diameter / 2 / n;
  let force = 0;
  for (let i = 0; i < n; i++) force += pressure * 2 * Math.PI * (i + 0.5) * dr * dr;
  return force;
}

/**
 * Circular plate of radius a under pressure p, from its equilibrium alone: the slope f obeys
 * f'' + f'/r - f/r^2 = p r/(2 B). Marched outward with and without load, and joined at the edge: no slope there, or no
 * radial moment. Returns the deflection of the middle and the largest bending stress.
 */
export function plateMarched(p: number, a: number, t: number, E: number, nu: number, clamped: boolean) {
  const B = (E * t ** 3) / (12 * (1 - nu * nu));
  const n = 4000;
  const march = (load: number, slope: number): number[][] => {
    const start = a * 1e-6;
    const h = (a - start) / n;
    let y = [slope * start, slope, 0];
    const rows = [[start, ...y]];
    for (let i = 0; i < n; i++) {
      const r = start + i * h;
      y = step((x, [f = 0, df = 0]) => [df, (load * x) / (2 * B) - df / x + f / (x * x), f], r, y, h);
      rows.push([r + h, ...y]);
    }
    return rows;
  };
  const [loaded, free] = [march(p, 0), march(0, 1)];
  const edge = (rows: number[][]): number => {
    const [, f = 0, df = 0] = rows.at(-1) ?? [];
    return clamped ? f : df + (nu * f) / a;
  };
  const c = -edge(loaded) / edge(free);
  let [deflection, moment] = [0, 0];
  loaded.forEach((row, i) => {
    const [r = 0, f = 0, df = 0, w = 0] = row.map((value, j) => (j === 0 ? value : value + c * (free[i]?.[j] ?? 0)));
    moment = Math.max(moment, Math.abs(B * (df + (nu * f) / r)), Math.abs(B * (f / r + nu * df)));
    deflection = Math.abs(w);
  });
  return { deflection, stress: (6 * moment) / (t * t) };
}

/**
 * Ring that deforms without stretching, radial displacement cos(k angle): the pressure at which the strain energy of
 * bending equals the work of the pressure, least over the lobes k.
 */
export function ringBucklingByEnergy(D: number, t: number, E: number, nu: number): number {
  const [R, stiffness] = [D / 2, (E * t ** 3) / (12 * (1 - nu * nu))];
  const n = 720;
  let least = Number.POSITIVE_INFINITY;
  for (let k = 2; k <= 6; k++) {
    let [bending, work] = [0, 0];
    for (let i = 0; i < n; i++) {
      const angle = (2 * Math.PI * i) / n;
      const [w, slope, curvature] = [Math.cos(k * angle), -k * Math.sin(k * angle), -k * k * Math.cos(k * angle)];
      bending += (curvature + w) ** 2;
      work += slope ** 2 - w ** 2;
    }
    least = Math.min(least, ((stiffness / R ** 3) * bending) / work);
  }
  return least;
}

/**
 * External pressure at which the wall of an oval pipe first yields: hoop compression p R/t, and the bending of p times
 * the ovality w0, magnified by the nearness of buckling. `outOfRound` is (Dmax - Dmin)/D, four times w0/D.
 */
export function ovalPipeAtYield(
  D: number,
  t: number,
  E: number,
  nu: number,
  yieldStrength: number,
  outOfRound: number,
) {
  const R = (D - t) / 2;
  const w0 = (outOfRound * D) / 4;
  const critical = ringBucklingByEnergy(D, t, E, nu);
  const stress = (p: number): number => (p * R) / t + ((6 * p * R * w0) / (t * t)) * (critical / (critical - p));
  let [low, high] = [0, critical];
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (stress(middle) > yieldStrength) high = middle;
    else low = middle;
  }
  return low;
}

/**
 * Isentropic flow of a gas to a pressure in the hole: what the energy of the gas gives it as speed, times its density
 * there. The gas takes the pressure, from inside to outside, at which most flows.
 */
export function gasFlowSearched(p1: number, p2: number, T1: number, M: number, k: number) {
  const R = 8.31446261815324 / M;
  const cp = (k * R) / (k - 1);
  const at = (p: number) => {
    const T = T1 * (p / p1) ** ((k - 1) / k);
    const speed = Math.sqrt(Math.max(0, 2 * cp * (T1 - T)));
    return { flux: (p / (R * T)) * speed, speed };
  };
  // The flow has one maximum over the pressure: close in on it by thirds.
  let [low, high] = [p2, p1];
  for (let i = 0; i < 200; i++) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (at(a).flux >= at(b).flux) high = b;
    else low = a;
  }
  const pressure = (low + high) / 2;
  const { flux, speed } = at(pressure);
  return { flux, pressure, thrust: flux * speed + pressure - p2 };
}

/** Moment of a bent strip: its stress times its arm, summed over the thickness. */
export function stripMomentSummed(E: number, w: number, t: number, R: number): number {
  const n = 4000;
  const dy = t / n;
  let moment = 0;
  for (let i = 0; i < n; i++) {
    const y = -t / 2 + (i + 0.5) * dy;
    moment += ((E * y) / (R + t / 2)) * y * w * dy;
  }
  return moment;
}

/** Length of a band wound n times, circle by circle at the middle of each turn. */
export function bandCircles(circumference: number, buildUp: number, t: number, turns: number): number {
  let length = 0;
  let diameter = circumference / Math.PI + 2 * buildUp;
  for (let turn = 0; turn < turns; turn++) {
    length += Math.PI * (diameter + t);
    diameter += 2 * t;
  }
  return length;
}

/** Moment at the clamped end of a strip, slice by slice from its free end, each pushed on its middle. */
export function overhangMomentSummed(pressure: number, length: number): number {
  const slices = 1000;
  const slice = length / slices;
  let moment = 0;
  for (let index = 0; index < slices; index++) moment += pressure * slice * (index + 0.5) * slice;
  return moment;
}

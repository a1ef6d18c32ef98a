/** Heat of a curing lump by marching. Imports nothing that it checks. */

/**
 * Greatest heat parameter at which a lump still has a steady state: theta'' + (j/x) theta' + delta e^theta = 0 with
 * theta = 0 at the surface. With psi = theta - theta_m and z = x sqrt(delta e^theta_m) one march from the centre serves
 * all: delta = z^2 e^psi(z), and the greatest of these is the limit. j is 0 for a slab, 1 for a cylinder, 2 for a sphere.
 */
export function criticalHeat(j: number): number {
  const step = 1e-3;
  const slope = (z: number, psi: number, rate: number) => (z === 0 ? -1 / (j + 1) : -Math.exp(psi) - (j / z) * rate);
  let [z, psi, rate, greatest] = [0, 0, 0, 0];
  while (z < 6) {
    const a = slope(z, psi, rate);
    const b = slope(z + step / 2, psi + (rate * step) / 2, rate + (a * step) / 2);
    const rateB = rate + (a * step) / 2;
    const c = slope(z + step / 2, psi + (rateB * step) / 2, rate + (b * step) / 2);
    const rateC = rate + (b * step) / 2;
    const d = slope(z + step, psi + rateC * step, rate + c * step);
    const rateD = rate + c * step;
    psi += (step / 6) * (rate + 2 * rateB + 2 * rateC + rateD);
    rate += (step / 6) * (a + 2 * b + 2 * c + d);
    z += step;
    greatest = Math.max(greatest, z * z * Math.exp(psi));
  }
  return greatest;
}

/** Time for a mass without heat loss to run away, zero-order, with the rate taken as e^((T - T0)/b), b = R T0^2/E. */
export function timeToRunaway(specificHeat: number, heat: number, rate: number, b: number): number {
  const step = b / 1e4;
  let time = 0;
  // Beyond 30 b the rest takes less than 1e-13 of the time.
  for (let rise = step / 2; rise < 30 * b; rise += step)
    time += (specificHeat * step) / (heat * rate * Math.exp(rise / b));
  return time;
}

/** Second routes of the loads beside the pressure. Nothing here knows a closed form of the library. */

/**
 * Bending moment, over q D^2, at the line on which a ring lies that bears an even load q from above. Cut at the crown: the
 * moment and the thrust there leave the crown without rotation and without shift to the side, summed step by step.
 */
export function momentAtTheBed(steps = 20_000): number {
  const radius = 0.5;
  const step = Math.PI / steps;
  // Of the load alone, tension inside the crown above 0.
  const ofLoad = (angle: number): number => {
    const aside = radius * Math.sin(angle);
    return angle <= Math.PI / 2 ? -(aside * aside) / 2 : -radius * (aside - radius / 2);
  };
  let [one, cos, cos2, load, loadCos] = [0, 0, 0, 0, 0];
  for (let i = 0; i < steps; i++) {
    const angle = (i + 0.5) * step;
    const c = Math.cos(angle);
    one += 1;
    cos += c;
    cos2 += c * c;
    load += ofLoad(angle);
    loadCos += ofLoad(angle) * c;
  }
  const determinant = one * cos2 - cos * cos;
  const moment = (-load * cos2 + loadCos * cos) / determinant;
  const thrust = (-loadCos * one + load * cos) / determinant;
  return ofLoad(Math.PI) + moment - thrust;
}

/** The recalled equivalent pressure P (1 + 4 x^2), x the shear flow over the hoop force. */
export function recalledEquivalent(pressure: number, outsideDiameter: number, shear: number, torque: number): number {
  const flow = (shear + (2 * torque) / outsideDiameter) / (Math.PI * outsideDiameter);
  return pressure * (1 + 4 * (flow / ((pressure * outsideDiameter) / 2)) ** 2);
}

/** The least of a function of a positive number with one valley, by thirds of its logarithm. */
export function leastOf(valley: (x: number) => number, low: number, high: number): number {
  let [a, b] = [Math.log(low), Math.log(high)];
  for (let i = 0; i < 300; i++) {
    const [c, d] = [a + (b - a) / 3, b - (b - a) / 3];
    if (valley(Math.exp(c)) < valley(Math.exp(d))) b = d;
    else a = c;
  }
  return valley(Math.exp((a + b) / 2));
}

/** The lowest push, over E I/L^2, that bends a bar between two hinges: its deflection integrated from one to the other. */
export function pushOfColumn(steps = 2000): number {
  const atFarHinge = (load: number): number => {
    const h = 1 / steps;
    let [w, slope] = [0, 1];
    const bend = (value: number): number => -load * value;
    for (let i = 0; i < steps; i++) {
      const [w1, s1] = [slope, bend(w)];
      const [w2, s2] = [slope + (h / 2) * s1, bend(w + (h / 2) * w1)];
      const [w3, s3] = [slope + (h / 2) * s2, bend(w + (h / 2) * w2)];
      const [w4, s4] = [slope + h * s3, bend(w + h * w3)];
      w += (h / 6) * (w1 + 2 * w2 + 2 * w3 + w4);
      slope += (h / 6) * (s1 + 2 * s2 + 2 * s3 + s4);
    }
    return w;
  };
  let [low, high] = [1, 1];
  while (atFarHinge(high) > 0) [low, high] = [high, high + 1];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (atFarHinge(middle) > 0) low = middle;
    else high = middle;
  }
  return low;
}

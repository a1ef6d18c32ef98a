/**
 * Buckling pressure of a long ring as a root. A ring that does not stretch bends by w'' + (1 + p R^3/B) w = 0 round the
 * pipe (Boussinesq), where B is its bending stiffness; two lobes are symmetric about both axes, so that the slope is zero
 * at both ends of a quarter. The quarter is integrated step by step (Runge-Kutta), and the lowest pressure that meets the
 * far end is bisected. Nothing here knows the closed form.
 */
export interface Ring {
  readonly radius: number;
  readonly thickness: number;
  readonly modulus: number;
  readonly poissonRatio: number;
}

/** Slope at the end of the quarter, for a start of w = 1 and no slope; `load` is p R^3/B. */
function slopeAtQuarter(load: number, steps = 2000): number {
  const h = Math.PI / 2 / steps;
  let [w, slope] = [1, 0];
  const bend = (value: number): number => -(1 + load) * value;
  for (let i = 0; i < steps; i++) {
    const [w1, s1] = [slope, bend(w)];
    const [w2, s2] = [slope + (h / 2) * s1, bend(w + (h / 2) * w1)];
    const [w3, s3] = [slope + (h / 2) * s2, bend(w + (h / 2) * w2)];
    const [w4, s4] = [slope + h * s3, bend(w + h * w3)];
    w += (h / 6) * (w1 + 2 * w2 + 2 * w3 + w4);
    slope += (h / 6) * (s1 + 2 * s2 + 2 * s3 + s4);
  }
  return slope;
}

/** Lowest external pressure at which the ring may leave its circle. */
export function bucklingPressure({ radius, thickness, modulus, poissonRatio }: Ring): number {
  const stiffness = (modulus * thickness ** 3) / 12 / (1 - poissonRatio ** 2);
  // The slope is below zero until the first root; an unloaded ring is at -1, where it only shifts sideways.
  let [low, high] = [0.5, 0.5];
  while (slopeAtQuarter(high) < 0) [low, high] = [high, high + 0.5];
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    if (slopeAtQuarter(middle) < 0) low = middle;
    else high = middle;
  }
  return (high * stiffness) / radius ** 3;
}

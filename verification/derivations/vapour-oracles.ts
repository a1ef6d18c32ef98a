/** Dew and frost points by bisection on the vapour pressure, in degrees Celsius. Nothing here imports what it checks. */

/** Sonntag over water and over ice [hPa]. */
const overWater = (t: number): number => 6.112 * Math.exp((17.62 * t) / (243.12 + t));
const overIce = (t: number): number => 6.112 * Math.exp((22.46 * t) / (272.62 + t));

function solve(pressure: (t: number) => number, wanted: number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 200; i++) {
    const middle = (a + b) / 2;
    if (pressure(middle) < wanted) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

export function dewPointByBisection(t: number, humidity: number): number {
  return solve(overWater, humidity * overWater(t), -80, 80);
}

/** The dew point, or where that lies below 0 the frost point. */
export function condensationByBisection(t: number, humidity: number): number {
  const vapour = humidity * overWater(t);
  return vapour >= overWater(0) ? solve(overWater, vapour, -80, 80) : solve(overIce, vapour, -100, 1);
}

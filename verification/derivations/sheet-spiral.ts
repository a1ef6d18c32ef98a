/** A sheet wound on a pipe, by two other routes than the sum of circles. Imports nothing that it checks. */

/** Area of the ring between pipe and finished wrap, over the thickness: the sheet keeps its area. */
export function lengthByArea(diameter: number, thickness: number, plies: number): number {
  const finished = diameter + 2 * plies * thickness;
  return ((Math.PI / 4) * (finished ** 2 - diameter ** 2)) / thickness;
}

/** Arc of the Archimedean spiral from the pipe's radius, by Simpson's rule over the angle. */
export function lengthBySpiral(diameter: number, thickness: number, plies: number): number {
  const rise = thickness / (2 * Math.PI);
  const end = 2 * Math.PI * plies;
  const arc = (angle: number) => Math.hypot(diameter / 2 + rise * angle, rise);
  const steps = 2000;
  const step = end / steps;
  let sum = arc(0) + arc(end);
  for (let i = 1; i < steps; i++) sum += (i % 2 === 1 ? 4 : 2) * arc(i * step);
  return (sum * step) / 3;
}

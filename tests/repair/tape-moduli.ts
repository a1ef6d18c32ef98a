/** Moduli, in GPa, of a tape that runs off the hoop direction, free to shear: by hand, for tests of a whole design. */
export function tapeModuli(
  { hoop, axial, shear, poisson }: { hoop: number; axial: number; shear: number; poisson: number },
  width: number,
  overlap: number,
  diameter: number,
): { readonly hoop: number; readonly axial: number } {
  const s = ((width * (1 - overlap)) / (Math.PI * diameter)) ** 2;
  const c = 1 - s;
  const cross = (1 / shear - (2 * poisson) / hoop) * s * c;
  return {
    hoop: 1 / (c ** 2 / hoop + cross + s ** 2 / axial),
    axial: 1 / (s ** 2 / hoop + cross + c ** 2 / axial),
  };
}

/** Mixing until the job is done, pot by pot and kit by kit. Imports nothing that it checks. */

/** Pots mixed one after another from kits opened one after another, each pot no larger than a kit or what can be placed. */
export function mixByHand(job: number, usable: number, kit: number, whole: boolean) {
  let [pots, kits, mixed, left] = [0, 0, 0, 0];
  while (mixed < job * (1 - 1e-9)) {
    const pot = whole ? kit : Math.min(usable, kit, job - mixed);
    while (left < pot * (1 - 1e-9)) {
      kits++;
      left += kit;
    }
    left -= pot;
    mixed += pot;
    pots++;
  }
  return { pots, kits };
}

/** Density of a mix: the litres of each component poured together. */
export function densityByLitres(parts: readonly (readonly [mass: number, density: number])[]): number {
  const litres = parts.reduce((sum, [mass, density]) => sum + mass / density, 0);
  return parts.reduce((sum, [mass]) => sum + mass, 0) / litres;
}

/** Mass per mole of reactive groups: the groups of each component counted. */
export function massPerGroup(parts: readonly (readonly [mass: number, perMole: number])[], inert: number): number {
  let [groups, mass] = [0, inert];
  for (const [part, perMole] of parts) {
    groups += part / perMole;
    mass += part;
  }
  return mass / groups;
}

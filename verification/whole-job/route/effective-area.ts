/** A point of a depth profile along the pipe. */
export interface ProfilePoint {
  readonly position: number;
  readonly depth: number;
}

/** Length of a part of the profile, and the area lost in it (trapezoids). */
interface Part {
  readonly length: number;
  readonly area: number;
}

/** Every run of neighbouring points. */
function partsOf(profile: readonly ProfilePoint[]): Part[] {
  const parts: Part[] = [];
  for (let from = 0; from < profile.length; from++) {
    let area = 0;
    for (let to = from + 1; to < profile.length; to++) {
      const [a, b] = [profile[to - 1] as ProfilePoint, profile[to] as ProfilePoint];
      area += ((a.depth + b.depth) / 2) * (b.position - a.position);
      parts.push({ length: b.position - (profile[from] as ProfilePoint).position, area });
    }
  }
  return parts;
}

/** The least of `(1 - A/A0)/(1 - A/(A0 M))` over every part of a profile, for a wall and a bulging factor by length. */
export function leastOverParts(
  profile: readonly ProfilePoint[],
  wall: number,
  bulging: (length: number) => number,
): number {
  let least = 1;
  for (const { length, area } of partsOf(profile)) {
    const lost = area / (length * wall);
    least = Math.min(least, (1 - lost) / (1 - lost / bulging(length)));
  }
  return least;
}

/** The profile later: every depth has grown, and both ends have moved outward; never deeper than the wall. */
export function grownProfile(
  profile: readonly ProfilePoint[],
  wall: number,
  loss: number,
  spread: number,
): readonly ProfilePoint[] {
  const last = profile.length - 1;
  return profile.map(({ position, depth }, index) => ({
    position: index === 0 ? position - spread : index === last ? position + spread : position,
    depth: Math.min(wall, depth + loss),
  }));
}

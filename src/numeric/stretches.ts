/** A stretch of time, with whatever holds over it. */
interface Stretch {
  readonly duration: number;
}

/** Less than this share of a stretch is what rounding left of one that has passed. */
const SLACK = 1e-9;

/** What is left of stretches in a row once some time has passed: the one it falls into is cut, those before it are gone. */
export function stretchesFrom<S extends Stretch>(stretches: readonly S[], passed: number): readonly S[] {
  const left: S[] = [];
  let gone = passed;
  for (const [index, each] of stretches.entries()) {
    if (gone === 0) return index === 0 ? stretches : left.concat(stretches.slice(index));
    const rest = each.duration - Math.min(gone, each.duration);
    gone = Math.max(0, gone - each.duration);
    if (rest === each.duration) left.push(each);
    else if (rest > SLACK * each.duration) left.push({ ...each, duration: rest });
  }
  return left;
}

/** How long stretches in a row last together. */
export function lengthOf(stretches: readonly Stretch[]): number {
  let length = 0;
  for (const { duration } of stretches) length += duration;
  return length;
}

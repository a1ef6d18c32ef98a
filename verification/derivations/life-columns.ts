/**
 * Oracle of the look-ups `laminate/default-strains` and `laminate/performance-factor`: the rows are sorted by life and
 * those that do not last are crossed out from the front. What is left first is the row.
 */
export function columnFor<R extends { readonly life: number }>(rows: readonly R[], life: number): R | undefined {
  const left = [...rows].sort((a, b) => a.life - b.life);
  while (left[0] !== undefined && left[0].life < life) left.shift();
  return left[0];
}

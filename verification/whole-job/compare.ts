/** Numbers of an answer by their path. Rows of a list stand by their criterion, their id or what they check, else by place. */
export function leavesOf(value: unknown, path = '', into: Map<string, number> = new Map()): Map<string, number> {
  if (typeof value === 'number') {
    into.set(path, value);
    return into;
  }
  if (typeof value !== 'object' || value === null) return into;
  if (Array.isArray(value)) {
    for (const [index, row] of value.entries()) leavesOf(row, `${path}[${nameOf(row) ?? index}]`, into);
    return into;
  }
  const members = value as Readonly<Record<string, unknown>>;
  if (typeof members['unit'] === 'string' && typeof members['value'] === 'number') {
    into.set(path, members['value']);
    return into;
  }
  for (const [key, member] of Object.entries(members)) leavesOf(member, path === '' ? key : `${path}.${key}`, into);
  return into;
}

function nameOf(row: unknown): string | undefined {
  if (typeof row !== 'object' || row === null) return undefined;
  const { criterion, id, check } = row as Readonly<Record<string, unknown>>;
  const name = criterion ?? id ?? check;
  return typeof name === 'string' ? name : undefined;
}

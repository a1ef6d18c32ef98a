/** 1.5, "1.5", "1-1/2", "1 1/2" and "NPS 1-1/2" are one size. */
export function readNps(nps: string | number): number {
  const text = String(nps)
    .trim()
    .toUpperCase()
    .replace(/^NPS\s*/, '')
    .replace(/\s*(IN|INCH|")$/, '');
  const parts = /^(?:(\d+)(?:-|\s+))?(\d+)\/(\d+)$/.exec(text);
  if (parts === null) return /^\d+(\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
  return Number(parts[1] ?? 0) + Number(parts[2]) / Number(parts[3]);
}

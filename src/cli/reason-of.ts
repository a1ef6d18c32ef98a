/** Why a file could not be read or written. */
export function reasonOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  const reasons: Readonly<Record<string, string>> = {
    ENOENT: 'there is no such file',
    EISDIR: 'it is a folder',
    EACCES: 'permission is denied',
    ENOTDIR: 'a part of its path is not a folder',
    ENOSPC: 'no space is left on the device',
  };
  return reasons[code] ?? (error instanceof Error ? error.message : String(error));
}

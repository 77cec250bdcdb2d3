/** Why the file system refused, in plain words where the code is a common one. */
const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  EISDIR: 'it is a folder',
  ENOTDIR: 'part of the path is not a folder',
  EACCES: 'permission denied',
  EPERM: 'permission denied',
  ENOSPC: 'the disk is full',
  EROFS: 'the disk is read-only',
};

export function reasonOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const code = 'code' in error && typeof error.code === 'string' ? error.code : '';
  return reasons[code] ?? error.message;
}

/** Why the file system refused, in plain words where the code is a common one. */
const reasons: ReadonlyMap<string, string> = new Map([
  ['ENOENT', 'there is no such file or folder'],
  ['EISDIR', 'it is a folder'],
  ['ENOTDIR', 'part of the path is not a folder'],
  ['EACCES', 'permission denied'],
  ['EPERM', 'permission denied'],
  ['ENOSPC', 'the disk is full'],
  ['EDQUOT', 'your share of the disk is used up'],
  ['EFBIG', 'the file would be too large'],
  ['EROFS', 'the disk is read-only'],
  ['ELOOP', 'its links lead in a circle'],
  ['EPIPE', 'its reader has closed it'],
  ['EEXIST', 'something is there already'],
  ['ENOTEMPTY', 'something is there already'],
  ['EMFILE', 'too many files are open'],
]);

export function reasonOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const code = 'code' in error && typeof error.code === 'string' ? error.code : '';
  return reasons.get(code) ?? error.message;
}

/** Whether the system refused with one of these codes. */
export const hasCode = (error: unknown, ...codes: readonly string[]): boolean =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' && codes.includes(error.code);

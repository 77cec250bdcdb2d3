/** Paths of used files, as they are written and as they are meant. */

/** What a written path comes to, below the workspace folder; or why it can't be followed. */
export type FollowedPath =
  | { readonly kind: 'path'; readonly path: string }
  | { readonly kind: 'outside' }
  | { readonly kind: 'absolute' }
  | { readonly kind: 'backslash' }
  | { readonly kind: 'empty' };

/** Follows `written` from the folder of the file at `from`. Folders are parted by `/`. */
export function followPath(from: string, written: string): FollowedPath {
  if (written.trim() === '') return { kind: 'empty' };
  if (written.startsWith('/') || /^[\p{L}][\p{L}\d+.-]*:/u.test(written)) return { kind: 'absolute' };
  if (written.includes('\\')) return { kind: 'backslash' };
  const parts = from.split('/').slice(0, -1);
  for (const part of written.split('/')) {
    if (part === '' || part === '.') continue;
    if (part !== '..') parts.push(part);
    else if (parts.pop() === undefined) return { kind: 'outside' };
  }
  return { kind: 'path', path: parts.join('/') };
}

/** How the file at `from` writes the path of the file at `path`: what `followPath` follows back. */
export function writtenPath(from: string, path: string): string {
  const folder = from.split('/').slice(0, -1);
  const parts = path.split('/');
  let shared = 0;
  while (shared < folder.length && shared < parts.length - 1 && folder[shared] === parts[shared]) shared++;
  return [...folder.slice(shared).map(() => '..'), ...parts.slice(shared)].join('/');
}

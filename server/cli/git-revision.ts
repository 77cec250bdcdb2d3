/** Files as git keeps them, and the files beside them in the same revision. Arguments go to git one by one, never through a shell. */
import { execFileSync } from 'node:child_process';
import { devNull } from 'node:os';
import { posix } from 'node:path';
import type { FileRead, SourcePlace } from '../design/files/source-file.ts';
import { WrongUsage } from './wrong-usage.ts';

/** More than any design: a larger file is refused. */
const mostBytes = 64 * 1024 * 1024;

/** A revision and a path in it, as `REV:path` says them. */
export interface RevisionPath {
  readonly revision: string;
  readonly path: string;
}

export interface RevisionFile {
  readonly bytes: Uint8Array;
  /** Its path from the top of the repository; the files it uses are read from the same revision. */
  readonly place: SourcePlace;
}

/**
 * Splits `REV:path` at its first colon, as git does; null where there is none. The path counts from the top of the
 * repository, or from here if it begins with `./` or `../`; nothing before the colon means what is staged.
 */
export function revisionPathOf(argument: string): RevisionPath | null {
  const colon = argument.indexOf(':');
  return colon < 0 ? null : { revision: argument.slice(0, colon), path: argument.slice(colon + 1) };
}

/** The file as that revision has it, asked for in `folder`. What git cannot give throws WrongUsage, in words. */
export function readRevision({ revision, path }: RevisionPath, folder: string): RevisionFile {
  if (path === '') throw new WrongUsage(`${revision}: names no file: write REVISION:path/of/the.lap`);
  const here = git(['rev-parse', '--show-prefix'], folder);
  if (here.output === null) throw new WrongUsage(`cannot read ${revision}:${path}: ${here.reason}`);
  if (revision !== '' && !knowsRevision(revision, folder)) {
    throw new WrongUsage(`git knows no revision “${revision}”: name a branch, a tag or a commit`);
  }
  const prefix = new TextDecoder().decode(here.output).replace(/\n$/, '');
  const fromTop = /^\.\.?\//.test(path) ? posix.normalize(posix.join(prefix, path)) : path;
  const bytes = blob(revision, fromTop, folder);
  if (bytes === null) {
    const version = revision === '' ? 'what is staged' : `revision ${revision}`;
    throw new WrongUsage(
      `${version} has no file ${fromTop}: write its path from the top of the repository, or from here with ./`,
    );
  }
  return { bytes, place: { path: fromTop, read: (wanted) => usedFile(blob(revision, wanted, folder)) } };
}

function usedFile(bytes: Uint8Array | null): FileRead {
  if (bytes === null) return { kind: 'missing' };
  try {
    return { kind: 'text', text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return { kind: 'unreadable', reason: 'it is not UTF-8 text' };
  }
}

const knowsRevision = (revision: string, folder: string): boolean =>
  git(['rev-parse', '--verify', '--quiet', '--end-of-options', `${revision}^{commit}`], folder).output !== null;

/** Only for revisions that git knows, so never one that looks like an option. */
const blob = (revision: string, path: string, folder: string): Uint8Array | null =>
  git(['cat-file', 'blob', `${revision}:${path}`], folder).output;

type GitAnswer =
  { readonly output: Uint8Array; readonly reason: null } | { readonly output: null; readonly reason: string };

/**
 * A repository may name programs of its own in its settings: to watch files, to fetch what it lacks. Reading a file
 * must run none of them, so they are switched off, whatever it says: no watcher, no hooks, no way to fetch.
 */
const withoutItsPrograms = ['-c', 'core.fsmonitor=false', '-c', `core.hooksPath=${devNull}`, '--no-pager'];

const quietEnvironment = (): NodeJS.ProcessEnv => ({
  ...process.env,
  GIT_ALLOW_PROTOCOL: 'none',
  GIT_NO_LAZY_FETCH: '1',
  GIT_OPTIONAL_LOCKS: '0',
  GIT_TERMINAL_PROMPT: '0',
});

function git(args: readonly string[], cwd: string): GitAnswer {
  try {
    const output = execFileSync('git', [...withoutItsPrograms, ...args], {
      cwd,
      env: quietEnvironment(),
      maxBuffer: mostBytes,
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    return { output, reason: null };
  } catch (error) {
    const isMissing = error instanceof Error && 'code' in error && error.code === 'ENOENT';
    const reason = 'there is no such file, and this folder is in no git repository';
    return { output: null, reason: isMissing ? 'git is not installed' : reason };
  }
}

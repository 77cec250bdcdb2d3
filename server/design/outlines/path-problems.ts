/** What is wrong with the path of a file, as it is written. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import type { FollowedPath } from '../files/file-paths.ts';
import type { FileRead } from '../files/source-file.ts';

/** A path where it is written; `example` shows how such a phrase names a file. */
export interface WrittenPath {
  readonly text: string;
  readonly range: SourceRange;
  readonly example: string;
}

export function cannotFollow(
  { text, range, example }: WrittenPath,
  why: Exclude<FollowedPath['kind'], 'path'>,
): Problem {
  const messages = {
    outside: `\`${text}\` lies above the workspace folder, where no file is read. Copy it into the folder, or open the folder that holds both.`,
    absolute: `\`${text}\` is not named from the folder of this file. Write its path from here, as in \`${example}\`.`,
    backslash: `Folders are parted by \`/\`. Write \`${text.replaceAll('\\', '/')}\`.`,
    empty: `No file is named here. Write its path from the folder of this file, as in \`${example}\`.`,
  };
  return problemAt('cannotUseFile', range, messages[why]);
}

/** A file at `path` that gives no text; `advice` is for one that isn't there. */
export function cannotRead(
  written: WrittenPath,
  path: string,
  read: Exclude<FileRead, { kind: 'text' }>,
  advice: string,
): Problem {
  if (read.kind === 'outside') return cannotFollow(written, 'outside');
  const message =
    read.kind === 'missing'
      ? `There is no file \`${path}\` in the workspace folder. ${advice}`
      : `\`${written.text}\` cannot be read: ${read.reason}.`;
  return problemAt('cannotUseFile', written.range, message);
}

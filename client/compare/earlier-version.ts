/** The other side of a comparison, as it is now. */
import { Uri, workspace } from 'vscode';
import type { AlreadyCut, EarlierVersion } from '../../server/language/compare-messages.ts';
import { fileName } from '../file-name.ts';
import type { ComparisonState, CutChoice } from './comparison-state.ts';
import { gitApi, textInRevision } from './git-api.ts';

/** Its text; null where git has none, or knows no such revision, or the file is gone. */
export async function earlierVersion({ uri, earlier }: ComparisonState): Promise<EarlierVersion | null> {
  if (earlier.kind === 'file') {
    const text = await textOf(earlier.uri);
    return text === null ? null : { name: fileName(Uri.parse(earlier.uri)), uri: earlier.uri, text };
  }
  const { revision, name } = earlier;
  const git = await gitApi();
  const text = git && (await textInRevision(git, Uri.parse(uri), revision));
  if (!git || text === null) return null;
  return { name, uri: git.toGitUri(Uri.parse(uri), revision).toString(), text };
}

/** As the person calls it. */
export const earlierName = ({ earlier }: ComparisonState): string =>
  earlier.kind === 'file' ? fileName(Uri.parse(earlier.uri)) : earlier.name;

/** What is cut, its list read as it is now. A list that is gone reads as an empty one under its name. */
export async function alreadyCut(choice: CutChoice): Promise<AlreadyCut> {
  if (typeof choice === 'string') return choice;
  return { name: fileName(Uri.parse(choice.uri)), list: (await textOf(choice.uri)) ?? '' };
}

async function textOf(uri: string): Promise<string | null> {
  try {
    return (await workspace.openTextDocument(Uri.parse(uri))).getText();
  } catch {
    return null;
  }
}

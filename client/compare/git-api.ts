/** What VS Code's own git extension keeps of a file: the little of its API (version 1) that we use. */
import { type Event, extensions, type Uri } from 'vscode';

interface GitRepository {
  readonly state: { readonly onDidChange: Event<void> };
  show(revision: string, path: string): Promise<string>;
}

export interface GitApi {
  readonly repositories: readonly GitRepository[];
  readonly onDidOpenRepository: Event<GitRepository>;
  getRepository(uri: Uri): GitRepository | null;
  /** The address under which a revision of a file is shown. */
  toGitUri(uri: Uri, revision: string): Uri;
}

interface GitExtension {
  readonly enabled: boolean;
  getAPI(version: 1): GitApi;
}

/** The API, or null where git's extension is missing or turned off. */
export async function gitApi(): Promise<GitApi | null> {
  const extension = extensions.getExtension<GitExtension>('vscode.git');
  if (!extension) return null;
  const git = await extension.activate();
  return git.enabled ? git.getAPI(1) : null;
}

/** The text of a file in a revision; null where git does not keep it or does not know the revision. */
export async function textInRevision(git: GitApi, uri: Uri, revision: string): Promise<string | null> {
  try {
    return (await git.getRepository(uri)?.show(revision, uri.fsPath)) ?? null;
  } catch {
    return null;
  }
}

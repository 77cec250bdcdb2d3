/** Keeps the server told of what git has of the open texts, so that its lenses can say what changed. */
import { type ExtensionContext, type TextDocument, type Uri, workspace } from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import { type CommittedText, committedTextNotification } from '../../server/language/compare-messages.ts';
import { languageId } from '../language-client.ts';
import { type GitApi, gitApi, textInRevision } from './git-api.ts';

/** Tells of every text when it is opened, and of all whenever a repository changes; without git, of none. `onTold` hears of each. */
export async function tellCommittedTexts(
  context: ExtensionContext,
  client: LanguageClient,
  revision: string,
  onTold: (uri: Uri) => void,
): Promise<void> {
  const git = await gitApi();
  if (!git) return;
  const told = new Map<string, string | null>();

  async function tell(document: TextDocument): Promise<void> {
    if (document.languageId !== languageId || document.uri.scheme !== 'file') return;
    const uri = client.code2ProtocolConverter.asUri(document.uri);
    const text = await textInRevision(git as GitApi, document.uri, revision);
    if (told.get(uri) === text) return;
    told.set(uri, text);
    await client.sendNotification(committedTextNotification, { uri, text } satisfies CommittedText);
    onTold(document.uri);
  }

  const tellAll = (): void => workspace.textDocuments.forEach((document) => void tell(document));
  const watch = (repository: GitApi['repositories'][number]): void => {
    context.subscriptions.push(repository.state.onDidChange(tellAll));
  };
  git.repositories.forEach(watch);
  context.subscriptions.push(
    git.onDidOpenRepository((repository) => {
      watch(repository);
      tellAll();
    }),
    workspace.onDidOpenTextDocument((document) => void tell(document)),
    workspace.onDidCloseTextDocument(({ uri }) => told.delete(client.code2ProtocolConverter.asUri(uri))),
  );
  tellAll();
}

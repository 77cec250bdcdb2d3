/** Shows the libraries that come with Halflap, read-only, where a definition leads into one. */
import { type ExtensionContext, type Uri, workspace } from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import { type LibraryQuestion, libraryTextRequest } from '../server/language/preview-messages.ts';

export function registerLibraryTexts(context: ExtensionContext, client: LanguageClient): void {
  const provideTextDocumentContent = (uri: Uri): Promise<string | null> =>
    client.sendRequest<string | null>(libraryTextRequest, { uri: uri.toString() } satisfies LibraryQuestion);
  context.subscriptions.push(workspace.registerTextDocumentContentProvider('halflap', { provideTextDocumentContent }));
}

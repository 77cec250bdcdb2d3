/** The extension's door: starts the language server, offers the preview, and ends both. */
import { type ExtensionContext, window } from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import { analysedTexts } from './analysed-texts.ts';
import { registerComparisons } from './compare/comparisons.ts';
import { startLanguageClient } from './language-client.ts';
import { registerLibraryTexts } from './library-texts.ts';
import { registerPreviews } from './preview/previews.ts';

let running: LanguageClient | undefined;

export async function activate(context: ExtensionContext): Promise<void> {
  const client = startLanguageClient(context.asAbsolutePath('dist/server.cjs'));
  running = client.languageClient;
  const onAnalysed = analysedTexts(context, client.languageClient);
  registerPreviews(context, client.languageClient, onAnalysed);
  registerComparisons(context, client.languageClient, onAnalysed);
  registerLibraryTexts(context, client.languageClient);
  try {
    await client.started;
  } catch (error) {
    void window.showErrorMessage(`Halflap's language server did not start: ${String(error)}`);
  }
}

export function deactivate(): Promise<void> | undefined {
  return running?.dispose();
}

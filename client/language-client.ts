/** The language server as a child process, spoken to over its pipe. */
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';

export const languageId = 'halflap';

/** Starts the bundle at `serverModule`. `started` settles when the server answers, or failed to. */
export function startLanguageClient(serverModule: string): { languageClient: LanguageClient; started: Promise<void> } {
  const languageClient = new LanguageClient(
    languageId,
    'Halflap',
    { module: serverModule, transport: TransportKind.ipc },
    { documentSelector: [{ language: languageId }] },
  );
  return { languageClient, started: languageClient.start() };
}

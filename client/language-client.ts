/** The language server as a child process, spoken to over its pipe. */
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';

export const languageId = 'halflap';

/** Where a debugger reaches the server while the extension itself is debugged; .vscode/launch.json names it too. */
const debugPort = 6009;

/** Starts the bundle at `serverModule`. `started` settles when the server answers, or failed to. */
export function startLanguageClient(serverModule: string): { languageClient: LanguageClient; started: Promise<void> } {
  const languageClient = new LanguageClient(
    languageId,
    'Halflap',
    {
      run: { module: serverModule, transport: TransportKind.ipc },
      debug: { module: serverModule, transport: TransportKind.ipc, options: { execArgv: [`--inspect=${debugPort}`] } },
    },
    { documentSelector: [{ language: languageId }] },
  );
  return { languageClient, started: languageClient.start() };
}

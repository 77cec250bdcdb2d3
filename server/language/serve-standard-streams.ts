/** The language server on standard input and output, for any editor. */
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { serveConnection } from './serve-connection.ts';

/** Serves until the editor ends the connection; log lines go to the editor, never to standard output. */
export function serveStandardStreams(): void {
  serveConnection(createConnection(ProposedFeatures.all, process.stdin, process.stdout));
}

/** Entry of the language server: over the pipe of a parent process with `--node-ipc`, else on standard input and output. */
import { createConnection, IPCMessageReader, IPCMessageWriter, ProposedFeatures } from 'vscode-languageserver/node';
import { serveConnection } from './serve-connection.ts';
import { serveStandardStreams } from './serve-standard-streams.ts';

if (process.argv.includes('--node-ipc')) {
  serveConnection(createConnection(ProposedFeatures.all, new IPCMessageReader(process), new IPCMessageWriter(process)));
} else {
  serveStandardStreams();
}

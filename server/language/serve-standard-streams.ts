/** The language server on standard input and output, for any editor. */
import {
  createConnection,
  ErrorCodes,
  type Message,
  ProposedFeatures,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { serveConnection } from './serve-connection.ts';

/** Serves until the editor ends the connection; log lines go to the editor, never to standard output. */
export function serveStandardStreams(): void {
  const reader = new StreamMessageReader(process.stdin);
  const writer = new StreamMessageWriter(process.stdout);
  reader.onError((error) => {
    void writer.write(answerToNonsense(error));
    // The reader leaves off at what it cannot read; what came with it is read when more comes, be it nothing.
    setImmediate(() => process.stdin.emit('data', new Uint8Array()));
  });
  const connection = createConnection(ProposedFeatures.all, reader, writer);
  let isToldToEnd = false;
  connection.onShutdown(() => {
    isToldToEnd = true;
  });
  const end = (): never => process.exit(isToldToEnd ? 0 : 1);
  process.stdin.on('end', end);
  process.stdin.on('close', end);
  serveConnection(connection);
}

/** What JSON-RPC answers where it cannot know whom: the id is null, which the types of the protocol leave out. */
const answerToNonsense = ({ message }: Error): Message & object => ({
  jsonrpc: '2.0',
  ...{ id: null, error: { code: ErrorCodes.ParseError, message } },
});

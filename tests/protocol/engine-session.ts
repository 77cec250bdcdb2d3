/** A language server in this process with an engine of the test's own, and the editor's end of its connection. */
import { PassThrough } from 'node:stream';
import {
  createConnection,
  createMessageConnection,
  type MessageConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import type { Engine } from '../../server/language/open-documents.ts';
import { serveConnection } from '../../server/language/serve-connection.ts';

/** Starts the server; `listen` sets the editor's handlers before it says anything. */
export async function startWithEngine(
  engine: Engine,
  listen: (editor: MessageConnection) => void,
): Promise<MessageConnection> {
  const toServer = new PassThrough();
  const toEditor = new PassThrough();
  serveConnection(createConnection(new StreamMessageReader(toServer), new StreamMessageWriter(toEditor)), engine);
  const editor = createMessageConnection(new StreamMessageReader(toEditor), new StreamMessageWriter(toServer));
  listen(editor);
  editor.listen();
  await editor.sendRequest('initialize', { processId: null, rootUri: null, capabilities: {} });
  return editor;
}

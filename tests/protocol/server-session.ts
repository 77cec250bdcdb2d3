/** A language server as an editor sees it: its own process, spoken to in messages. */
import { type ChildProcess, fork, spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import {
  createMessageConnection,
  type Diagnostic,
  type Hover,
  IPCMessageReader,
  IPCMessageWriter,
  type InitializeResult,
  type MessageConnection,
  type Position,
  type PublishDiagnosticsParams,
  type Range,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';

const bundle = fileURLToPath(new URL('../../dist/server.cjs', import.meta.url));

export type Transport = 'stdio' | 'node-ipc';

interface Waiting {
  readonly uri: string;
  readonly version: number;
  readonly resolve: (diagnostics: Diagnostic[]) => void;
}

export class ServerSession {
  readonly capabilities: InitializeResult['capabilities'];
  /** Every set of diagnostics received, in order. */
  readonly received: PublishDiagnosticsParams[] = [];
  readonly logged: string[] = [];
  private readonly child: ChildProcess;
  private readonly connection: MessageConnection;
  private waiting: Waiting[] = [];

  private constructor(child: ChildProcess, connection: MessageConnection, result: InitializeResult) {
    this.child = child;
    this.connection = connection;
    this.capabilities = result.capabilities;
    connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) =>
      this.receive(params),
    );
    connection.onNotification('window/logMessage', ({ message }: { message: string }) => {
      this.logged.push(message);
    });
  }

  /** Starts the bundled server in a workspace folder, named by its address, and shakes hands. Throws when the bundle has not been built. */
  static async start(transport: Transport, folder: string | null = null): Promise<ServerSession> {
    if (!existsSync(bundle)) throw new Error(`${bundle} is missing: run "npm run build" first`);
    const { child, connection } = transport === 'stdio' ? overStreams() : overIpc();
    connection.listen();
    const result = await connection.sendRequest<InitializeResult>('initialize', {
      processId: process.pid,
      rootUri: folder,
      workspaceFolders: folder === null ? null : [{ uri: folder, name: 'workspace' }],
      capabilities: {},
    });
    const session = new ServerSession(child, connection, result);
    await connection.sendNotification('initialized', {});
    return session;
  }

  async open(uri: string, text: string, version = 1): Promise<Diagnostic[]> {
    const diagnostics = this.diagnosticsOf(uri, version);
    await this.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId: 'halflap', version, text },
    });
    return diagnostics;
  }

  /** Replaces the words at `range`; with no range, the whole text. The diagnostics of that version are given. */
  async change(uri: string, version: number, text: string, range?: Range): Promise<Diagnostic[]> {
    const diagnostics = this.diagnosticsOf(uri, version);
    await this.notifyChange(uri, version, text, range);
    return diagnostics;
  }

  async notifyChange(uri: string, version: number, text: string, range?: Range): Promise<void> {
    await this.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: [range ? { range, text } : { text }],
    });
  }

  notify(method: string, params: object): Promise<void> {
    return this.connection.sendNotification(method, params);
  }

  ask<Answer>(method: string, params: object): Promise<Answer> {
    return this.connection.sendRequest<Answer>(method, params);
  }

  /** The Markdown of a hover; an empty string where there is none. */
  async hover(uri: string, position: Position): Promise<string> {
    const hover = await this.ask<Hover | null>('textDocument/hover', { textDocument: { uri }, position });
    const contents = hover?.contents;
    return typeof contents === 'object' && 'value' in contents ? contents.value : '';
  }

  /** Asks the server to end and gives its exit code. */
  async stop(): Promise<number | null> {
    const ended = new Promise<number | null>((resolve) => this.child.once('exit', resolve));
    await this.connection.sendRequest('shutdown');
    await this.connection.sendNotification('exit');
    const code = await ended;
    this.connection.dispose();
    return code;
  }

  /** The diagnostics of `version`, once they come. */
  diagnosticsOf(uri: string, version: number): Promise<Diagnostic[]> {
    return new Promise((resolve) => this.waiting.push({ uri, version, resolve }));
  }

  private receive(params: PublishDiagnosticsParams): void {
    this.received.push(params);
    const isAwaited = ({ uri, version }: Waiting): boolean => uri === params.uri && version === params.version;
    for (const { resolve } of this.waiting.filter(isAwaited)) resolve(params.diagnostics);
    this.waiting = this.waiting.filter((waiting) => !isAwaited(waiting));
  }
}

interface Link {
  readonly child: ChildProcess;
  readonly connection: MessageConnection;
}

function overStreams(): Link {
  const child = spawn(process.execPath, [bundle, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
  const connection = createMessageConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  return { child, connection };
}

function overIpc(): Link {
  const child = fork(bundle, ['--node-ipc'], { stdio: 'inherit', execArgv: [] });
  return { child, connection: createMessageConnection(new IPCMessageReader(child), new IPCMessageWriter(child)) };
}

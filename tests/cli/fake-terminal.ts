/** A terminal for tests: what goes in is given, what comes out is kept. */
import type { Terminal } from '../../server/cli/terminal.ts';

export class FakeTerminal implements Terminal {
  output = '';
  /** Everything written that was no text. */
  bytes = new Uint8Array();
  errors = '';
  /** How often it was asked to speak with an editor. */
  served = 0;
  private readonly input: Uint8Array;
  readonly outputIsTerminal: boolean;
  readonly errorsAreTerminal: boolean;
  private readonly interrupted: boolean;

  constructor(
    options: {
      readonly input?: string | Uint8Array;
      readonly outputIsTerminal?: boolean;
      readonly errorsAreTerminal?: boolean;
      readonly interrupted?: boolean;
    } = {},
  ) {
    const { input = '', outputIsTerminal = false, errorsAreTerminal = false, interrupted = false } = options;
    this.interrupted = interrupted;
    this.input = typeof input === 'string' ? new TextEncoder().encode(input) : input;
    this.outputIsTerminal = outputIsTerminal;
    this.errorsAreTerminal = errorsAreTerminal;
  }

  readInput(): Promise<Uint8Array> {
    return Promise.resolve(this.input);
  }

  write(content: string | Uint8Array): Promise<void> {
    if (typeof content === 'string') this.output += content;
    else this.bytes = Uint8Array.from([...this.bytes, ...content]);
    return Promise.resolve();
  }

  /** Ctrl-C at any moment from the beginning on. */
  onInterrupt(stop: () => void): () => void {
    if (this.interrupted) stop();
    return () => undefined;
  }

  serveEditor(): Promise<void> {
    this.served += 1;
    return Promise.resolve();
  }

  writeError(text: string): void {
    this.errors += text;
  }
}

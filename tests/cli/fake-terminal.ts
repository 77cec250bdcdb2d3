/** A terminal for tests: what goes in is given, what comes out is kept. */
import type { Terminal } from '../../server/cli/terminal.ts';

export class FakeTerminal implements Terminal {
  output = '';
  errors = '';
  private readonly input: Uint8Array;
  readonly outputIsTerminal: boolean;
  readonly errorsAreTerminal: boolean;

  constructor(
    options: {
      readonly input?: string | Uint8Array;
      readonly outputIsTerminal?: boolean;
      readonly errorsAreTerminal?: boolean;
    } = {},
  ) {
    const { input = '', outputIsTerminal = false, errorsAreTerminal = false } = options;
    this.input = typeof input === 'string' ? new TextEncoder().encode(input) : input;
    this.outputIsTerminal = outputIsTerminal;
    this.errorsAreTerminal = errorsAreTerminal;
  }

  readInput(): Promise<Uint8Array> {
    return Promise.resolve(this.input);
  }

  write(text: string): Promise<void> {
    this.output += text;
    return Promise.resolve();
  }

  writeError(text: string): void {
    this.errors += text;
  }
}

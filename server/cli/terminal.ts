/** What a verb may touch of the process it runs in, so that tests can give it another. */
import { WrongUsage } from './wrong-usage.ts';

export interface Terminal {
  /** The bytes of standard input to its end. */
  readInput(): Promise<Uint8Array>;
  /** Resolves when the text, or the bytes, are handed over. */
  write(content: string | Uint8Array): Promise<void>;
  writeError(text: string): void;
  /** Calls `stop` when the person asks to stop (Ctrl-C), once; a second time ends the process. Gives what undoes it. */
  onInterrupt(stop: () => void): () => void;
  readonly outputIsTerminal: boolean;
  readonly errorsAreTerminal: boolean;
}

/** The process's own streams. A reader that stops early (`| head`) is not an error. */
export function processTerminal(): Terminal {
  const ignoreClosedPipe = (error: NodeJS.ErrnoException): void => {
    if (error.code !== 'EPIPE') throw error;
  };
  process.stdout.on('error', ignoreClosedPipe);
  process.stderr.on('error', ignoreClosedPipe);
  return {
    readInput: async () => {
      if (process.stdin.isTTY) throw new WrongUsage('“-” reads standard input, and nothing is piped into it');
      const chunks: Buffer[] = [];
      for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
      return Buffer.concat(chunks);
    },
    write: (content) =>
      new Promise((resolve) => {
        process.stdout.write(content, () => {
          resolve();
        });
      }),
    writeError: (text) => process.stderr.write(text),
    onInterrupt: (stop) => {
      process.once('SIGINT', stop);
      return () => process.off('SIGINT', stop);
    },
    outputIsTerminal: process.stdout.isTTY,
    errorsAreTerminal: process.stderr.isTTY,
  };
}

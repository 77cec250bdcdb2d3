/** What a verb may touch of the process it runs in, so that tests can give it another. */
import { reasonOf } from '../machine/reason.ts';
import { OutputClosed, WrongUsage } from './wrong-usage.ts';

export interface Terminal {
  /** The bytes of standard input to its end. */
  readInput(): Promise<Uint8Array>;
  /** Resolves when the text, or the bytes, are handed over; throws OutputClosed where standard output takes no more. */
  write(content: string | Uint8Array): Promise<void>;
  writeError(text: string): void;
  /** Calls `stop` when the person asks to stop (Ctrl-C), once; a second time ends the process. Gives what undoes it. */
  onInterrupt(stop: () => void): () => void;
  /** Begins to speak with an editor on the standard streams, until it ends that. */
  serveEditor(): Promise<void>;
  readonly outputIsTerminal: boolean;
  readonly errorsAreTerminal: boolean;
}

/** The process's own streams, and who speaks with an editor on them. */
export function processTerminal(serveEditor: Terminal['serveEditor']): Terminal {
  // Whoever writes is told by the callback of its writing; of standard error nobody is left to be told.
  const toldElsewhere = (): void => undefined;
  process.stdout.on('error', toldElsewhere);
  process.stderr.on('error', toldElsewhere);
  return {
    readInput,
    write: (content) =>
      new Promise((resolve, reject) => {
        process.stdout.write(content, (error) => {
          if (error) reject(new OutputClosed(`cannot write standard output: ${reasonOf(error)}`));
          else resolve();
        });
      }),
    writeError: (text) => process.stderr.write(text),
    onInterrupt: (stop) => {
      process.once('SIGINT', stop);
      return () => process.off('SIGINT', stop);
    },
    serveEditor,
    outputIsTerminal: process.stdout.isTTY,
    errorsAreTerminal: process.stderr.isTTY,
  };
}

async function readInput(): Promise<Uint8Array> {
  if (process.stdin.isTTY) throw new WrongUsage('“-” reads standard input, and nothing is piped into it');
  const chunks: Buffer[] = [];
  try {
    for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
  } catch (error) {
    throw new WrongUsage(`cannot read standard input: ${reasonOf(error)}`);
  }
  return Buffer.concat(chunks);
}

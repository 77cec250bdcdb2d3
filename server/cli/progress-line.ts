/** A line that says what is being done, for a person who waits at a terminal; gone when it is done. */
import type { Terminal } from './terminal.ts';

const eraseLine = '\r\u001b[K';

/** Does `work` under a line saying `what`; nothing is said where standard error is no terminal. */
export function withProgressLine<Result>(terminal: Terminal, what: string, work: () => Result): Result {
  if (!terminal.errorsAreTerminal) return work();
  terminal.writeError(`${what} …`);
  try {
    return work();
  } finally {
    terminal.writeError(eraseLine);
  }
}

/** A line that says what is being done, for a person who waits at a terminal; gone when it is done. */
import type { Terminal } from './terminal.ts';

const eraseLine = '\r\u001b[K';

/** Does `work` under a line that it may write anew as it goes. */
export async function withLiveLine<Result>(
  terminal: Terminal,
  work: (say: (words: string) => void) => Promise<Result>,
): Promise<Result> {
  if (!terminal.errorsAreTerminal) return work(() => undefined);
  let said = '';
  const say = (words: string): void => {
    if (words !== said) terminal.writeError(`${said === '' ? '' : eraseLine}${words} …`);
    said = words;
  };
  try {
    return await work(say);
  } finally {
    if (said !== '') terminal.writeError(eraseLine);
  }
}

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

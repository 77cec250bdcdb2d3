/** One thing the command can do. */
import type { Terminal } from './terminal.ts';

export interface Verb {
  /** Half a line for the list of verbs. */
  readonly summary: string;
  /** What `halflap VERB --help` prints; ends with a line break. */
  readonly help: string;
  /** Does it and gives the exit code; `args` are those after the verb. Throws WrongUsage. */
  run(args: readonly string[], terminal: Terminal): Promise<number>;
}

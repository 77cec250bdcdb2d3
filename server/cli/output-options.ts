/** What all verbs with an output share: where to, and whether to replace. */
import type { Terminal } from './terminal.ts';
import type { Destination } from './write-output.ts';
import { WrongUsage } from './wrong-usage.ts';

export const outputOptions = {
  as: { type: 'string' },
  output: { type: 'string', short: 'o' },
  force: { type: 'boolean' },
} as const;

export const outputHelp = `  -o, --output PATH   write there (folders are made) instead of to standard output
  --force             replace PATH if it is there already
  --help              this text
`;

/** Throws WrongUsage where bytes that are no text would run over a terminal. */
export function refuseBytesOnTerminal(format: string, { path }: Destination, terminal: Terminal): void {
  if (path === null && terminal.outputIsTerminal) throw new WrongUsage(`${format} is no text: name a file with -o`);
}

export function destinationOf(values: { readonly output?: string; readonly force?: boolean }): Destination {
  return { path: values.output ?? null, force: values.force ?? false };
}

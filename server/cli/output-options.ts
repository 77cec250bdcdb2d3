/** What all verbs with an output share: where to, and whether to replace. */
import type { Destination } from './write-output.ts';

export const outputOptions = {
  as: { type: 'string' },
  output: { type: 'string', short: 'o' },
  force: { type: 'boolean' },
} as const;

export const outputHelp = `  -o, --output PATH   write there (folders are made) instead of to standard output
  --force             replace PATH if it is there already
  --help              this text
`;

export function destinationOf(values: { readonly output?: string; readonly force?: boolean }): Destination {
  return { path: values.output ?? null, force: values.force ?? false };
}

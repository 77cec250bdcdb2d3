/** The examples of the reference page, one after the other: a sound file that uses every phrase. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const page = readFileSync(fileURLToPath(new URL('../../grammar/README.md', import.meta.url)), 'utf8');

export const examples: readonly string[] = [...page.matchAll(/```lap\r?\n([\s\S]*?)```/g)].map(
  ([, text]) => text ?? '',
);

export const referenceText = examples.join('\n');

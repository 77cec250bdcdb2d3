/** Snippets are designs: all of them together, with their first choices, make a sound file. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { analyse } from '../../server/analyse.ts';

interface Snippet {
  readonly body: readonly string[];
}

/** The text that a snippet leaves when every field keeps its first choice. */
const filled = ({ body }: Snippet): string =>
  body
    .join('\n')
    .replaceAll(/\$\{\d+\|([^,|]+)[^|]*\|\}/g, '$1')
    .replaceAll(/\$\{\d+:([^}]*)\}/g, '$1');

it('make a sound file together', () => {
  const path = new URL('../../client/snippets.json', import.meta.url);
  const snippets = JSON.parse(readFileSync(path, 'utf8')) as Record<string, Snippet>;
  const text = Object.values(snippets).map(filled).join('\n\n');
  const { problems, panels } = analyse(text);
  expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  expect(panels.map(({ panel }) => panel.name)).toEqual(['window']);
});

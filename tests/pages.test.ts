/** What the pages for developers say of files is true: each exists, and "how to add" names all that it takes. */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));
const read = (file: string): string => readFileSync(join(root, file), 'utf8');

const folders = ['.ci', '.config', 'client', 'grammar', 'samples', 'server', 'tests'];
const files = folders
  .flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }).map((file) => join(folder, file)),
  )
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => !file.includes('node_modules'));
const pages = ['DEVELOPERS.md', 'README.md', 'grammar/README.md'];

/** Words in backquotes that look like the path of a file of ours. */
const pathsOn = (page: string): string[] =>
  [...page.replace(/```[\s\S]*?```/g, '').matchAll(/`([\w./-]+\.(?:ts|mts|mjs|md|json|lap|ebnf))`/g)].map(
    ([, path]) => path ?? '',
  );

test.each(pages)('every file that %s names exists', (page) => {
  const isThere = (path: string): boolean =>
    files.includes(path) ||
    files.some((file) => file.endsWith(`/${path}`)) ||
    (!/[/]/.test(path) && pages.includes(path));
  expect(pathsOn(read(page)).filter((path) => !isThere(path) && !examplesInText.includes(basename(path)))).toEqual([]);
});

/** Files of a maker's, not of ours. */
const examplesInText = ['strips.lap', 'bench.json', 'ginkgo.json'];

/** The files that a numbered list under a heading names. */
function filesUnder(page: string, heading: string): string[] {
  const [, section = ''] = read(page).split(`## ${heading}\n`);
  const list = section.split('\n## ')[0] ?? '';
  return [...list.matchAll(/^\d\. `([^`]+)`/gm)].map(([, file]) => file ?? '').sort();
}

const sources = files.filter((file) => /^(?:grammar|server|client)\/.*\.ts$/.test(file));

/** The sources that name a word or a kind in their code: as text, as a token, or as a word with its meaning. */
function filesThatKnow(name: string): string[] {
  const known = new RegExp(
    `'${name}'|keyword\\.${name}\\b|\\b${name}: (?:constant|link|property|declaration|\\{ rule:)`,
  );
  return sources.filter((file) => known.test(read(file))).sort();
}

describe('how to add', () => {
  test.each(['incentre', 'intersection'])('a kind of place, such as %s', (kind) => {
    const named = filesUnder('DEVELOPERS.md', 'Add a kind of place');
    expect(named.length).toBe(5);
    expect(filesThatKnow(kind)).toEqual(named);
  });

  test('a property', () => {
    expect(filesThatKnow('over_width')).toEqual(filesUnder('grammar/README.md', 'Adding a property'));
  });
});

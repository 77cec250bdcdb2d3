/** Files that import one another in a circle can only be read, moved and tested together: there are none, of types neither. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { preProcessFile } from 'typescript';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Paths below the root of the files that each file imports, types counted in. */
function importsBelow(folders: readonly string[]): Map<string, readonly string[]> {
  const files = folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts'))
      .map((file) => join(folder, file)),
  );
  return new Map(
    files.map((file) => {
      const { importedFiles } = preProcessFile(readFileSync(join(root, file), 'utf8'));
      const own = importedFiles.filter(({ fileName }) => fileName.startsWith('.'));
      return [file, own.map(({ fileName }) => relative(root, join(root, dirname(file), fileName)))];
    }),
  );
}

/** The circles that are found by going down from each file once: each as the files of one way round. */
function circlesOf(imports: ReadonlyMap<string, readonly string[]>): string[] {
  const circles: string[] = [];
  const done = new Set<string>();
  const visit = (file: string, way: readonly string[]): void => {
    if (way.includes(file)) circles.push([...way.slice(way.indexOf(file)), file].join(' → '));
    if (way.includes(file) || done.has(file)) return;
    for (const next of imports.get(file) ?? []) visit(next, [...way, file]);
    done.add(file);
  };
  for (const file of imports.keys()) visit(file, []);
  return circles;
}

test('a circle is found, wherever one comes into it', () => {
  const imports = { a: ['b'], b: ['c', 'd'], c: ['b'], d: [] };
  expect(circlesOf(new Map(Object.entries(imports)))).toEqual(['b → c → b']);
});

test('no files import one another in a circle', () => {
  const imports = importsBelow(['grammar', 'server', 'client']);
  expect(imports.get(join('server', 'analyse.ts'))).toContain(join('server', 'design', 'design.ts'));
  expect(circlesOf(imports)).toEqual([]);
});

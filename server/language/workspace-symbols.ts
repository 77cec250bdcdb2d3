/** Every declaration of the workspace, open or not, sound or not, that may be meant by a few letters. */
import { lineStartsOf } from '../../grammar/tree/source-range.ts';
import { buildFiles } from '../design/builders/build-files.ts';
import { loadFiles } from '../design/files/load-files.ts';
import type { Definition } from '../design/names/name-index.ts';
import type { DeclarationKind } from './features/declarations.ts';
import type { OpenDocuments, PlaceInFile } from './open-documents.ts';

export interface DeclarationInFile {
  readonly name: string;
  readonly kind: DeclarationKind;
  readonly place: PlaceInFile;
}

/** Those whose names hold the letters of `query` in their order; all of them for an empty query. */
export function declarationsInWorkspace(query: string, documents: OpenDocuments): DeclarationInFile[] {
  return documents.everyReader().flatMap(({ uri, text, place }) => {
    const lineStarts = lineStartsOf(text);
    const { names } = buildFiles(loadFiles(text, place));
    return names.definitions
      .filter(isDeclared)
      .filter(({ name }) => holdsInOrder(name, query))
      .map(({ name, kind, nameRange }) => ({ name, kind, place: { uri, lineStarts, range: nameRange } }));
  });
}

/** Blocks alone: values and the parts of motifs are found in their file. */
const isDeclared = (definition: Definition): definition is Definition & { readonly kind: DeclarationKind } =>
  definition.scope === null && definition.kind !== 'let';

function holdsInOrder(name: string, letters: string): boolean {
  let from = 0;
  for (const letter of letters.toLocaleLowerCase('en')) {
    const found = name.toLocaleLowerCase('en').indexOf(letter, from);
    if (found < 0) return false;
    from = found + 1;
  }
  return true;
}

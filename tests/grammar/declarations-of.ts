/** Every declaration of a text, each in a text as short as it takes: so a great many damaged ones can be read and built. */
import { parseDocument } from '../../grammar/reading/parse-document.ts';
import { spanOf, type SourceRange } from '../../grammar/tree/source-range.ts';
import type { Declaration } from '../../grammar/tree/syntax-tree.ts';
import { indexNames } from '../../server/design/names/name-index.ts';

/** `text` is sound, and its characters from `start` to `end` are the declaration. */
export interface DeclarationInText extends SourceRange {
  readonly title: string;
  readonly text: string;
}

/** What every text keeps: a bench, too, says things that others need without naming it. */
const always = new Set<Declaration['kind']>(['title', 'units', 'bench']);

/**
 * Around each declaration stand the head of the file, its neighbours, the two shortest of those that name it, and all
 * that any of them name; files are used only where that takes one.
 */
export function declarationsOf(text: string): DeclarationInText[] {
  const { declarations } = parseDocument(text).tree;
  const named = namesBetween(text, declarations);
  return declarations.map((declaration, index) => {
    const kept = new Set(declarations.filter(({ kind }) => always.has(kind)));
    const naming = declarations
      .filter((other) => named.get(other)?.has(declaration))
      .sort((first, second) => lengthOf(first) - lengthOf(second))
      .slice(0, 2);
    const toAdd = [declaration, ...declarations.slice(Math.max(0, index - 1), index + 2), ...naming];
    for (let each = toAdd.pop(); each; each = toAdd.pop()) {
      if (!kept.has(each)) toAdd.push(...(named.get(each) ?? []));
      kept.add(each);
    }
    const parts = declarations.filter((each) => kept.has(each)).map((each) => partOf(each, text));
    const before = parts
      .slice(
        0,
        parts.findIndex(({ of }) => of === declaration),
      )
      .map((part) => part.words);
    const own = text.slice(declaration.range.start, declaration.range.end);
    const start = before.reduce((length, words) => length + words.length + 1, 0);
    const title = /^[^{\n]*/.exec(own)?.[0].trim() ?? own;
    return { title, text: parts.map((part) => part.words).join('\n'), start, end: start + own.length };
  });
}

const lengthOf = ({ range }: Declaration): number => range.end - range.start;

const partOf = (of: Declaration, text: string) => ({ of, words: text.slice(of.range.start, of.range.end) });

/** The declarations whose names stand in each; names that no declaration gives are those of used files. */
function namesBetween(text: string, declarations: readonly Declaration[]): Map<Declaration, Set<Declaration>> {
  const holding = ({ start }: SourceRange): Declaration | undefined =>
    declarations.find(({ range }) => range.start <= start && start < range.end);
  const { references, definitions } = indexNames(parseDocument(text).tree);
  const uses = declarations.filter(({ kind }) => kind === 'use');
  const named = new Map(declarations.map((declaration) => [declaration, new Set<Declaration>()]));
  for (const { range, definition, mayBeBuiltIn, scope } of references) {
    const motif = definitions.find(({ kind, name }) => kind === 'motif' && name === scope);
    const given = definition ?? motif;
    const from = holding(range);
    const to = given ? [holding(spanOf(given.range, given.range))] : mayBeBuiltIn ? [] : uses;
    for (const each of to) if (from && each) named.get(from)?.add(each);
  }
  return named;
}

/** A text and all the files it uses, each read once, with what is wrong with every `use`. */
import { nodesOf } from '../../../grammar/tree/walk-tree.ts';
import { parseDocument } from '../../../grammar/reading/parse-document.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import { nearestWord } from '../../../grammar/problems/nearest-word.ts';
import { fileStride } from '../../../grammar/tree/source-range.ts';
import type { TextLiteral } from '../../../grammar/tree/syntax-nodes.ts';
import type { SyntaxTree, UseDeclaration } from '../../../grammar/tree/syntax-tree.ts';
import { libraryPath, libraryText, libraryNames } from './built-in-libraries.ts';
import { followPath } from './file-paths.ts';
import { cannotFollow, cannotRead } from '../outlines/path-problems.ts';
import {
  type DrawingRead,
  fileName,
  type SourceFile,
  type SourceFiles,
  type SourcePlace,
  type Use,
} from './source-file.ts';

interface LoadedFile extends SourceFile {
  readonly uses: Use[];
}

/** The file a `use` means; null, with the reason, where there is none. */
interface Found {
  readonly file: LoadedFile | null;
  readonly problem: Problem | null;
}

/** The file in hand first, the others in the order in which they are first used. */
export function loadFiles(text: string, place: SourcePlace): SourceFiles {
  const loader = new Loader(place);
  const first = loader.load(place.path, text);
  return [first, ...loader.files.slice(1)];
}

class Loader {
  readonly files: LoadedFile[] = [];
  /** The files whose uses are being followed, each used by the one before. */
  private readonly way: LoadedFile[] = [];
  /** Loops found, by the first of their files. */
  private readonly loops = new Map<SourceFile, readonly SourceFile[]>();

  constructor(private readonly place: SourcePlace) {}

  load(path: string, text: string): LoadedFile {
    const number = this.files.length;
    const parsed = parseDocument(text, number * fileStride);
    const file: LoadedFile = { number, path, text, parsed, uses: [], drawings: this.drawingsOf(parsed.tree, path) };
    this.files.push(file);
    this.way.push(file);
    for (const declaration of file.parsed.tree.declarations) {
      if (declaration.kind === 'use') file.uses.push(this.follow(declaration, file));
    }
    this.way.pop();
    return file;
  }

  private follow(declaration: UseDeclaration, from: LoadedFile): Use {
    const found = this.find(declaration, from);
    if (found.problem || !found.file) return { declaration, ...found };
    const { file } = found;
    const start = this.way.indexOf(file);
    if (start >= 0) this.loops.set(file, [...this.way.slice(start), file]);
    const loop = this.loops.get(from);
    this.loops.delete(from);
    const used = start >= 0 ? null : file;
    if (loop) return { declaration, file: used, problem: usesItself(declaration, loop) };
    const first = from.uses.find((use) => use.file === file);
    return { declaration, file: used, problem: first ? usedAlready(declaration, first.declaration) : null };
  }

  /** The file a `use` means, loaded now if it wasn't yet. */
  private find(declaration: UseDeclaration, from: SourceFile): Found {
    const { source } = declaration;
    if (source.kind === 'library') {
      const text = libraryText(source.text);
      if (text === null) return { file: null, problem: noLibrary(source) };
      return { file: this.known(libraryPath(source.text)) ?? this.load(libraryPath(source.text), text), problem: null };
    }
    const followed = followPath(from.path, source.text);
    const written = { ...source, example: 'use "parts/motifs.lap"' };
    if (followed.kind !== 'path') return { file: null, problem: cannotFollow(written, followed.kind) };
    const known = this.known(followed.path);
    if (known) return { file: known, problem: null };
    const read = this.place.read(followed.path);
    if (read.kind === 'text') return { file: this.load(followed.path, read.text), problem: null };
    return { file: null, problem: cannotRead(written, followed.path, read, this.adviceFor(source, followed.path)) };
  }

  private known(path: string): LoadedFile | undefined {
    return this.files.find((file) => file.path === path);
  }

  private adviceFor(source: UseDeclaration['source'], path: string): string {
    const isForgotten = !path.endsWith('.lap') && this.place.read(`${path}.lap`).kind === 'text';
    return isForgotten
      ? `Did you mean \`${source.text}.lap\`?`
      : 'Write its path from the folder of this file, as in `use "parts/motifs.lap"`.';
  }

  /** The drawings that the outlines of a tree name. */
  private drawingsOf(tree: SyntaxTree, from: string): Map<TextLiteral, DrawingRead> {
    return new Map(nodesOf(tree, 'drawing').map(({ file }) => [file, this.drawing(file, from)]));
  }

  private drawing(file: TextLiteral, from: string): DrawingRead {
    const example = 'path from "drawings/leaf.svg" id "blade"';
    const written = { ...file, example };
    const followed = followPath(from, file.text);
    if (followed.kind !== 'path') return { kind: 'problem', problem: cannotFollow(written, followed.kind) };
    const read = this.place.read(followed.path);
    if (read.kind === 'text') return { kind: 'text', text: read.text };
    const advice = `Write its path from the folder of this file, as in \`${example}\`.`;
    return { kind: 'problem', problem: cannotRead(written, followed.path, read, advice) };
  }
}

function noLibrary(source: UseDeclaration['source']): Problem {
  const near = nearestWord(source.text, libraryNames);
  const libraries = libraryNames.map((name) => `\`use ${name}\``).join(', ');
  const advice = near ? `Did you mean \`${near}\`?` : `There is ${libraries}; a file stands in quotes.`;
  return problemAt('cannotUseFile', source.range, `No library \`${source.text}\` comes with Halflap. ${advice}`);
}

function usesItself({ source }: UseDeclaration, loop: readonly SourceFile[]): Problem {
  const way = loop.map(({ path }) => `\`${fileName(path)}\``).join(' → ');
  return problemAt('cyclicUse', source.range, `This file uses itself: ${way}. Take one of these \`use\` lines out.`);
}

function usedAlready({ keyword }: UseDeclaration, first: UseDeclaration): Problem {
  const related = [{ range: first.range, message: 'It is used here first.' }];
  return problemAt('repeatedProperty', keyword, 'This file is used already. Take one of the two out.', related);
}

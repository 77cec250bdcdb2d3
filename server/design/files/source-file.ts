/** The files of a design, and the port through which a door lets us read them. */
import type { ParsedDocument } from '../../../grammar/reading/parse-document.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import { fileNumberOf } from '../../../grammar/tree/source-range.ts';
import type { TextLiteral } from '../../../grammar/tree/syntax-nodes.ts';
import type { UseDeclaration } from '../../../grammar/tree/syntax-tree.ts';

/** What reading a file came to. `outside`: it lies, or leads, above the workspace folder. */
export type FileRead =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'missing' }
  | { readonly kind: 'outside' }
  | { readonly kind: 'unreadable'; readonly reason: string };

/** Reads a file by its path below the workspace folder, folders parted by `/`. Never throws. */
export type FileReader = (path: string) => FileRead;

/** Where a text stands in its workspace: its own path, and how the files beside it are read. */
export interface SourcePlace {
  readonly path: string;
  readonly read: FileReader;
}

/** A text that stands nowhere, such as one not saved yet: it has no files beside it. */
export const nowhere: SourcePlace = { path: '', read: () => ({ kind: 'missing' }) };

/** One `use` of a file: the file it brings, null where it brings none; and what is wrong with it. */
export interface Use {
  readonly declaration: UseDeclaration;
  readonly file: SourceFile | null;
  readonly problem: Problem | null;
}

/** A drawing that an outline is taken from: its text, or what is wrong with its name. */
export type DrawingRead =
  { readonly kind: 'text'; readonly text: string } | { readonly kind: 'problem'; readonly problem: Problem };

/** A text with its tree. All its ranges are counted from its number times `fileStride`. */
export interface SourceFile {
  /** 0 is the file in hand, the others follow as they are first used. */
  readonly number: number;
  /** Below the workspace folder; `halflap:NAME` for a library that comes with the program. */
  readonly path: string;
  readonly text: string;
  readonly parsed: ParsedDocument;
  readonly uses: readonly Use[];
  /** By the words that name them. */
  readonly drawings: ReadonlyMap<TextLiteral, DrawingRead>;
}

/** At least the file in hand. */
export type SourceFiles = readonly [SourceFile, ...SourceFile[]];

/** The file that holds an offset. */
export const fileAt = (files: readonly SourceFile[], offset: number): SourceFile | undefined =>
  files[fileNumberOf(offset)];

/** The last part of a path, as people call a file. */
export const fileName = (path: string): string => path.slice(path.lastIndexOf('/') + 1);

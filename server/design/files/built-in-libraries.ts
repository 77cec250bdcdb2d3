/** The libraries that come with the program, written in the notation itself. */
import motifs from '../../../samples/motifs/motifs.lap';

const texts: ReadonlyMap<string, string> = new Map([['motifs', motifs]]);

const scheme = 'halflap:';

/** Names that `use` may bring in without quotes. */
export const libraryNames: readonly string[] = [...texts.keys()];

/** The text of a library, null where there is none of that name. */
export const libraryText = (name: string): string | null => texts.get(name) ?? null;

/** The path by which a library is known among the files of a design. */
export const libraryPath = (name: string): string => `${scheme}${name}.lap`;

/** Where an editor shows a library, read-only: the address of its path, and the library of an address. */
export const libraryAddress = (path: string): string => path.replace(scheme, `${scheme}/`);

export const libraryAt = (address: string): string | null =>
  libraryNames.find((name) => libraryAddress(libraryPath(name)) === address) ?? null;

export const isLibraryPath = (path: string): boolean => path.startsWith(scheme);

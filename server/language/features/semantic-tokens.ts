/** Names coloured by what they name, which no pattern of letters can tell: a strip and a motif look alike in `hemp of bass`. */
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import type { Analysis } from '../../analyse.ts';
import { isLibraryPath } from '../../design/files/built-in-libraries.ts';
import type { NameKind } from '../../design/names/name-index.ts';
import { fileAt } from '../../design/files/source-file.ts';
import { mentionsOf } from './names.ts';

/** Types of the protocol, in the order in which tokens are numbered. */
export const tokenTypes = [
  'variable',
  'type',
  'struct',
  'class',
  'interface',
  'namespace',
  'parameter',
  'property',
] as const;
export const tokenModifiers = ['declaration', 'defaultLibrary'] as const;

export interface NameToken {
  readonly range: SourceRange;
  readonly type: (typeof tokenTypes)[number];
  readonly modifiers: readonly (typeof tokenModifiers)[number][];
}

const typeOf: Record<NameKind, NameToken['type']> = {
  let: 'variable',
  wood: 'type',
  strip: 'type',
  sheet: 'type',
  resin: 'type',
  finish: 'type',
  bench: 'type',
  grid: 'struct',
  motif: 'class',
  outline: 'interface',
  panel: 'namespace',
  blank: 'namespace',
  band: 'namespace',
  pour: 'namespace',
  board: 'namespace',
  work: 'namespace',
  kit: 'namespace',
  node: 'parameter',
  piece: 'property',
  divider: 'property',
};

/** Every name of the text that means something, in order. */
export function nameTokens({ names, files }: Analysis): NameToken[] {
  return mentionsOf(names).flatMap(({ range, definition }): NameToken[] => {
    if (!definition) return [];
    const isDeclared = names.definitions.some(({ nameRange }) => nameRange.start === range.start);
    const isLibrary = isLibraryPath(fileAt(files, definition.nameRange.start)?.path ?? '');
    return [
      {
        range,
        type: typeOf[definition.kind],
        modifiers: [
          ...(isDeclared ? (['declaration'] as const) : []),
          ...(isLibrary ? (['defaultLibrary'] as const) : []),
        ],
      },
    ];
  });
}

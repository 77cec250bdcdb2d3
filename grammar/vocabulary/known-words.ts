/** Every word of the notation, by the place that gives it its meaning. None is reserved: each may also be a name. */
import { fileWords } from './file-words.ts';
import { gridWords } from './grid-words.ts';
import { materialWords } from './material-words.ts';
import { motifWords } from './motif-words.ts';
import { objectWords } from './object-words.ts';
import { outlineWords } from './outline-words.ts';
import { panelWords } from './panel-words.ts';
import { placeWords } from './place-words.ts';
import type { WordEntry, WordRole, WordTable } from './word-entry.ts';
import { workWords } from './work-words.ts';

/** One for each part of the notation; a test keeps them from saying the same place twice. */
export const wordTables: readonly WordTable[] = [
  fileWords,
  materialWords,
  gridWords,
  motifWords,
  placeWords,
  outlineWords,
  panelWords,
  objectWords,
  workWords,
];

/** The words that begin a phrase, by block. */
export const beginningWords = {
  ...fileWords.beginning,
  ...materialWords.beginning,
  ...gridWords.beginning,
  ...motifWords.beginning,
  ...outlineWords.beginning,
  ...panelWords.beginning,
  ...objectWords.beginning,
  ...workWords.beginning,
};

const wordsWithin = {
  ...fileWords.within,
  ...materialWords.within,
  ...gridWords.within,
  ...motifWords.within,
  ...placeWords.within,
  ...outlineWords.within,
  ...panelWords.within,
  ...objectWords.within,
  ...workWords.within,
};

type WordsOf<Table> = { [Place in keyof Table]: keyof Table[Place] & string }[keyof Table];

export type BlockKind = keyof typeof beginningWords;
export type BeginningWord<Block extends BlockKind> = keyof (typeof beginningWords)[Block] & string;
export type KnownWord = WordsOf<typeof beginningWords> | WordsOf<typeof wordsWithin>;

/** What each word does, wherever it stands. */
export const wordRoles = Object.fromEntries(
  wordTables
    .flatMap(({ beginning, within }) => [...Object.values(beginning), ...Object.values(within)])
    .flatMap((words) => Object.entries(words).map(([word, { role }]) => [word, role])),
) as Record<KnownWord, WordRole>;

export const isKnownWord = (text: string): text is KnownWord => Object.hasOwn(wordRoles, text);

/** What a word means where it begins a phrase of a block; null where it begins none. */
export const beginningWord = (block: BlockKind, word: string): WordEntry | null => entryIn(beginningWords[block], word);

/** What a word means further on in a phrase, where the rule reads it; null where it does not. */
export const wordWithin = (rule: string, word: string): WordEntry | null =>
  entryIn((wordsWithin as WordTable['within'])[rule] ?? {}, word);

const entryIn = (words: Readonly<Record<string, WordEntry>>, word: string): WordEntry | null =>
  Object.hasOwn(words, word) ? (words[word] ?? null) : null;

/** How a word of the notation is described: what it does in a phrase, and what it means there. */

/** What a word does in a phrase: editors colour by it, so a word does the same wherever it stands. */
export type WordRole = 'declaration' | 'property' | 'link' | 'constant' | 'unit';

export interface WordEntry {
  readonly role: WordRole;
  /** One line, said of this phrase alone. */
  readonly meaning: string;
}

/** Words of a part of the notation, by the place that gives them their meaning. */
export interface WordTable {
  /** Words that begin a phrase, by the block it stands in. */
  readonly beginning: Readonly<Record<string, Readonly<Record<string, WordEntry>>>>;
  /** Words further on in a phrase, by the rule that reads them. */
  readonly within: Readonly<Record<string, Readonly<Record<string, WordEntry>>>>;
}

export const declaration = (meaning: string): WordEntry => ({ role: 'declaration', meaning });
export const property = (meaning: string): WordEntry => ({ role: 'property', meaning });
export const link = (meaning: string): WordEntry => ({ role: 'link', meaning });
export const constant = (meaning: string): WordEntry => ({ role: 'constant', meaning });
export const unit = (meaning: string): WordEntry => ({ role: 'unit', meaning });

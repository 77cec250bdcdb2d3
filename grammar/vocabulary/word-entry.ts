/** How a word of the notation is described: what it does in a phrase, and its one-line meaning. */

/** What a word does in a phrase: editors colour by it. */
export type WordRole = 'declaration' | 'property' | 'link' | 'constant' | 'unit';

export interface WordEntry {
  readonly role: WordRole;
  readonly meaning: string;
}

export const declaration = (meaning: string): WordEntry => ({ role: 'declaration', meaning });
export const property = (meaning: string): WordEntry => ({ role: 'property', meaning });
export const link = (meaning: string): WordEntry => ({ role: 'link', meaning });
export const constant = (meaning: string): WordEntry => ({ role: 'constant', meaning });
export const unit = (meaning: string): WordEntry => ({ role: 'unit', meaning });

/** A word or name that may be written at a place. */
export interface Proposal {
  readonly label: string;
  readonly kind: 'word' | 'name';
  /** How it is written, or what kind of thing the name is. */
  readonly detail: string;
  /** What it means; empty for a name. */
  readonly meaning: string;
}

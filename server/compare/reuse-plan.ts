/** What a version can take over from pieces already cut for an earlier one: part of the contract of `compare --as json`. */

/** So many pieces of `mark`. */
export interface MarkCount {
  mark: string;
  count: number;
}

export interface ReuseStep {
  sort: 'piece' | 'strip';
  oldMark: string;
  newMark: string;
  count: number;
  how: 'as is' | 'trim';
  /** Length that comes off; 0 where the piece serves as it is, or only gets another point. */
  offMm: number;
}

export interface ReusePlan {
  /** What was cut of the old version. */
  cut: MarkCount[];
  steps: ReuseStep[];
  /** Of the new version, spares included. */
  stillToCut: MarkCount[];
  /** Of the old version, of no use in the new one. */
  leftOver: MarkCount[];
  /** Total of new pieces had from old ones: no plan gives more of them. */
  reused: number;
  note: string;
}

export const reuseNote =
  'Match batches by thickness before mixing old pieces with new ones: stock milled on another day can differ by a few hundredths.';

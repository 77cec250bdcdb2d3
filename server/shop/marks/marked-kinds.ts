/** Equal pieces and strips merged over all panels. Quantities are for the whole file: copies of panel and work counted in. */
import type { LaidPanel, PieceGroup, PieceShape, StripGroup } from '../../lattice/laid-panel.ts';

export interface MarkedPiece {
  readonly mark: string;
  readonly shape: PieceShape;
  /** The groups it gathers, each with the panel it came from. */
  readonly groups: readonly { readonly panel: LaidPanel; readonly group: PieceGroup }[];
  readonly whole: number;
  readonly trimmed: number;
  readonly make: number;
  readonly spare: number;
  readonly total: number;
}

export interface MarkedStrip {
  readonly mark: string;
  readonly groups: readonly { readonly panel: LaidPanel; readonly group: StripGroup }[];
  readonly make: number;
  readonly spare: number;
  readonly total: number;
}

/** Pairs of pieces cut as one length, scored and folded, by the marks of their halves, the longer first. */
export interface MarkedHinge {
  readonly halves: readonly [MarkedPiece, MarkedPiece];
  readonly make: number;
}

export interface MarkedKinds {
  readonly pieces: readonly MarkedPiece[];
  readonly strips: readonly MarkedStrip[];
  readonly hinges: readonly MarkedHinge[];
}

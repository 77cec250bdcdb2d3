/**
 * What a file says, with every name resolved and every quantity in one unit: lengths in millimetres, angles in degrees,
 * percentages as fractions. Plain data.
 */
import type { Bench, Grid, LengthUnit, Motif, Outline, Panel, StripStock } from './design-model.ts';
import type { FinishStock, ResinStock, SheetStock, WoodDeclaration } from './material-model.ts';
import type { Band, Blank, Board, Kit, Pour, Work } from './work-model.ts';

export interface Design {
  readonly title: string | null;
  readonly units: LengthUnit;
  readonly woods: readonly WoodDeclaration[];
  readonly sheets: readonly SheetStock[];
  readonly resins: readonly ResinStock[];
  readonly finishes: readonly FinishStock[];
  readonly strips: readonly StripStock[];
  readonly benches: readonly Bench[];
  readonly grids: readonly Grid[];
  readonly motifs: readonly Motif[];
  readonly outlines: readonly Outline[];
  readonly panels: readonly Panel[];
  readonly blanks: readonly Blank[];
  readonly bands: readonly Band[];
  readonly pours: readonly Pour[];
  readonly boards: readonly Board[];
  /** One a file; null while the file describes panels alone. */
  readonly work: Work | null;
  readonly kits: readonly Kit[];
}

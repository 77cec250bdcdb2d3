/** A member of a motif set into an opening. */
import type { MotifPiece } from '../../design/design-model.ts';
import type { Axis } from './piece-ends.ts';

/** A piece or divider with its axis in the opening. */
export interface PlacedMember {
  readonly member: MotifPiece;
  readonly axis: Axis;
  readonly isDivider: boolean;
}

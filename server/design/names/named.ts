/** What every declaration with a name has. */
import type { SourceRange } from '../../../grammar/tree/source-range.ts';

/** `range` covers the whole declaration, `nameRange` its name alone. */
export interface Named {
  readonly name: string;
  readonly range: SourceRange;
  readonly nameRange: SourceRange;
}

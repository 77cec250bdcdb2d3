/** The face of a strip milled to the notching blade: the blade's kerf less the fit, so that one pass makes the notch. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import { measure, type Words, words } from '../../../grammar/words.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import type { GridDeclaration, GridProperty } from '../../../grammar/tree/grid-syntax.ts';
import { isZeroLength } from '../../geometry/tolerance.ts';
import type { DesignContext } from '../design-context.ts';
import type { Bench } from '../design-model.ts';
import { propertyOf } from '../builders/pick-properties.ts';
import { readLength } from './read-values.ts';

/** Face in mm of the strip of a name, null where it can't be told, which is reported at the words asking for it. */
export type FaceFromKerf = (strip: string, asked: SourceRange) => number | null;

/** The strip a property of a grid makes it of, if any. */
function stockNamed(property: GridProperty): string | undefined {
  if (property.kind === 'of strip') return property.name.text;
  return property.kind === 'family' || property.kind === 'except' ? property.stock?.text : undefined;
}

/** Where the kerf comes from; `mayBeUnread` where a bench could not be read in full, so that what seems missing may be there. */
export interface KerfSource {
  readonly benches: readonly Bench[];
  readonly mayBeUnread: boolean;
}

/**
 * face = kerf − fit. The kerf is that of the first bench that states one, the fit that of the grids the strip serves,
 * which must agree; a strip that serves no grid has no fit.
 */
export function faceFromKerf(
  { benches, mayBeUnread }: KerfSource,
  grids: readonly GridDeclaration[],
  context: DesignContext,
): FaceFromKerf {
  const quiet = { ...context, report: () => undefined }; // a broken fit is reported where its grid is built
  return (strip, asked) => {
    const unclear = (message: Words): null => {
      context.report(problemAt('faceFromKerfUnclear', asked, message));
      return null;
    };
    const kerf = benches.find((bench) => bench.kerf !== null)?.kerf;
    if (kerf == null && mayBeUnread) return null;
    if (kerf == null) return unclear('No bench states the kerf of its notching blade. Add it like `kerf 3`.');
    const served = grids.filter((grid) => grid.properties.some((property) => stockNamed(property) === strip));
    const fits = served.map((grid) => {
      const fit = propertyOf(grid, 'fit');
      return { grid: grid.name.text, fit: (fit && readLength(fit.value, 'fit', 'any', quiet)) ?? 0 };
    });
    const [first] = fits;
    const other = fits.find(({ fit }) => first && !isZeroLength(fit - first.fit));
    if (first && other) {
      return unclear(
        words`The grids \`${first.grid}\` and \`${other.grid}\` ask for different fits of this strip, ${measure.given([first.fit, other.fit], ' and ')}. Give the face as a length.`,
      );
    }
    const face = kerf - (first?.fit ?? 0);
    if (face > 0) return face;
    return unclear(
      words`A kerf of ${measure.given(kerf)} less a fit of ${measure.given(first?.fit ?? 0)} leaves no face. Give the face as a length.`,
    );
  };
}

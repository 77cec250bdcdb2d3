/** Strips of the design. */
import { minimum } from '../../geometry/numbers.ts';
import { measure, words } from '../../../grammar/words.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { RipProperty, StripDeclaration } from '../../../grammar/tree/material-syntax.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import type { DesignContext } from '../design-context.ts';
import type { StripStock } from '../design-model.ts';
import type { FaceFromKerf } from '../values/face-from-kerf.ts';
import type { BoardStock, StockLength, StockOnHand } from '../material-model.ts';
import { buildBreath } from './build-breath.ts';
import { propertyOf, reportMissing, reportRepeated } from './pick-properties.ts';
import { readMoney } from '../values/read-money.ts';
import { optional, readCount, readLength, readPercent } from '../values/read-values.ts';

/** More sticks than any rack holds are a slip of the keyboard. */
const mostSticks = 100_000;

/** The stock a strip declares; null where its section is missing or broken. `faceFromKerf` gives a face left to the blade. */
export function buildStrip(
  strip: StripDeclaration,
  faceFromKerf: FaceFromKerf,
  context: DesignContext,
): StripStock | null {
  reportRepeated(strip, ['rip'], context);
  const section = propertyOf(strip, 'section');
  if (!section) reportMissing(strip, 'section', 'section face 3 depth 10', context);
  const face = section ? sectionFace(strip, section, faceFromKerf, context) : null;
  const depth = section ? readLength(section.depth, 'depth', 'positive', context) : null;
  const lengths = buildLengths(strip, context);
  const onHand = buildOnHand(strip, context);
  const kerf = optional(propertyOf(strip, 'kerf')?.value, (value) => readLength(value, 'kerf', 'positive', context));
  const endTrim = buildEndTrim(strip, lengths, context);
  const keepOffcuts = optional(propertyOf(strip, 'keep_offcuts')?.value, (value) =>
    readLength(value, 'length of an off-cut', 'positive', context),
  );
  const flush = optional(propertyOf(strip, 'flush')?.value, (value) =>
    readLength(value, 'flush', 'notNegative', context),
  );
  const rejects = optional(propertyOf(strip, 'rejects')?.value, (value) =>
    readPercent(value, 'share of rejects', 1, context),
  );
  const spares = buildSpares(strip, context);
  const boards = strip.properties.flatMap((property) =>
    property.kind === 'rip' ? (buildBoardStock(property, { face, depth }, context) ?? []) : [],
  );
  if (face === null || depth === null) return null;
  const flushRange = propertyOf(strip, 'flush')?.value.range;
  if (flushRange && flush !== null && 2 * flush >= depth) {
    const message = words`Flushing ${measure.given(flush)} from each face leaves nothing of a depth of ${measure.given(depth)}. Flush less or mill deeper.`;
    context.report(problemAt('outOfRange', flushRange, message));
    return null;
  }
  return {
    name: strip.name.text,
    range: strip.range,
    nameRange: strip.name.range,
    wood: propertyOf(strip, 'of wood')?.name.text ?? null,
    face,
    depth,
    lengthsRange: (propertyOf(strip, 'lengths') ?? propertyOf(strip, 'on_hand'))?.range ?? null,
    lengths,
    onHand,
    boards,
    kerf,
    endTrim,
    breath: buildBreath(propertyOf(strip, 'breath'), context),
    keepOffcuts,
    flush: flush ?? 0,
    rejects: rejects ?? 0,
    ...spares,
  };
}

function sectionFace(
  strip: StripDeclaration,
  { face, faceRange }: { readonly face: RipProperty['thickness'] | null; readonly faceRange: SourceRange },
  faceFromKerf: FaceFromKerf,
  context: DesignContext,
): number | null {
  return face ? readLength(face, 'face', 'positive', context) : faceFromKerf(strip.name.text, faceRange);
}

function buildLengths(strip: StripDeclaration, context: DesignContext): StockLength[] {
  return (propertyOf(strip, 'lengths')?.lengths ?? []).flatMap(({ length, price }) => {
    const millimetres = readLength(length, 'length of a strip', 'positive', context);
    const money = price && readMoney(price, 'price', context);
    return millimetres === null ? [] : [{ length: millimetres, price: money }];
  });
}

function buildOnHand(strip: StripDeclaration, context: DesignContext): StockOnHand[] {
  return (propertyOf(strip, 'on_hand')?.sticks ?? []).flatMap(({ count, length }) => {
    const sticks = readCount(count, 'number of sticks', 1, mostSticks, context);
    const millimetres = readLength(length, 'length of a stick', 'positive', context);
    return sticks === null || millimetres === null ? [] : [{ length: millimetres, count: sticks }];
  });
}

/** Both ends are trimmed: a stick must be left between them. */
function buildEndTrim(strip: StripDeclaration, lengths: readonly StockLength[], context: DesignContext): number {
  const property = propertyOf(strip, 'end_trim');
  const trim = property ? readLength(property.value, 'end trim', 'notNegative', context) : 0;
  if (!property || trim === null) return 0;
  const shortest = minimum(lengths.map(({ length }) => length));
  if (2 * trim < shortest) return trim;
  const message = words`Trimming ${measure.given(trim)} off both ends leaves nothing of a stick of ${measure.given(shortest)}. Trim less.`;
  context.report(problemAt('outOfRange', property.value.range, message));
  return 0;
}

function buildSpares(strip: StripDeclaration, context: DesignContext): Pick<StripStock, 'spare' | 'breakage'> {
  const property = propertyOf(strip, 'spare');
  if (!property) return { spare: null, breakage: null };
  const { confidence } = property;
  if (!confidence) return { spare: readPercent(property.share, 'spare', Infinity, context), breakage: null };
  const share = readPercent(property.share, 'breakage', 1, context);
  const sureness = readPercent(confidence, 'confidence', 1, context);
  const breakage = share === null || sureness === null ? null : { share, confidence: sureness };
  return { spare: null, breakage };
}

/** A board to rip strips from; null where it is broken or too small for one strip. */
function buildBoardStock(
  rip: RipProperty,
  section: { readonly face: number | null; readonly depth: number | null },
  context: DesignContext,
): BoardStock | null {
  const thickness = readLength(rip.thickness, 'thickness of the board', 'positive', context);
  const width = readLength(rip.width, 'width of the board', 'positive', context);
  const length = readLength(rip.length, 'length of the board', 'positive', context);
  const price = rip.price && readMoney(rip.price, 'price', context);
  const allowance = rip.rejoint && readLength(rip.rejoint.allowance, 'jointed allowance', 'positive', context);
  const every = rip.rejoint && readCount(rip.rejoint.every, 'number of rips', 1, mostSticks, context);
  if (thickness === null || width === null || length === null) return null;
  if (rip.rejoint && (allowance === null || every === null)) return null;
  const thicknessGives = rip.thicknessGives ?? 'depth';
  const across = thicknessGives === 'depth' ? 'face' : 'depth';
  const tooSmall = [
    { board: thickness, size: section[thicknessGives], what: thicknessGives, at: rip.thickness, name: 'thick' },
    { board: width, size: section[across], what: across, at: rip.width, name: 'wide' },
  ].find(({ size, board }) => size !== null && board < size);
  if (tooSmall) {
    const { board, size, what, at, name } = tooSmall;
    const message = words`A board ${measure.given(board)} ${name} cannot give a ${what} of ${measure.given(size ?? 0)}. Rip from a larger board, or say which size its thickness is.`;
    context.report(problemAt('outOfRange', at.range, message));
    return null;
  }
  const rejoint = allowance !== null && every !== null ? { allowance, every } : null;
  return { thickness, width, length, price, thicknessGives, rejoint };
}

/** Strips and benches of the design. */
import { problemAt } from '../../grammar/problem-catalogue.ts';
import type { BenchDeclaration, Expression, StripDeclaration } from '../../grammar/syntax-tree.ts';
import type { DesignContext } from './design-context.ts';
import type { Bench, StripStock } from './design-model.ts';
import { propertyOf, reportMissing, reportRepeated } from './pick-properties.ts';
import { readAngle, readLength, readPercent } from './read-values.ts';

/** The stock a strip declares; null where its section is missing or broken. */
export function buildStrip(strip: StripDeclaration, context: DesignContext): StripStock | null {
  reportRepeated(strip, [], context);
  const section = propertyOf(strip, 'section');
  if (!section) reportMissing(strip, 'section', 'section face 3 depth 10', context);
  const face = section ? readLength(section.face, 'face', 'positive', context) : null;
  const depth = section ? readLength(section.depth, 'depth', 'positive', context) : null;
  const lengths = (propertyOf(strip, 'lengths')?.values ?? []).map((value) =>
    readLength(value, 'length of a strip', 'positive', context),
  );
  const flush = optional(propertyOf(strip, 'flush')?.value, (value) =>
    readLength(value, 'flush', 'notNegative', context),
  );
  const rejects = optional(propertyOf(strip, 'rejects')?.value, (value) =>
    readPercent(value, 'share of rejects', 1, context),
  );
  const spare = optional(propertyOf(strip, 'spare')?.value, (value) => readPercent(value, 'spare', Infinity, context));
  if (face === null || depth === null) return null;
  const flushRange = propertyOf(strip, 'flush')?.value.range;
  if (flushRange && flush !== null && 2 * flush >= depth) {
    const message = `Flushing ${String(flush)} mm from each face leaves nothing of a depth of ${String(depth)} mm. Flush less or mill deeper.`;
    context.report(problemAt('outOfRange', flushRange, message));
    return null;
  }
  return {
    name: strip.name.text,
    range: strip.range,
    nameRange: strip.name.range,
    wood: propertyOf(strip, 'wood')?.name.text ?? null,
    face,
    depth,
    lengths: lengths.filter((length) => length !== null).map((length) => ({ length, price: null })),
    onHand: [],
    boards: [],
    kerf: null,
    endTrim: 0,
    flush: flush ?? 0,
    rejects: rejects ?? 0,
    spare,
    breakage: null,
  };
}

/** The bench a declaration describes; what is broken in it is left out. */
export function buildBench(bench: BenchDeclaration, context: DesignContext): Bench {
  reportRepeated(bench, [], context);
  const bevels = (propertyOf(bench, 'bevels')?.values ?? []).map((value) =>
    readAngle(value, 'bevel', [0, 180], context),
  );
  const pitches = propertyOf(bench, 'pin pitches')?.values ?? [];
  return {
    name: bench.name.text,
    range: bench.range,
    nameRange: bench.name.range,
    bevels: bevels.filter((angle) => angle !== null),
    kerf: optional(propertyOf(bench, 'kerf')?.value, (value) => readLength(value, 'kerf', 'positive', context)),
    pinPitches: pitches
      .map((value) => readLength(value, 'pitch', 'positive', context))
      .filter((pitch) => pitch !== null),
    bandBlade: optional(propertyOf(bench, 'band_blade')?.value, (value) =>
      readLength(value, 'band saw blade', 'positive', context),
    ),
    bandKerf: null,
    bandRadius: null,
    rippingKerf: null,
    shortestPiece: null,
    gang: 1,
    trim: 0,
    indexing: 'pin',
    pitchError: null,
    pitchScatter: null,
  };
}

const optional = (value: Expression | undefined, read: (value: Expression) => number | null): number | null =>
  value ? read(value) : null;

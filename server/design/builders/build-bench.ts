/** Benches of the design. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { BenchDeclaration } from '../../../grammar/tree/material-syntax.ts';
import type { Expression } from '../../../grammar/tree/syntax-nodes.ts';
import type { DesignContext } from '../design-context.ts';
import type { Bench } from '../design-model.ts';
import { buildBreath } from './build-breath.ts';
import { propertyOf, reportRepeated } from './pick-properties.ts';
import { optional, readAngle, readCount, readLength } from '../values/read-values.ts';

/** More strips than anybody clamps together are a slip of the keyboard. */
const mostInGang = 1000;

/** The bench a declaration describes; what is broken in it is left out. */
export function buildBench(bench: BenchDeclaration, context: DesignContext): Bench {
  reportRepeated(bench, [], context);
  const bevels = (propertyOf(bench, 'bevels')?.values ?? []).map((value) =>
    readAngle(value, 'bevel', [0, 180], context),
  );
  const pitches = (propertyOf(bench, 'pin pitches')?.values ?? []).map((value) =>
    readLength(value, 'pitch', 'positive', context),
  );
  const length = (value: Expression | null | undefined, what: string): number | null =>
    optional(value, (expression) => readLength(expression, what, 'positive', context));
  const blade = propertyOf(bench, 'band_blade');
  const bandBlade = length(blade?.width, 'band saw blade');
  const notNegative = (value: Expression | undefined, what: string): number | null =>
    optional(value, (expression) => readLength(expression, what, 'notNegative', context));
  return {
    name: bench.name.text,
    range: bench.range,
    nameRange: bench.name.range,
    bevels: bevels.filter((angle) => angle !== null),
    kerf: length(propertyOf(bench, 'kerf')?.value, 'kerf'),
    pinPitches: pitches.filter((pitch) => pitch !== null),
    bandBlade,
    bandKerf: length(blade?.cuts, 'kerf of the band saw'),
    bandRadius: length(blade?.curve, 'tightest curve of the band saw'),
    rippingKerf: length(propertyOf(bench, 'ripping_kerf')?.value, 'ripping kerf'),
    breath: buildBreath(propertyOf(bench, 'breath'), context),
    shortestPiece: length(propertyOf(bench, 'shortest')?.value, 'shortest piece'),
    gang: optional(propertyOf(bench, 'gang')?.value, (value) => readCount(value, 'gang', 1, mostInGang, context)) ?? 1,
    trim: notNegative(propertyOf(bench, 'trim')?.value, 'trim') ?? 0,
    indexing: indexingOf(bench, context),
    pitchError: notNegative(propertyOf(bench, 'pitch_error')?.value, 'pitch error'),
    pitchScatter: notNegative(propertyOf(bench, 'pitch_scatter')?.value, 'pitch scatter'),
  };
}

/** A pin sets each notch from the one before, a fixed stop from the strip's end: a bench has one of them. */
function indexingOf(bench: BenchDeclaration, context: DesignContext): Bench['indexing'] {
  const pin = propertyOf(bench, 'pin pitches');
  const stop = propertyOf(bench, 'fixed stop');
  if (pin && stop) {
    const message = 'This bench sets its notches by a pin already. Keep `pin pitches` or `fixed_stop`.';
    const related = [{ range: pin.keyword, message: 'The pin stands here.' }];
    context.report(problemAt('repeatedProperty', stop.keyword, message, related));
  }
  return stop && !pin ? 'stop' : 'pin';
}

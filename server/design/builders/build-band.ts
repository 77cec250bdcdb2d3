/** Bands of the design. */
import type { BandDeclaration } from '../../../grammar/tree/object-syntax.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import { bandOverLength, bandOverWidth } from '../values/defaults.ts';
import type { DesignContext } from '../design-context.ts';
import type { Outline, Panel, StripStock } from '../design-model.ts';
import { propertyOf, reportMissing, reportRepeated } from './pick-properties.ts';
import { optional, readCount, readLength } from '../values/read-values.ts';
import type { Band } from '../work-model.ts';

export interface BandParts {
  readonly panels: ReadonlyMap<string, Panel>;
  readonly outlines: ReadonlyMap<string, Outline>;
  readonly strips: ReadonlyMap<string, StripStock>;
}

const mostLaminations = 100;

/** The band a declaration describes; null where what it runs round or its strip is missing or broken. */
export function buildBand(band: BandDeclaration, parts: BandParts, context: DesignContext): Band | null {
  reportRepeated(band, [], context);
  const aroundProperty = propertyOf(band, 'around');
  const of = propertyOf(band, 'of strip');
  if (!aroundProperty) reportMissing(band, 'edge', 'around blade', context);
  if (!of) reportMissing(band, 'strip', 'of walnut_strip', context);
  const name = aroundProperty?.name.text ?? '';
  const around = parts.panels.get(name) ?? parts.outlines.get(name);
  const stock = of && parts.strips.get(of.name.text);
  const laminations =
    optional(propertyOf(band, 'laminations')?.value, (value) =>
      readCount(value, 'number of laminations', 1, mostLaminations, context),
    ) ?? 1;
  const over = (kind: 'over_length' | 'over_width', what: string, usual: number): number =>
    optional(propertyOf(band, kind)?.value, (value) => readLength(value, what, 'notNegative', context)) ?? usual;
  const overLength = over('over_length', 'over-length', bandOverLength);
  const overWidth = over('over_width', 'over-width', bandOverWidth);
  const bending = buildBending(band, context);
  if (!around || !stock) return null;
  return {
    name: band.name.text,
    range: band.range,
    nameRange: band.name.range,
    around,
    stock,
    laminations,
    ...bending,
    corners: propertyOf(band, 'corners')?.choice ?? 'mitred',
    overLength,
    overWidth,
  };
}

/** How it is bent: by the method of the test, if one is stated, else by the method given, else cold. */
function buildBending(band: BandDeclaration, context: DesignContext): Pick<Band, 'method' | 'testedRadius'> {
  const bends = propertyOf(band, 'bends');
  const method = propertyOf(band, 'method');
  if (bends?.method && method && method.choice !== bends.method) {
    const message = `The bend was tested ${bends.method}, and the band is bent ${method.choice}. Test it the way it is bent.`;
    const related = [{ range: bends.range, message: 'The test stands here.' }];
    context.report(problemAt('repeatedProperty', method.range, message, related));
  }
  const testedRadius = optional(bends?.radius, (value) => readLength(value, 'tested radius', 'positive', context));
  return { method: bends?.method ?? method?.choice ?? 'cold', testedRadius };
}

/**
 * An element of an SVG file by its id, as closed lines in millimetres, y up from the upper left corner of the drawing. Its
 * own transform and those of all it stands in are applied, nested viewports and the file's viewBox included.
 */
import { append } from '../../geometry/numbers.ts';
import { DOMParser, type Element } from '@xmldom/xmldom';
import { nearestWord } from '../../../grammar/problems/nearest-word.ts';
import type { PathSegment } from '../../geometry/path.ts';
import {
  followedBy,
  moving,
  scaling,
  type Transform,
  transformedSegment,
  unmoved,
} from '../../geometry/transform-path.ts';
import { millimetresAPixel, readSvgLength, readSvgNumbers, readSvgTransform } from './svg-lengths.ts';
import { drawableElements, svgShape } from './svg-shapes.ts';

/** Why an element gives no lines. `advice` says what to do. */
export interface SvgTrouble {
  readonly at: 'file' | 'id';
  readonly message: string;
}

export type SvgLines =
  | { readonly kind: 'lines'; readonly lines: readonly (readonly PathSegment[])[] }
  | { readonly kind: 'trouble'; readonly trouble: SvgTrouble };

const trouble = (at: SvgTrouble['at'], message: string): SvgLines => ({ kind: 'trouble', trouble: { at, message } });

/** The lines of the element with that id: a shape or path, or a group with all that is drawn in it. Never throws. */
export function readSvgElement(text: string, id: string): SvgLines {
  const root = readXml(text);
  if (typeof root === 'string')
    return trouble('file', `This is no sound XML: ${root}. Export the drawing as SVG again.`);
  if (root.localName !== 'svg') {
    return trouble('file', `This is no SVG file: it begins with \`${root.tagName}\`. Export the drawing as SVG.`);
  }
  const all = withDescendants(root);
  const found = all.find((element) => element.getAttribute('id') === id);
  if (!found) return noSuchId(all, id);
  const drawn = (found.localName === 'g' ? withDescendants(found) : [found]).filter(isDrawable);
  if (drawn.length === 0) {
    const kinds = drawableElements.map((name) => `\`${name}\``).join(', ');
    return trouble(
      'id',
      `\`${id}\` is a \`${found.tagName}\`, which draws no line. Give the id of one of ${kinds}, or of a group of them.`,
    );
  }
  const lines: PathSegment[][] = [];
  for (const element of drawn) {
    const shape = svgShape(element);
    if (shape.kind === 'trouble')
      return trouble('id', `The \`${element.tagName}\` of \`${id}\` ${shape.trouble}. Mend it in the drawing.`);
    const transform = transformOfElement(element);
    if (!transform)
      return trouble(
        'id',
        `A \`transform\` of \`${id}\`, or of what it stands in, can't be read. Apply the transforms in the drawing.`,
      );
    const upward = followedBy(transform, scaling(millimetresAPixel, -millimetresAPixel));
    append(
      lines,
      shape.lines.map((line) => line.map((segment) => transformedSegment(segment, upward))),
    );
  }
  return { kind: 'lines', lines };
}

/** The root element, or what is wrong. */
function readXml(text: string): Element | string {
  try {
    const document = new DOMParser({ onError: () => undefined }).parseFromString(text, 'image/svg+xml');
    return document.documentElement ?? 'it has no element';
  } catch (error) {
    const [first = 'it is damaged'] = error instanceof Error ? error.message.split('\n') : [];
    return first;
  }
}

function withDescendants(element: Element): Element[] {
  const found: Element[] = [];
  const waiting = [element];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    found.push(next);
    const children = [...next.childNodes].filter((node): node is Element => node.nodeType === node.ELEMENT_NODE);
    append(waiting, children.reverse());
  }
  return found;
}

const isDrawable = ({ localName }: Element): boolean => drawableElements.some((name) => name === localName);

function noSuchId(all: readonly Element[], id: string): SvgLines {
  const ids = all.flatMap((element) => element.getAttribute('id') ?? []);
  const near = nearestWord(id, ids);
  const advice = near
    ? `Did you mean \`${near}\`?`
    : ids.length > 0
      ? `It has ${ids
          .slice(0, 8)
          .map((each) => `\`${each}\``)
          .join(', ')}${ids.length > 8 ? ' and more' : ''}.`
      : 'It has no ids at all: name the shape in the drawing.';
  return trouble('id', `The drawing has nothing with the id \`${id}\`. ${advice}`);
}

/** From an element's own coordinates to px from the upper left corner of the drawing; null where a transform can't be read. */
function transformOfElement(element: Element): Transform | null {
  let whole = unmoved;
  for (let at: Element | null = element; at; at = parentOf(at)) {
    if (at.localName === 'svg') {
      const viewport = viewportOf(at, parentOf(at) === null);
      if (!viewport) return null;
      whole = followedBy(whole, viewport);
    }
    const own = readSvgTransform(at.getAttribute('transform') ?? '');
    if (!own) return null;
    whole = followedBy(whole, own);
  }
  return whole;
}

function parentOf({ parentNode }: Element): Element | null {
  return parentNode?.nodeType === 1 ? (parentNode as Element) : null;
}

/**
 * What the `viewBox` of an `svg` element does (SVG 2, section 8.2): its rectangle is fitted into the width and height, in the
 * middle unless `preserveAspectRatio` says otherwise. Without a size in absolute units one unit is a px.
 */
function viewportOf(svg: Element, isOutermost: boolean): Transform | null {
  const place = isOutermost ? { x: 0, y: 0 } : { x: sizeOf(svg, 'x') ?? 0, y: sizeOf(svg, 'y') ?? 0 };
  const written = svg.getAttribute('viewBox');
  if (written === null) return moving(place);
  const [left, top, width, height] = readSvgNumbers(written) ?? [];
  if (left === undefined || top === undefined || width === undefined || height === undefined) return null;
  if (!(width > 0 && height > 0)) return null;
  const [across, down] = [sizeOf(svg, 'width'), sizeOf(svg, 'height')];
  const scaleX = across === null ? (down === null ? 1 : down / height) : across / width;
  const scaleY = down === null ? scaleX : down / height;
  const fit = svg.getAttribute('preserveAspectRatio')?.trim() ?? '';
  const toOrigin = moving({ x: -left, y: -top });
  if (fit.startsWith('none')) return followedBy(followedBy(toOrigin, scaling(scaleX, scaleY)), moving(place));
  const scale = fit.endsWith('slice') ? Math.max(scaleX, scaleY) : Math.min(scaleX, scaleY);
  const room = { x: (across ?? width * scale) - width * scale, y: (down ?? height * scale) - height * scale };
  const aligned = {
    x: place.x + room.x * (fit.includes('xMin') ? 0 : fit.includes('xMax') ? 1 : 0.5),
    y: place.y + room.y * (fit.includes('YMin') ? 0 : fit.includes('YMax') ? 1 : 0.5),
  };
  return followedBy(followedBy(toOrigin, scaling(scale, scale)), moving(aligned));
}

const sizeOf = (svg: Element, name: string): number | null => readSvgLength(svg.getAttribute(name));

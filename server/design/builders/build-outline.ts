/** Outlines of the design: closed, free of crossings, outer line first. */
import type { OutlineChange, OutlineDeclaration, OutlineStep } from '../../../grammar/tree/outline-syntax.ts';
import { joined, words } from '../../../grammar/words.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import { contourArea } from '../../geometry/measure-path.ts';
import type { DesignContext } from '../design-context.ts';
import type { Outline } from '../design-model.ts';
import { chainOf } from '../outlines/drawn-segment.ts';
import type { DrawnChain } from '../outlines/drawn-segment.ts';
import { areaWithin, changed, type FindOutline } from '../outlines/outline-changes.ts';
import { bySize, orientedContours, reportCrossing, reportEmpty, strayChain } from '../outlines/outline-checks.ts';
import { closePen, drawOn, type Pen, startPen } from '../outlines/outline-pen.ts';
import { drawWhole } from '../outlines/outline-shapes.ts';
import { reportMissing } from './pick-properties.ts';

/** The outline a declaration draws; null where it is broken, which is reported here or where its text could not be read. */
export function buildOutline(outline: OutlineDeclaration, find: FindOutline, context: DesignContext): Outline | null {
  const chains = drawOutline(outline, find, context);
  if (!chains) return null;
  if (chains.length === 0) {
    reportMissing(outline, 'line', 'rectangle 300 x 200', context);
    return null;
  }
  const sorted = bySize(chains);
  const stray = strayChain(sorted);
  if (stray) {
    reportStray(stray, sorted, outline, context);
    return null;
  }
  return {
    name: outline.name.text,
    range: outline.range,
    nameRange: outline.name.range,
    contours: orientedContours(sorted),
  };
}

/** What is drawn so far. */
interface Sheet {
  chains: readonly DrawnChain[];
  /** Lines still open, or not closed off yet, in the order in which they were begun. */
  readonly pens: Pen[];
  /** The line that the next step goes on from. */
  pen: Pen | null;
  /** Whether lines were drawn since they were last checked. */
  isUnchecked: boolean;
}

/** All closed lines; null where a step is broken, which is reported. */
function drawOutline(
  outline: OutlineDeclaration,
  find: FindOutline,
  context: DesignContext,
): readonly DrawnChain[] | null {
  const sheet: Sheet = { chains: [], pens: [], pen: null, isUnchecked: false };
  for (const step of outline.properties) {
    if (!drawStep(step, sheet, outline, find, context)) return null;
  }
  return !outline.incomplete && isSettled(sheet, context) ? sheet.chains : null;
}

function drawStep(
  step: OutlineStep,
  sheet: Sheet,
  outline: OutlineDeclaration,
  find: FindOutline,
  context: DesignContext,
): boolean {
  switch (step.kind) {
    case 'start': {
      sheet.pen = startPen(step, context);
      if (sheet.pen) sheet.pens.push(sheet.pen);
      return sheet.pen !== null;
    }
    case 'line':
    case 'arc':
    case 'curve':
    case 'spline': {
      if (!sheet.pen && !outline.incomplete) context.report(withoutStart(step.keyword));
      return sheet.pen !== null && drawOn(sheet.pen, step, context);
    }
    case 'copy': {
      const other = find(step.name);
      return addChains(sheet, other && other.contours.map((contour) => chainOf(contour, step.range)));
    }
    case 'move':
    case 'mirror':
    case 'turn about':
    case 'scale':
    case 'grow':
    case 'plus':
    case 'minus':
    case 'common':
      // where a step could not be read, what is drawn so far is not all there is to change
      return !outline.incomplete && change(step, sheet, find, context);
    case 'loop':
    case 'circle':
    case 'ellipse':
    case 'rectangle':
    case 'polygon':
    case 'path':
      return addChains(sheet, drawWhole(step, context));
  }
}

const withoutStart = (keyword: SourceRange): Problem =>
  problemAt('missingProperty', keyword, 'This line begins nowhere. Put `start x, y` before it.');

function addChains(sheet: Sheet, chains: readonly DrawnChain[] | null): boolean {
  if (!chains) return false;
  sheet.pen = null;
  sheet.chains = [...sheet.chains, ...chains];
  sheet.isUnchecked = true;
  return true;
}

function change(step: OutlineChange, sheet: Sheet, find: FindOutline, context: DesignContext): boolean {
  if (!isSettled(sheet, context)) return false;
  if (sheet.chains.length === 0) {
    const message =
      'Nothing is drawn yet that this could change. Put `copy` and the name of an outline, or lines, before it.';
    context.report(problemAt('missingProperty', step.keyword, message));
    return false;
  }
  const contours = changed(step, orientedContours(sheet.chains), find, context);
  if (!contours) return false;
  sheet.chains = contours.map((contour) => chainOf(contour, step.range));
  return true;
}

/** Closes the open lines and checks what was drawn since the last time. */
function isSettled(sheet: Sheet, context: DesignContext): boolean {
  const closed = sheet.pens.map((pen) => closePen(pen, context));
  if (closed.some((chain) => chain === null)) return false;
  const drawn = closed.filter((chain) => chain !== null);
  const isUnchecked = sheet.isUnchecked || drawn.length > 0;
  sheet.chains = [...drawn, ...sheet.chains];
  sheet.pens.length = 0;
  sheet.pen = null;
  sheet.isUnchecked = false;
  return !isUnchecked || !(reportCrossing(sheet.chains, context) || reportEmpty(sheet.chains, context));
}

/** More than one outer line: drawn so, or left by a step that cut the outline up. */
function reportStray(
  stray: DrawnChain,
  sorted: readonly DrawnChain[],
  { properties }: OutlineDeclaration,
  context: DesignContext,
): void {
  const range = stray[0]?.range;
  const drawnBy = properties.findIndex((step) => step.range === range);
  const cut = properties
    .slice(0, drawnBy + 1)
    .filter(({ kind }) => kind in cutting)
    .at(-1);
  if (!range) return;
  if (!cut || !((properties[drawnBy]?.kind ?? '') in changing)) {
    const message =
      'This lies outside the outer line or inside another hole. An outline is one line with holes in it: make a second outline of this.';
    context.report(problemAt('outlineCrossesItself', range, message));
    return;
  }
  const outer = orientedContours(sorted).filter((contour) => contourArea(contour) > 0);
  const sizes = joined(
    outer.map((contour) => areaWithin([contour])),
    ', ',
  );
  const message = words`This leaves ${String(outer.length)} pieces (${sizes}), and an outline is one piece. Make an outline of each, or change this step.`;
  context.report(problemAt('outlineInPieces', cut.range, message));
}

type StepKinds = Readonly<Partial<Record<OutlineStep['kind'], true>>>;

/** Steps that may leave several pieces. */
const cutting: StepKinds = {
  grow: true,
  plus: true,
  minus: true,
  common: true,
};

/** Steps that change all that is drawn. */
const changing: StepKinds = { ...cutting, move: true, mirror: true, 'turn about': true, scale: true };

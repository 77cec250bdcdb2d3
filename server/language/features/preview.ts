/** Answers the preview: which panels there are, and the drawing of one of them. */
import { lineColumnAt } from '../../../grammar/source-range.ts';
import type { Analysis } from '../../analyse.ts';
import { drawPanel } from '../../drawing/draw-panel.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import type { AnalysedDocument } from '../open-documents.ts';
import type { DrawingAnswer } from '../preview-messages.ts';

/**
 * The drawing of the panel called `wanted`, or of the first one. A text with errors is drawn as it last was without,
 * and said to be stale; where that panel was never without, what can be laid out now is drawn, stale too.
 */
export function previewOf(document: AnalysedDocument, wanted: string | null): DrawingAnswer {
  const { uri, version, lineStarts, analysis, lastSound } = document;
  const source = lastSound && lastSound.panels.length > 0 ? lastSound : analysis;
  const panels = source.panels.map(({ panel }) => panel.name);
  const panel = panels.find((name) => name === wanted) ?? panels[0] ?? null;
  return {
    uri,
    version,
    panels,
    panel,
    drawing: panel === null ? null : drawingOf(source, panel),
    stale: analysis.incomplete,
    errors: analysis.problems
      .filter(({ severity }) => severity === 'error')
      .map(({ range, message }) => ({ line: lineColumnAt(lineStarts, range.start).line, message })),
  };
}

function drawingOf({ panels, kinds, design }: Analysis, name: string): Drawing | null {
  const laid = panels.find(({ panel }) => panel.name === name);
  return laid ? drawPanel(laid, kinds, design.title) : null;
}

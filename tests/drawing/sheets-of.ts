/** Every working drawing of a design, for tests. */
import { analyse } from '../../server/analyse.ts';
import { drawChart } from '../../server/drawing/draw-chart.ts';
import { drawPiece } from '../../server/drawing/draw-piece.ts';
import { drawStrip } from '../../server/drawing/draw-strip.ts';
import { writePageSvg } from '../../server/drawing/page/write-page-svg.ts';

export interface Sheet {
  readonly kind: 'piece' | 'strip' | 'chart';
  /** The mark, or the panel's name. */
  readonly subject: string;
  readonly svg: string;
}

export function sheetsOf(text: string, source: string): Sheet[] {
  const analysis = analyse(text);
  return [
    ...analysis.kinds.pieces.map((piece): Sheet => ({
      kind: 'piece',
      subject: piece.mark,
      svg: writePageSvg(drawPiece(analysis, piece, source)),
    })),
    ...analysis.kinds.strips.map((strip): Sheet => ({
      kind: 'strip',
      subject: strip.mark,
      svg: writePageSvg(drawStrip(analysis, strip, source)),
    })),
    ...analysis.panels.map((laid): Sheet => ({
      kind: 'chart',
      subject: laid.panel.name,
      svg: writePageSvg(drawChart(analysis, laid, source)),
    })),
  ];
}

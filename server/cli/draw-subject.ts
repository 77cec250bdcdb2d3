/** What `halflap draw` may draw, and each as a picture that every format can be written from. */
import type { Analysis } from '../analyse.ts';
import { drawBlank, fillingsOf } from '../drawing/draw-blank.ts';
import { drawChart } from '../drawing/draw-chart.ts';
import { drawPanel } from '../drawing/draw-panel.ts';
import { drawPiece } from '../drawing/draw-piece.ts';
import { drawSheet } from '../drawing/draw-sheet.ts';
import { drawStrip, stripMember } from '../drawing/draw-strip.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { blankDxf } from '../drawing/dxf/blank-dxf.ts';
import type { DxfDrawing } from '../drawing/dxf/dxf-drawing.ts';
import { memberDxf } from '../drawing/dxf/member-dxf.ts';
import { panelDxf } from '../drawing/dxf/panel-dxf.ts';
import { templateDxf } from '../drawing/dxf/template-dxf.ts';
import type { PageFile } from '../drawing/page/page-model.ts';
import type { PaperName } from '../drawing/page/paper-sizes.ts';
import type { Typefaces } from '../drawing/page/typeface.ts';
import { writePageSvg } from '../drawing/page/write-page-svg.ts';
import { panelPage } from '../drawing/panel-page.ts';
import { pieceMember } from '../drawing/piece-views.ts';
import { stockText } from '../drawing/sheet-facts.ts';
import { buildTemplate } from '../drawing/template/build-template.ts';
import { fromBack } from '../drawing/template/from-back.ts';
import type { Template } from '../drawing/template/template.ts';
import { templateSubject, templateSubjects } from '../drawing/template/template-subject.ts';
import { tiledTemplate } from '../drawing/template/tiled-template.ts';
import { wholeTemplate } from '../drawing/template/whole-template.ts';
import { workSheet } from '../drawing/work-sheet.ts';
import { writeSvg } from '../drawing/write-svg.ts';
import type { LaidPanel } from '../lattice/laid-panel.ts';
import { nestSheets } from '../shop/sheets/nest-sheets.ts';
import { lastOf } from '../shop/stages.ts';
import { WrongUsage } from './wrong-usage.ts';

export const subjectOptions = {
  panel: { type: 'string' },
  piece: { type: 'string' },
  chart: { type: 'string' },
  blank: { type: 'string' },
  sheet: { type: 'string' },
  work: { type: 'boolean' },
  template: { type: 'string' },
  'from-back': { type: 'boolean' },
} as const;

/** What is to be drawn; a panel without a name is the only one there is. */
export type Subject =
  | { readonly kind: 'panel'; readonly name: string | undefined }
  | { readonly kind: 'piece' | 'chart' | 'blank' | 'sheet'; readonly name: string }
  | { readonly kind: 'work' }
  | { readonly kind: 'template'; readonly name: string; readonly seenFrom: Template['seenFrom'] };

type SubjectName = Exclude<keyof typeof subjectOptions, 'from-back' | 'work'>;

/** What the command line says of the subject. */
export type SubjectValues = Partial<Record<SubjectName, string>> & {
  readonly 'from-back'?: boolean;
  readonly work?: boolean;
};

/** The one subject that the options name; more than one is WrongUsage. */
export function subjectOf(values: SubjectValues): Subject {
  const fromBack = values['from-back'] ?? false;
  const named = (['piece', 'chart', 'blank', 'sheet'] as const).flatMap((kind): Subject[] => {
    const name = values[kind];
    return name === undefined ? [] : [{ kind, name }];
  });
  const { panel, template } = values;
  if (values.work === true) named.push({ kind: 'work' });
  if (template !== undefined) named.push({ kind: 'template', name: template, seenFrom: fromBack ? 'back' : 'front' });
  if (named.length + (panel === undefined ? 0 : 1) > 1)
    throw new WrongUsage('give only one of --panel, --piece, --chart, --blank, --sheet, --work and --template');
  if (fromBack && template === undefined) throw new WrongUsage('--from-back is for --template NAME');
  return named[0] ?? { kind: 'panel', name: panel };
}

/** A drawing before it has a format: the panel's SVG has patterns of its own, which a page does not know. */
export interface Picture {
  readonly svg: (typefaces: Typefaces) => string;
  /** Pages to print; `paper` is for what is tiled. */
  readonly pages: (typefaces: Typefaces, paper: PaperName) => PageFile;
  /** Null for drawings to read, which are not at the size of the wood. */
  readonly dxf: (() => DxfDrawing) | null;
}

const ofPage = (page: PageFile, dxf: Picture['dxf']): Picture => ({
  svg: () => writePageSvg(page),
  pages: () => page,
  dxf,
});

const ofDrawing = (drawing: Drawing, source: string): Picture => ({
  svg: () => writeSvg(drawing, source),
  pages: () => panelPage(drawing, source),
  dxf: null,
});

/** The picture, or null where the design's errors leave nothing to draw. `source` names the file and the state of its text. */
export function drawnSubject(analysis: Analysis, subject: Subject, source: string): Picture | null {
  if (subject.kind === 'piece') return drawnPiece(analysis, subject.name, source);
  if (subject.kind === 'blank') return drawnBlank(analysis, subject.name, source);
  if (subject.kind === 'sheet') return drawnSheet(analysis, subject.name, source);
  if (subject.kind === 'work') return drawnWork(analysis, source);
  if (subject.kind === 'template') return drawnTemplate(analysis, subject, source);
  const laid = chosenPanel(analysis, subject.name);
  if (!laid) return null;
  if (subject.kind === 'chart') return ofPage(drawChart(analysis, laid, source), null);
  const drawing = drawPanel(laid, analysis, analysis.design.title);
  return { ...ofDrawing(drawing, source), dxf: () => panelDxf(analysis, laid, source) };
}

function drawnWork(analysis: Analysis, source: string): Picture | null {
  const { design, incomplete } = analysis;
  const { work, title } = design;
  const drawing = work && workSheet(work, analysis, title ?? work.name);
  if (drawing) return ofDrawing(drawing, source);
  if (incomplete) return null;
  throw new WrongUsage(work ? `nothing is placed in the work ${work.name}` : 'the file has no work to draw');
}

function drawnPiece(analysis: Analysis, mark: string, source: string): Picture | null {
  const { pieces, strips } = analysis.kinds;
  const { units } = analysis.design;
  const notes = (shape: { stock: Parameters<typeof stockText>[0] }): string[] => [
    mark,
    stockText(shape.stock, units),
    source,
  ];
  const piece = pieces.find((each) => each.mark === mark);
  if (piece) {
    const dxf = (): DxfDrawing => memberDxf(pieceMember(piece.shape), notes(piece.shape));
    return ofPage(drawPiece(analysis, piece, source), dxf);
  }
  const strip = strips.find((each) => each.mark === mark);
  const group = strip?.groups[0]?.group;
  if (strip && group) {
    return ofPage(drawStrip(analysis, strip, source), () => memberDxf(stripMember(group), notes(group)));
  }
  if (analysis.incomplete) return null;
  const marks = [...pieces, ...strips].map((each) => each.mark);
  throw new WrongUsage(
    marks.length === 0
      ? 'the file has no piece to draw'
      : `no piece has the mark ${mark}; there is ${marks.join(', ')}`,
  );
}

/** A way in which blanks are filled by its own name, or the first of the blank's. */
function drawnBlank(analysis: Analysis, name: string, source: string): Picture | null {
  const { blanks, design, incomplete } = analysis;
  const fillings = blanks.flatMap((nested) => {
    const drawings = drawBlank(nested, analysis, design.title);
    return fillingsOf(nested).map((filling, index) => ({ nested, filling, drawing: drawings[index] }));
  });
  const found =
    fillings.find(({ filling }) => filling.name === name) ?? fillings.find(({ nested }) => nested.blank.name === name);
  if (found?.drawing) {
    const { drawing, nested, filling } = found;
    return { ...ofDrawing(drawing, source), dxf: () => blankDxf(analysis, nested, filling, source) };
  }
  if (incomplete || blanks.some(({ blank }) => blank.name === name)) return null;
  const names = fillings.map(({ filling }) => filling.name);
  throw new WrongUsage(
    names.length === 0 ? 'the file has no blank to draw' : `no blank is called ${name}; there is ${names.join(', ')}`,
  );
}

/** A layout by its own name, or the first of the sheet's. */
function drawnSheet({ design, incomplete }: Analysis, name: string, source: string): Picture | null {
  const drawings = lastOf(nestSheets(design)).flatMap((nested) =>
    drawSheet(nested, design.units, design.title).map((drawing) => ({ drawing, sheet: nested.sheet.name })),
  );
  const found = drawings.find(({ drawing }) => drawing.name === name) ?? drawings.find(({ sheet }) => sheet === name);
  if (found) {
    const { drawing } = found;
    return ofDrawing(drawing, source);
  }
  if (incomplete) return null;
  const names = drawings.map(({ drawing }) => drawing.name).join(', ');
  throw new WrongUsage(
    names === '' ? 'the file has no board on a sheet to draw' : `no sheet is called ${name}; there is ${names}`,
  );
}

function drawnTemplate(
  analysis: Analysis,
  { name, seenFrom }: Extract<Subject, { kind: 'template' }>,
  source: string,
): Picture | null {
  const { design, incomplete } = analysis;
  const subject = templateSubject(design, name);
  const front = subject && buildTemplate(analysis, subject, source);
  if (front) {
    // Holes are drilled from behind.
    const template = seenFrom === 'back' || subject.kind === 'work' ? fromBack(front) : front;
    return {
      svg: (typefaces) => writePageSvg(wholeTemplate(template, typefaces)),
      pages: (typefaces, paper) => tiledTemplate(template, paper, typefaces),
      dxf: () => templateDxf(template),
    };
  }
  if (incomplete) return null;
  if (subject) throw new WrongUsage(`no cleat fits behind ${name}, so there is nothing to drill by`);
  const names = templateSubjects(design).map((each) => each.name);
  throw new WrongUsage(
    names.length === 0
      ? 'the file has no outline, panel, board or band to make a template of'
      : `no outline, panel, board or band is called ${name}; there is ${[...new Set(names)].join(', ')}`,
  );
}

/** The panel asked for, or null if it is in the file but could not be laid out. A name that is not there is WrongUsage. */
function chosenPanel({ design, panels, incomplete }: Analysis, name: string | undefined): LaidPanel | null {
  const names = design.panels.map((panel) => panel.name);
  const wanted = name ?? (names.length === 1 ? names[0] : undefined);
  if (names.length === 0 && incomplete) return null;
  if (names.length === 0) throw new WrongUsage('the file has no panel to draw');
  if (wanted === undefined) throw new WrongUsage(`choose one with --panel: ${names.join(', ')}`);
  if (!names.includes(wanted)) throw new WrongUsage(`no panel is called ${wanted}; there is ${names.join(', ')}`);
  return panels.find(({ panel }) => panel.name === wanted) ?? null;
}

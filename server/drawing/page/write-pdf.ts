/** Pages as a PDF file: vectors and embedded letters, every page of its own size, no scale but the paper's. */
import fontkit from '@cantoo/fontkit';
import * as pdf from '@cantoo/pdf-lib';
import { rounded } from '../../geometry/tolerance.ts';
import { radians } from '../../geometry/point.ts';
import type { Look, Page, PageFile, PageItem, Palette, PathItem, PathStep, TextItem } from './page-model.ts';
import { saysOf } from './page-model.ts';
import { runsOf, textWidth, type Typeface, type Typefaces } from './typeface.ts';

/** PDF's unit is 1/72 inch (ISO 32000). */
export const pointsPerMillimetre = 72 / 25.4;

/** Decimals of a point written out: 0.001 pt is a third of a micrometre. */
const decimals = 3;

/** The file's bytes; the same pages always give the same bytes. */
export async function writePdf(file: PageFile, typefaces: Typefaces): Promise<Uint8Array> {
  const document = await pdf.PDFDocument.create({ updateMetadata: false });
  document.registerFontkit(fontkit);
  document.setTitle(file.title, { showInWindowTitleBar: true });
  document.setSubject(file.summary);
  document.setCreator('Halflap');
  document.setProducer('Halflap');
  const fonts = await embeddedFonts(document, file, typefaces);
  for (const page of file.pages) drawPage(document, page, file.palette, fonts, typefaces);
  return document.save();
}

type Fonts = ReadonlyMap<Typeface, pdf.PDFFont>;

/** Only faces that some text needs, and of those only the letters used. */
async function embeddedFonts(document: pdf.PDFDocument, file: PageFile, typefaces: Typefaces): Promise<Fonts> {
  const used = new Set(
    file.pages.flatMap(({ items }) =>
      textsIn(items).flatMap((item) => runsOf(item.text, item, typefaces).map(({ face }) => face)),
    ),
  );
  const fonts = new Map<Typeface, pdf.PDFFont>();
  for (const face of used) {
    const features = { kern: false, liga: false, clig: false, calt: false };
    fonts.set(face, await document.embedFont(face.bytes, { subset: true, customName: face.name, features }));
  }
  return fonts;
}

const textsIn = (items: readonly PageItem[]): TextItem[] =>
  items.flatMap((item) => (item.kind === 'group' ? textsIn(item.items) : item.kind === 'text' ? [item] : []));

/** What the operators of one page are made with. */
interface Sheet {
  readonly palette: Palette;
  readonly typefaces: Typefaces;
  readonly across: (x: number) => number;
  readonly up: (y: number) => number;
  /** The page's state that paints areas with this opacity. */
  readonly opacityKey: (opacity: number) => pdf.PDFName;
  readonly fontOf: (face: Typeface) => { readonly font: pdf.PDFFont; readonly key: pdf.PDFName } | null;
}

const points = (millimetres: number): number => rounded(millimetres * pointsPerMillimetre, decimals);

function drawPage(document: pdf.PDFDocument, page: Page, palette: Palette, fonts: Fonts, typefaces: Typefaces): void {
  const drawn = document.addPage([points(page.width), points(page.height)]);
  const keys = new Map([...fonts].map(([face, font]) => [face, drawn.node.newFontDictionary(font.name, font.ref)]));
  const opacities = new Map<number, pdf.PDFName>();
  const sheet: Sheet = {
    palette,
    typefaces,
    across: points,
    up: (y) => points(page.height - y),
    opacityKey(opacity) {
      const key = opacities.get(opacity) ?? drawn.node.newExtGState('GS', document.context.obj({ ca: opacity }));
      opacities.set(opacity, key);
      return key;
    },
    fontOf(face) {
      const [font, key] = [fonts.get(face), keys.get(face)];
      return font && key ? { font, key } : null;
    },
  };
  for (const item of page.items) {
    for (const operator of itemOperators(item, sheet)) drawn.pushOperators(operator);
  }
}

function itemOperators(item: PageItem, sheet: Sheet): pdf.PDFOperator[] {
  if (item.kind === 'path') return pathOperators(item, sheet);
  if (item.kind === 'text') return textOperators(item, sheet);
  const inner = item.items.flatMap((each) => itemOperators(each, sheet));
  if (item.clip === null) return inner;
  const [first, ...others] = item.clip;
  const window: PathStep[] = first
    ? [['M', first.x, first.y], ...others.map(({ x, y }): PathStep => ['L', x, y]), ['Z']]
    : [];
  return [
    pdf.pushGraphicsState(),
    ...stepOperators(window, sheet),
    pdf.clip(),
    pdf.endPath(),
    ...inner,
    pdf.popGraphicsState(),
  ];
}

function pathOperators({ look: named, steps }: PathItem, sheet: Sheet): pdf.PDFOperator[] {
  const look = typeof named === 'string' ? sheet.palette.looks[named] : named;
  return [
    pdf.pushGraphicsState(),
    ...(look.opacity === undefined ? [] : [pdf.setGraphicsState(sheet.opacityKey(look.opacity))]),
    ...inkOf(look),
    ...stepOperators(steps, sheet),
    paintOf(look),
    pdf.popGraphicsState(),
  ];
}

function paintOf({ fill, stroke }: Look): pdf.PDFOperator {
  if (fill !== null && stroke !== null) return pdf.fillAndStroke();
  if (fill !== null) return pdf.fill();
  return stroke === null ? pdf.endPath() : pdf.stroke();
}

function inkOf({ fill, stroke, width, dash }: Look): pdf.PDFOperator[] {
  const dashed = dash.length > 0;
  return [
    ...(fill === null ? [] : [pdf.setFillingColor(colourOf(fill))]),
    ...(stroke === null
      ? []
      : [
          pdf.setStrokingColor(colourOf(stroke)),
          pdf.setLineWidth(points(width)),
          pdf.setLineCap(dashed ? pdf.LineCapStyle.Butt : pdf.LineCapStyle.Round),
          pdf.setLineJoin(pdf.LineJoinStyle.Round),
          ...(dashed ? [pdf.setDashPattern(dash.map(points), 0)] : []),
        ]),
  ];
}

/** A colour written #rrggbb. */
function colourOf(text: string): pdf.Color {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((start) => parseInt(text.slice(start, start + 2), 16) / 255);
  return pdf.rgb(red, green, blue);
}

const stepOperators = (steps: readonly PathStep[], { across, up }: Sheet): pdf.PDFOperator[] =>
  steps.map((step) => {
    switch (step[0]) {
      case 'M':
        return pdf.moveTo(across(step[1]), up(step[2]));
      case 'L':
        return pdf.lineTo(across(step[1]), up(step[2]));
      case 'C':
        return pdf.appendBezierCurve(
          across(step[1]),
          up(step[2]),
          across(step[3]),
          up(step[4]),
          across(step[5]),
          up(step[6]),
        );
      case 'Z':
        return pdf.closePath();
    }
  });

/** Widths of a halo and of its share of the letters' size, as the drawings on a screen have it. */
const haloWidth = 1;

function textOperators(item: TextItem, sheet: Sheet): pdf.PDFOperator[] {
  const { letters } = sheet.palette;
  const word = (['reversed', 'accent', 'quiet'] as const).find((each) => saysOf(item, each));
  const colour = letters[word ?? 'plain'];
  const halo = saysOf(item, 'halo')
    ? [
        pdf.setStrokingColor(colourOf('#ffffff')),
        pdf.setLineWidth(points(haloWidth)),
        pdf.setLineJoin(pdf.LineJoinStyle.Round),
        pdf.setTextRenderingMode(pdf.TextRenderingMode.Outline),
        ...runOperators(item, sheet),
        pdf.setTextRenderingMode(pdf.TextRenderingMode.Fill),
      ]
    : [];
  return [
    pdf.pushGraphicsState(),
    ...halo,
    pdf.setFillingColor(colourOf(colour)),
    ...runOperators(item, sheet),
    pdf.popGraphicsState(),
  ];
}

function runOperators(item: TextItem, { typefaces, across, up, fontOf }: Sheet): pdf.PDFOperator[] {
  const { text, at, size, anchor = 'start', turn = 0 } = item;
  const before = { start: 0, middle: 0.5, end: 1 }[anchor] * textWidth(text, item, typefaces);
  const [cosine, sine] = [Math.cos(radians(turn)), Math.sin(radians(turn))];
  let along = -before;
  return runsOf(text, item, typefaces).flatMap((run) => {
    const start = { x: at.x + along * cosine, y: at.y - along * sine };
    along += run.width * size;
    const known = fontOf(run.face);
    if (!known) return [];
    return [
      pdf.beginText(),
      pdf.setFontAndSize(known.key, points(size)),
      pdf.setTextMatrix(cosine, sine, -sine, cosine, across(start.x), up(start.y)),
      pdf.showText(known.font.encodeText(run.text)),
      pdf.endText(),
    ];
  });
}

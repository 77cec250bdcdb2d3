/** Reads a PDF back with pdf.js, an independent reader: pages with their sizes, texts with their places, paths with their corners. Millimetres, y up. */
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface ReadText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

export interface ReadPage {
  /** Points of 1/72 inch, as the file says. */
  readonly sizePt: readonly [width: number, height: number];
  readonly texts: readonly ReadText[];
  /** All text of the page, a line a piece. */
  readonly text: string;
  /** Corners and curve ends of every path, in points. */
  readonly pathsPt: readonly (readonly (readonly [x: number, y: number])[])[];
}

const millimetresPerPoint = 25.4 / 72;

export async function readPdf(bytes: Uint8Array): Promise<{ title: string; pages: ReadPage[] }> {
  const document = await getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 }).promise;
  const { info } = await document.getMetadata();
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    const { items } = await page.getTextContent();
    const texts = items.flatMap((item): ReadText[] =>
      'str' in item && item.str !== ''
        ? [
            {
              text: item.str,
              x: (item.transform[4] as number) * millimetresPerPoint,
              y: (item.transform[5] as number) * millimetresPerPoint,
              width: item.width * millimetresPerPoint,
            },
          ]
        : [],
    );
    const { fnArray, argsArray } = await page.getOperatorList();
    const pathsPt = fnArray.flatMap((operator, index) => {
      if (operator !== OPS.constructPath) return [];
      const [, [data]] = argsArray[index] as [number, [ArrayLike<number> | null]];
      return data ? [cornersOf(data)] : [];
    });
    const text = texts.map((each) => each.text).join('\n');
    pages.push({ sizePt: [right - left, top - bottom], texts, text, pathsPt });
  }
  await document.destroy();
  return { title: String((info as { Title?: string }).Title), pages };
}

/** pdf.js packs a path as step, figures, step, figures …: 0 move, 1 line, 2 curve, 4 close. */
function cornersOf(data: ArrayLike<number>): [number, number][] {
  const figures = [2, 2, 6, 4, 0];
  const corners: [number, number][] = [];
  for (let index = 0; index < data.length;) {
    const count = figures[data[index] ?? 4] ?? 0;
    if (count > 0) corners.push([data[index + count - 1] ?? 0, data[index + count] ?? 0]);
    index += 1 + count;
  }
  return corners;
}

/** Width and height of a path's upright rectangle, in points. */
export function extentPt(path: readonly (readonly [number, number])[]): [number, number] {
  const xs = path.map(([x]) => x);
  const ys = path.map(([, y]) => y);
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}

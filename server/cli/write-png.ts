/** An SVG painted into a PNG, with the typefaces that come with the program. */
import { initWasm, Resvg } from '@resvg/resvg-wasm';
import type { Typefaces } from '../drawing/page/typeface.ts';
import { readCarried } from '../machine/carried-files.ts';

/** Dots an inch where the picture isn't too large for it, and the most dots along its longer side. */
const dotsPerInch = 200;
const mostDots = 8000;

/** Prepared at the first call; the painter may be prepared only once in a process. */
let prepared: Promise<void> | null = null;

/** The bytes of a PNG at 200 dots an inch, fewer where the picture would have more than 8000 dots along a side. */
export async function writePng(svg: string, typefaces: Typefaces): Promise<Uint8Array> {
  prepared ??= readCarried('resvg.wasm').then((bytes) => initWasm(bytes));
  await prepared;
  const faces = new Set([...typefaces.plain, ...typefaces.strong]);
  const paint = (fitTo: { mode: 'zoom' | 'width' | 'height'; value: number }) =>
    new Resvg(svg, {
      dpi: dotsPerInch,
      background: '#ffffff',
      fitTo,
      font: { fontBuffers: [...faces].map(({ bytes }) => bytes), sansSerifFamily: 'Atkinson Hyperlegible Next' },
    });
  const full = paint({ mode: 'zoom', value: 1 });
  const longer = Math.max(full.width, full.height);
  const fitting =
    longer <= mostDots ? full : paint({ mode: full.width === longer ? 'width' : 'height', value: mostDots });
  return fitting.render().asPng();
}

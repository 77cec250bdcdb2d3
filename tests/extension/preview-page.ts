/** What the page of the preview shows, read from outside. */
import { until } from './case-list.ts';
import { previewFrame } from './browser-window.ts';

/** Counts of a picture's pixels, by what a maker would see. */
export interface Ink {
  readonly width: number;
  readonly height: number;
  /** Pixels that are not the paper. */
  readonly inked: number;
  /** Pixels whose contrast against the paper is at least 3 to 1 (WCAG 2 relative luminance). */
  readonly plain: number;
  /** Equal pictures have equal sums. */
  readonly sum: number;
}

const readInk = `(() => {
  const canvas = document.querySelector('#drawing');
  const { width, height } = canvas;
  const { data } = canvas.getContext('2d').getImageData(0, 0, width, height);
  const paper = getComputedStyle(document.body).backgroundColor.match(/[0-9.]+/g).map(Number);
  const channel = (value) => value / 255 <= 0.04045 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4;
  const luminance = (red, green, blue) => 0.2126 * channel(red) + 0.7152 * channel(green) + 0.0722 * channel(blue);
  const ground = luminance(...paper);
  let inked = 0, plain = 0, sum = 0;
  for (let at = 0; at < data.length; at += 4) {
    if (data[at + 3] === 0) continue;
    const [red, green, blue] = data.subarray(at, at + 3);
    sum = (sum * 31 + red * 65536 + green * 256 + blue + at) % 2147483647;
    if (red === paper[0] && green === paper[1] && blue === paper[2]) continue;
    inked++;
    const light = luminance(red, green, blue);
    if ((Math.max(light, ground) + 0.05) / (Math.min(light, ground) + 0.05) >= 3) plain++;
  }
  return { width, height, inked, plain, sum };
})()`;

export const ink = async (): Promise<Ink> => (await previewFrame()).evaluate<Ink>(readInk);

/** The text of the element with `id`; empty where it is hidden. */
export async function textOf(id: string): Promise<string> {
  const frame = await previewFrame();
  return frame.evaluate<string>(
    `(() => { const part = document.getElementById('${id}'); return part.hidden ? '' : part.innerText; })()`,
  );
}

export const zoomText = (): Promise<string> => textOf('zoom');

/** The summary, once it holds `words`. */
export const summaryWith = (words: string): Promise<string> =>
  until(`summary with "${words}"`, async () => {
    const text = await textOf('summary');
    return text.includes(words) && text;
  });

/** The picture, once two looks in a row are the same. */
export async function settledInk(): Promise<Ink> {
  let before = await ink();
  return until('a picture that rests', async () => {
    const after = await ink();
    const rests = after.sum === before.sum && after.inked > 0;
    before = after;
    return rests && after;
  });
}

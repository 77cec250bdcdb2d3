/** The picture as it is seen, made into a PNG at a chosen scale: saved by the editor side, or copied. */
import { paintAtOnce, type Picture } from './painter.ts';

/** A PNG of `picture` at `scale` pixels a CSS pixel, on the paper's colour. */
export async function pictureBlob(picture: Picture, scale: number): Promise<Blob> {
  const { size, palette } = picture;
  const canvas = new OffscreenCanvas(Math.ceil(size.width * scale), Math.ceil(size.height * scale));
  const context = canvas.getContext('2d');
  if (!context) throw new Error('This browser draws no canvas');
  context.fillStyle = palette.paper;
  context.fillRect(0, 0, canvas.width, canvas.height);
  paintAtOnce(context, { ...picture, density: scale });
  return canvas.convertToBlob({ type: 'image/png' });
}

/** The bytes of `blob` in base 64. */
export async function base64Of(blob: Blob): Promise<string> {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}

/** Puts the picture on the clipboard; throws where the browser does not allow it. */
export async function copyPicture(picture: Picture, scale: number): Promise<void> {
  await navigator.clipboard.write([new ClipboardItem({ 'image/png': pictureBlob(picture, scale) })]);
}

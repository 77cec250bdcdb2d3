/** The entries of the Save menu: the drawing from the server, the picture from the page. */
import type { DrawingForm } from '../../../server/language/preview-messages.ts';
import type { MessageToEditor } from '../webview-messages.ts';
import type { Board } from './board.ts';
import { base64Of, copyPicture, pictureBlob } from './export-picture.ts';
import type { PageElements } from './page-elements.ts';

export function listenForExports(
  { saving, saveSvg, savePdf, savePng, copy, pictureScale }: PageElements,
  board: Board,
  send: (message: MessageToEditor) => void,
): void {
  const scale = (): number => Number(pictureScale.value);
  const menu = (action: () => Promise<void>) => (): void => {
    saving.open = false;
    void action();
  };
  const drawing = (form: DrawingForm): (() => void) =>
    menu(() => {
      send({ type: 'save', as: form });
      return Promise.resolve();
    });
  saveSvg.addEventListener('click', drawing('svg'));
  savePdf.addEventListener('click', drawing('pdf'));
  savePng.addEventListener(
    'click',
    menu(async () => {
      const picture = board.picture();
      if (picture) send({ type: 'savePicture', png: await base64Of(await pictureBlob(picture, scale())) });
    }),
  );
  copy.addEventListener(
    'click',
    menu(async () => {
      const picture = board.picture();
      if (!picture) return;
      try {
        await copyPicture(picture, scale());
        send({ type: 'tell', words: 'The picture is on the clipboard.' });
      } catch {
        send({ type: 'tell', words: 'This window may not copy pictures: save it as PNG instead.' });
      }
    }),
  );
}

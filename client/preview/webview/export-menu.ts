/** The entries of the Save menu: the drawing from the server, the picture from the page. */
import type { MessageToEditor } from '../webview-messages.ts';
import type { Board } from './board.ts';
import { base64Of, copyPicture, pictureBlob } from './export-picture.ts';
import type { PageElements } from './page-elements.ts';

export function listenForExports(
  { saving, saveSvg, savePng, copy, pictureScale }: PageElements,
  board: Board,
  send: (message: MessageToEditor) => void,
): void {
  const scale = (): number => Number(pictureScale.value);
  const menu = (action: () => Promise<void>) => (): void => {
    saving.open = false;
    void action();
  };
  saveSvg.addEventListener(
    'click',
    menu(() => {
      send({ type: 'save', as: 'svg' });
      return Promise.resolve();
    }),
  );
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

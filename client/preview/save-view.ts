/** Writes what a preview shows to a file that the person chooses. */
import { Uri, window, workspace } from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import { type DrawingForm, type FileQuestion, fileRequest } from '../../server/language/preview-messages.ts';
import { fileName } from '../file-name.ts';

/** Saves the view asked for as a drawing at full size. */
export async function saveDrawing(client: LanguageClient, source: Uri, question: FileQuestion): Promise<void> {
  const content = await client.sendRequest<string | null>(fileRequest, question);
  if (content === null) void window.showInformationMessage('This view has no drawing to save.');
  else await save(source, question.view, question.as, content);
}

/** Saves a PNG file given in base 64. */
export const savePicture = (source: Uri, view: string | null, png: string): Promise<void> =>
  save(source, view, 'png', png);

/** Asks where to, beside the text at first, and writes `content`, base 64; nothing where the person changes their mind. */
async function save(source: Uri, view: string | null, ending: DrawingForm | 'png', content: string): Promise<void> {
  const name = fileName(source).replace(/\.lap$/, '');
  const part = view === null ? '' : `-${view.replace(/^panel /, '').replaceAll(/[^\p{L}\p{N}]+/gu, '-')}`;
  const target = await window.showSaveDialog({
    defaultUri: Uri.joinPath(source, '..', `${name}${part}.${ending}`),
    filters: { [ending.toUpperCase()]: [ending] },
  });
  if (!target) return;
  await workspace.fs.writeFile(target, Uint8Array.from(Buffer.from(content, 'base64')));
  void window.showInformationMessage(`Saved ${fileName(target)}.`);
}

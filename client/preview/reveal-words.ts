/** Selects words of a text in its editor. */
import { Range, Selection, TextEditorRevealType, type Uri, ViewColumn, window, workspace } from 'vscode';

/** Selects the words from `start` to `end` without taking the focus; words of a version other than `version` (null: any) are left alone. */
export async function revealWords(
  uri: Uri,
  version: number | null,
  { start, end }: { readonly start: number; readonly end: number },
): Promise<void> {
  const document = await workspace.openTextDocument(uri);
  if (version !== null && version !== document.version) return;
  const range = new Range(document.positionAt(start), document.positionAt(end));
  const visible = window.visibleTextEditors.find((editor) => editor.document === document);
  const viewColumn = visible?.viewColumn ?? ViewColumn.One;
  const editor = await window.showTextDocument(document, { viewColumn, preserveFocus: true });
  editor.selection = new Selection(range.start, range.end);
  editor.revealRange(range, TextEditorRevealType.InCenterIfOutsideViewport);
}

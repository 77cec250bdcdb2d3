/** Selects words of a text in its editor, without taking the focus. */
import {
  Range,
  Selection,
  type TextDocument,
  TextEditorRevealType,
  type Uri,
  ViewColumn,
  window,
  workspace,
} from 'vscode';

/** Selects the words from `start` to `end`; words of a version other than `version` (null: any) are left alone. */
export async function revealWords(
  uri: Uri,
  version: number | null,
  { start, end }: { readonly start: number; readonly end: number },
): Promise<void> {
  const document = await workspace.openTextDocument(uri);
  if (version !== null && version !== document.version) return;
  await revealRange(document, new Range(document.positionAt(start), document.positionAt(end)));
}

/** Selects a range where the text is shown already, else in the first column. */
export async function revealRange(document: TextDocument, range: Range): Promise<void> {
  const visible = window.visibleTextEditors.find((editor) => editor.document === document);
  const viewColumn = visible?.viewColumn ?? ViewColumn.One;
  const editor = await window.showTextDocument(document, { viewColumn, preserveFocus: true });
  editor.selection = new Selection(range.start, range.end);
  editor.revealRange(range, TextEditorRevealType.InCenterIfOutsideViewport);
}

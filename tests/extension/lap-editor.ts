/** A .lap file in the editor, edited as a person would. */
import { join } from 'node:path';
import * as vscode from 'vscode';
import { until } from './case-list.ts';

export class LapEditor {
  readonly document: vscode.TextDocument;
  readonly original: string;

  private constructor(document: vscode.TextDocument) {
    this.document = document;
    this.original = document.getText();
  }

  static async open(name: string): Promise<LapEditor> {
    const folder = vscode.workspace.workspaceFolders?.[0];
    if (!folder) throw new Error('The tests run in a folder');
    const document = await vscode.workspace.openTextDocument(join(folder.uri.fsPath, name));
    await vscode.window.showTextDocument(document, vscode.ViewColumn.One);
    return new LapEditor(document);
  }

  get uri(): vscode.Uri {
    return this.document.uri;
  }

  /** The range of the first `words`. */
  rangeOf(words: string): vscode.Range {
    const offset = this.document.getText().indexOf(words);
    if (offset < 0) throw new Error(`The text has no "${words}"`);
    return new vscode.Range(this.document.positionAt(offset), this.document.positionAt(offset + words.length));
  }

  async replace(words: string, by: string): Promise<void> {
    const edit = new vscode.WorkspaceEdit();
    edit.replace(this.uri, this.rangeOf(words), by);
    await vscode.workspace.applyEdit(edit);
  }

  /** Puts the text back as it was opened. */
  async restore(): Promise<void> {
    const edit = new vscode.WorkspaceEdit();
    const end = this.document.positionAt(this.document.getText().length);
    edit.replace(this.uri, new vscode.Range(new vscode.Position(0, 0), end), this.original);
    await vscode.workspace.applyEdit(edit);
  }

  /** The diagnostics, once `wanted` is pleased with them. */
  diagnostics(what: string, wanted: (found: readonly vscode.Diagnostic[]) => boolean): Promise<vscode.Diagnostic[]> {
    return until(what, () => {
      const found = vscode.languages.getDiagnostics(this.uri);
      return wanted(found) && found;
    });
  }
}

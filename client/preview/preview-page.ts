/** The page of the preview: fixed markup, a strict content policy, and no text of the user's in it. */
import { randomBytes } from 'node:crypto';
import { Uri, type Webview } from 'vscode';
import { previewMarkup } from './preview-markup.ts';

/** The page for `webview`; script and style are the bundles in `bundleFolder`. */
export function previewPage(webview: Webview, bundleFolder: Uri): string {
  const nonce = randomBytes(16).toString('base64url');
  const script = webview.asWebviewUri(Uri.joinPath(bundleFolder, 'preview.js')).toString();
  const style = webview.asWebviewUri(Uri.joinPath(bundleFolder, 'preview.css')).toString();
  const policy = `default-src 'none'; style-src ${webview.cspSource}; script-src 'nonce-${nonce}'`;
  return previewMarkup({ policy, nonce, script, style });
}

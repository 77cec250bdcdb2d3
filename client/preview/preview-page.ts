/** The page of the preview: fixed markup, a strict content policy, and no text of the user's in it. */
import { randomBytes } from 'node:crypto';
import { Uri, type Webview } from 'vscode';

/** The page for `webview`, for the text at `documentUri`; script and style are the bundles in `bundleFolder`. */
export function previewPage(webview: Webview, bundleFolder: Uri, documentUri: Uri): string {
  const nonce = randomBytes(16).toString('base64url');
  const script = webview.asWebviewUri(Uri.joinPath(bundleFolder, 'preview.js')).toString();
  const style = webview.asWebviewUri(Uri.joinPath(bundleFolder, 'preview.css')).toString();
  const policy = `default-src 'none'; style-src ${webview.cspSource}; script-src 'nonce-${nonce}'`;
  return `<!DOCTYPE html>
<html lang="en">
<head>
  <meta charset="utf-8">
  <meta http-equiv="Content-Security-Policy" content="${policy}">
  <meta name="viewport" content="width=device-width, initial-scale=1">
  <link rel="stylesheet" href="${style}">
  <title>Panel preview</title>
</head>
<body data-document="${attributeText(documentUri.toString())}">
  <header role="toolbar" aria-label="View">
    <label for="panel">Panel</label>
    <select id="panel"></select>
    <span class="spring"></span>
    <button id="zoom-out" type="button" title="Zoom out (-)" aria-label="Zoom out">&minus;</button>
    <output id="zoom" title="Size on screen against real size"></output>
    <button id="zoom-in" type="button" title="Zoom in (+)" aria-label="Zoom in">+</button>
    <button id="fit" type="button" title="Fit the whole panel (0)">Fit</button>
  </header>
  <p id="stale" role="status" hidden></p>
  <main>
    <canvas id="drawing" tabindex="0" role="img" aria-describedby="summary"></canvas>
    <p id="empty" hidden>No panel to draw yet.</p>
    <p id="pointed" aria-hidden="true"></p>
  </main>
  <footer>
    <div id="summary" aria-live="polite"></div>
    <ul id="kinds" aria-label="Kinds of strips and pieces"></ul>
  </footer>
  <script nonce="${nonce}" src="${script}"></script>
</body>
</html>`;
}

/** Text made safe inside a double-quoted attribute. */
const attributeText = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');

/** The page of a comparison: fixed markup and a strict content policy; the report comes later as a message. */
import { randomBytes } from 'node:crypto';
import { Uri, type Webview } from 'vscode';

/** The page for `webview`; script and style are the bundles in `bundleFolder`. */
export function comparePage(webview: Webview, bundleFolder: Uri): string {
  const nonce = randomBytes(16).toString('base64url');
  const script = webview.asWebviewUri(Uri.joinPath(bundleFolder, 'compare.js')).toString();
  const style = webview.asWebviewUri(Uri.joinPath(bundleFolder, 'compare.css')).toString();
  const policy = `default-src 'none'; style-src ${webview.cspSource} 'nonce-${nonce}'; script-src 'nonce-${nonce}'`;
  return `<!DOCTYPE html>
<html lang="en">
<head>
  <meta charset="utf-8">
  <meta http-equiv="Content-Security-Policy" content="${policy}">
  <meta name="viewport" content="width=device-width, initial-scale=1">
  <link rel="stylesheet" href="${style}">
  <title>What changed</title>
</head>
<body data-look="both">
  <form id="looks" aria-label="How the versions are shown">
    <label><input type="radio" name="look" value="both" checked> laid over</label>
    <label><input type="radio" name="look" value="old"> old</label>
    <label><input type="radio" name="look" value="new"> new</label>
    <label><input type="radio" name="look" value="swipe"> swipe</label>
    <label class="swipe">old <input id="swipe" type="range" min="0" max="100" value="50" aria-label="How much of the old version shows"> new</label>
    <button id="flip" type="button" title="Change between old and new (F)">Flip</button>
  </form>
  <main id="report" aria-live="polite"><p>Comparing …</p></main>
  <script nonce="${nonce}" src="${script}"></script>
</body>
</html>`;
}

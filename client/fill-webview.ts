/** Puts one of our pages into a panel of the editor. */
import { randomBytes } from 'node:crypto';
import { Uri, type WebviewPanel } from 'vscode';
import { type PageContent, pageMarkup } from './page-markup.ts';

/** Sets icon, options and page; `name` is that of the page's bundles in dist, `extension` our own folder. */
export function fillWebview(
  panel: WebviewPanel,
  extension: Uri,
  name: 'preview' | 'compare',
  content: PageContent,
): void {
  const icons = Uri.joinPath(extension, 'client/icons');
  const bundles = Uri.joinPath(extension, 'dist');
  const { webview } = panel;
  const bundled = (ending: 'js' | 'css'): string =>
    webview.asWebviewUri(Uri.joinPath(bundles, `${name}.${ending}`)).toString();
  panel.iconPath = { light: Uri.joinPath(icons, 'lap-light.svg'), dark: Uri.joinPath(icons, 'lap-dark.svg') };
  webview.options = { enableScripts: true, localResourceRoots: [bundles] };
  webview.html = pageMarkup(content, {
    styles: webview.cspSource,
    nonce: randomBytes(16).toString('base64url'),
    script: bundled('js'),
    style: bundled('css'),
  });
}

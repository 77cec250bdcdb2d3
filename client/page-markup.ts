/** The frame of every page of ours: one content policy, one style sheet, one script, and no text of the user's in it. */

export interface PageContent {
  readonly title: string;
  /** Fixed markup. */
  readonly body: string;
}

export interface PageSources {
  /** Where style sheets may come from, as a content policy names it. */
  readonly styles: string;
  readonly nonce: string;
  /** Addresses of the bundled script and style sheet. */
  readonly script: string;
  readonly style: string;
}

/** A whole page. Only what carries the nonce runs; styles within the body must carry it too, and nothing else is fetched. */
export const pageMarkup = ({ title, body }: PageContent, { styles, nonce, script, style }: PageSources): string =>
  `<!DOCTYPE html>
<html lang="en">
<head>
  <meta charset="utf-8">
  <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src ${styles} 'nonce-${nonce}'; script-src 'nonce-${nonce}'">
  <meta name="viewport" content="width=device-width, initial-scale=1">
  <link rel="stylesheet" href="${style}">
  <title>${title}</title>
</head>
<body>
${body}
  <script nonce="${nonce}" src="${script}"></script>
</body>
</html>`;

/** Asks for a file: one of the workspace, or any by the dialogue. */
import { type Uri, window, workspace } from 'vscode';

/** Files by their endings, such as ['lap']; `but` is left out. Undefined where the person changes their mind. */
export async function chooseFile(prompt: string, endings: readonly string[], but?: Uri): Promise<Uri | undefined> {
  // a brace with one word in it is no pattern, so the first ending stands twice
  const files = await workspace.findFiles(`**/*.{${[...endings, endings[0]].join()}}`, '**/node_modules/**');
  const others = files.filter((file) => file.toString() !== but?.toString());
  const elsewhere = { label: 'A file elsewhere …', file: null };
  const items = [...others.map((file) => ({ label: workspace.asRelativePath(file), file })), elsewhere];
  const picked = await window.showQuickPick<{ label: string; file: Uri | null }>(items, { placeHolder: prompt });
  if (!picked) return undefined;
  if (picked.file) return picked.file;
  return (await window.showOpenDialog({ filters: { [endings.join(', ')]: [...endings] } }))?.[0];
}

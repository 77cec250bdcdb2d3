/** What runs inside the editor: `run` is called by the extension host, and ends when all cases have. */
import { given, takePicture } from './browser-window.ts';
import { runCases } from './case-list.ts';
import { compareCases } from './compare-cases.ts';
import { editorCases } from './editor-cases.ts';
import { previewCases } from './preview-cases.ts';

export async function run(): Promise<void> {
  await runCases([...editorCases, ...previewCases, ...compareCases], given('HALFLAP_RESULTS'), (name) =>
    takePicture(`failed ${name}`),
  );
}

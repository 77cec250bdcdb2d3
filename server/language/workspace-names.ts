/** The mentions of one name in all files of the workspace, open or not. */
import { lineStartsOf } from '../../grammar/tree/source-range.ts';
import { buildFiles } from '../design/builders/build-files.ts';
import { loadFiles } from '../design/files/load-files.ts';
import { mentionAt, mentionsOfDefinition } from './features/names.ts';
import type { AnalysedDocument, OpenDocuments, PlaceInFile } from './open-documents.ts';
import { plainAddress } from './workspace-files.ts';

/** Every mention of what the name at `offset` means: in the document itself, in the file that gives it, in all that use that. */
export function mentionsInWorkspace(
  document: AnalysedDocument,
  offset: number,
  documents: OpenDocuments,
): PlaceInFile[] {
  const definition = mentionAt(document.analysis.names, offset)?.definition;
  if (!definition) return [];
  const given = document.locate(definition.nameRange);
  const isGiven = ({ uri, range }: PlaceInFile): boolean =>
    plainAddress(uri) === plainAddress(given.uri) && range.start === given.range.start;
  return documents.readers(document.uri).flatMap(({ uri, text, place }) => {
    if (!text.includes(definition.name)) return [];
    const files = loadFiles(text, place);
    const { names } = buildFiles(files);
    const locate = documents.locator(uri, files);
    const lineStarts = lineStartsOf(text);
    return mentionsOfDefinition(names, ({ nameRange }) => isGiven(locate(nameRange))).map((range) => ({
      uri,
      lineStarts,
      range,
    }));
  });
}

/** The typefaces that come with the program, read once when something is to be printed. */
import { typefaceOf, type Typefaces } from '../drawing/page/typeface.ts';
import { type CarriedFile, readCarried } from './carried-files.ts';

/** Latin letters in a face made to be told apart; Greek, Cyrillic and signs, then kana and kanji, in faces that have them. */
export async function loadTypefaces(): Promise<Typefaces> {
  const face = async (file: CarriedFile) => typefaceOf(file.replace('.ttf', ''), await readCarried(file));
  const [plain, strong, wide, han] = await Promise.all([
    face('letters.ttf'),
    face('letters-strong.ttf'),
    face('letters-wide.ttf'),
    face('letters-han.ttf'),
  ]);
  return { plain: [plain, wide, han], strong: [strong, wide, han] };
}

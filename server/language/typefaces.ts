/** The typefaces that come with the program, read once when something is to be printed. */
import { typefaceOf, type Typefaces } from '../drawing/page/typeface.ts';
import { readCarried } from './carried-files.ts';

/** Font files by the name that the bundle gives them, with the places in their packages. */
export const fontFiles = {
  'letters.ttf': '@expo-google-fonts/atkinson-hyperlegible-next/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf',
  'letters-strong.ttf': '@expo-google-fonts/atkinson-hyperlegible-next/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf',
  'letters-wide.ttf': 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf',
  'letters-han.ttf': '@expo-google-fonts/sawarabi-gothic/400Regular/SawarabiGothic_400Regular.ttf',
} as const;

/** Latin letters in a face made to be told apart; Greek, Cyrillic and signs, then kana and kanji, in faces that have them. */
export async function loadTypefaces(): Promise<Typefaces> {
  const face = async (file: keyof typeof fontFiles) =>
    typefaceOf(file.replace('.ttf', ''), await readCarried(file, fontFiles[file]));
  const [plain, strong, wide, han] = await Promise.all([
    face('letters.ttf'),
    face('letters-strong.ttf'),
    face('letters-wide.ttf'),
    face('letters-han.ttf'),
  ]);
  return { plain: [plain, wide, han], strong: [strong, wide, han] };
}

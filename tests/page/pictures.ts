/** Pictures of the page against those that were looked at and approved, with a tolerance for the letters' smoothing. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';

/** How far a pixel's colour may be off (0 to 1), and which share of the pixels may be further off. */
const colourTolerance = 0.2;
const shareTolerance = 0.01;

export interface PictureFolders {
  readonly approved: string;
  /** Where the picture and its differences are left to be looked at. */
  readonly taken: string;
}

/** Throws where `picture` is not the approved one called `name`; with ACCEPT=1 in the environment it becomes that. */
export function comparePicture(name: string, picture: Buffer, { approved, taken }: PictureFolders): void {
  mkdirSync(taken, { recursive: true });
  writeFileSync(join(taken, `${name}.png`), picture);
  const path = join(approved, `${name}.png`);
  if (process.env['ACCEPT'] === '1') {
    mkdirSync(approved, { recursive: true });
    writeFileSync(path, picture);
    return;
  }
  if (!existsSync(path)) throw new Error(`${path} is missing: look at the picture, then accept it with ACCEPT=1`);
  const [before, after] = [PNG.sync.read(readFileSync(path)), PNG.sync.read(picture)];
  const { width, height } = before;
  if (width !== after.width || height !== after.height) throw new Error(`${name} is ${after.width} × ${after.height}`);
  const difference = new PNG({ width, height });
  const off = pixelmatch(before.data, after.data, difference.data, width, height, { threshold: colourTolerance });
  if (off <= shareTolerance * width * height) return;
  writeFileSync(join(taken, `${name}-difference.png`), PNG.sync.write(difference));
  throw new Error(`${name} differs in ${off} pixels from the approved picture; see ${taken}`);
}

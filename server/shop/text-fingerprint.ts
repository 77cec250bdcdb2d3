/** A short name for one state of a text, so that two prints can be told apart. */

/**
 * Eight hexadecimal digits: FNV-1a, 32 bits, over the UTF-8 bytes (Fowler, Noll and Vo, variant 1a).
 * It tells changes apart; it protects against nothing.
 */
export function textFingerprint(text: string): string {
  let hash = 0x811c9dc5;
  for (const byte of utf8(text)) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
  return hash.toString(16).padStart(8, '0');
}

/** What the first byte begins with, by how many follow it. */
const heads = [0x00, 0xc0, 0xe0, 0xf0];

/** The UTF-8 bytes of a text; half of a pair of surrogates has none, so the sign for what is unknown stands in its place. */
function* utf8(text: string): Generator<number> {
  for (const character of text) {
    const point = character.codePointAt(0) ?? 0;
    const code = point >= 0xd800 && point <= 0xdfff ? 0xfffd : point;
    const following = code < 0x80 ? 0 : code < 0x800 ? 1 : code < 0x10000 ? 2 : 3;
    yield (heads[following] ?? 0) | (code >> (6 * following));
    for (let left = following - 1; left >= 0; left--) yield 0x80 | ((code >> (6 * left)) & 0x3f);
  }
}

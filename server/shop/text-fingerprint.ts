/** A short name for one state of a text, so that two prints can be told apart. */

/**
 * Eight hexadecimal digits: FNV-1a, 32 bits, over the UTF-8 bytes (Fowler, Noll and Vo, variant 1a).
 * It tells changes apart; it protects against nothing.
 */
export function textFingerprint(text: string): string {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(text)) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
  return hash.toString(16).padStart(8, '0');
}

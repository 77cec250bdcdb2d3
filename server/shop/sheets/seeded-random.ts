/** Numbers that look random and are the same every time: a multiply-and-shift generator of 32 bits (mulberry32, public domain). */
export type Random = () => number;

/** Numbers in [0, 1). */
export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** The items in another order (Fisher and Yates). */
export function shuffled<Item>(items: readonly Item[], random: Random): Item[] {
  const left = [...items];
  return items.flatMap(() => left.splice(Math.floor(random() * left.length), 1));
}

/** Colours of the drawings. A wood never speaks by colour alone: grain lines, hatching and marks say the same. */

/** Tints of the woods a file may name; anything else is drawn in the plain tint. */
const tints: ReadonlyMap<string, string> = new Map([
  ['ash', '#e3d2ae'],
  ['white_ash', '#e3d2ae'],
  ['basswood', '#f0e4c8'],
  ['birch', '#ecd9b4'],
  ['cedar', '#cf9d74'],
  ['cherry', '#c88a62'],
  ['cypress', '#e8cf9d'],
  ['lime', '#f0e4c8'],
  ['maple', '#f0dfbf'],
  ['oak', '#cfae7a'],
  ['pine', '#eed9a4'],
  ['spruce', '#f1dfb6'],
  ['walnut', '#8a654a'],
]);

const plainTint = '#e0cda6';
const shadow = '#4b3a2a';

/** The tint of `wood`, `steps` shades darker: one a strip layer below the front. */
export function woodTint(wood: string | null, steps: number): string {
  const tint = tints.get(wood ?? '') ?? plainTint;
  return mixed(tint, shadow, Math.min(0.11 * steps, 0.5));
}

/** `share` of `second` mixed into `first`; colours as #rrggbb. */
function mixed(first: string, second: string, share: number): string {
  const channels = [1, 3, 5].map((start) => {
    const from = parseInt(first.slice(start, start + 2), 16);
    const to = parseInt(second.slice(start, start + 2), 16);
    return Math.round(from + (to - from) * share)
      .toString(16)
      .padStart(2, '0');
  });
  return `#${channels.join('')}`;
}

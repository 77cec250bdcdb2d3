/** Colours of the drawings. A wood never speaks by colour alone: grain lines, hatching and marks say the same. */

/** Tints of the woods a file may name; anything else is drawn in the plain tint. */
const tints: ReadonlyMap<string, string> = new Map([
  ['ash', '#e3d2ae'],
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

/** Colours that casts are usually given. */
const resins: ReadonlyMap<string, string> = new Map([
  ['amber', '#c98b2b'],
  ['black', '#2b2b2b'],
  ['blue', '#2f6ea3'],
  ['brown', '#7a4d2a'],
  ['green', '#3f8a5b'],
  ['grey', '#8a8d8f'],
  ['orange', '#d5762a'],
  ['red', '#b3392f'],
  ['white', '#ece9e2'],
  ['yellow', '#e0b93a'],
]);
const clearTint = '#9fb8b4';

/** How much of what lies under it a cast hides. */
export const resinOpacity = 0.4;

/** The tint of a cast by its colour; one without a colour is clear. */
export function resinTint(colour: string | null): string {
  const words = (colour ?? 'clear').split('_');
  return words.map((word) => resins.get(word)).find((tint) => tint !== undefined) ?? clearTint;
}
const shadow = '#4b3a2a';

/** The tint of `wood` by its last word that is known ("birch_ply" is birch), `steps` shades darker: one a strip layer below the front. */
export function woodTint(wood: string | null, steps: number): string {
  const words = (wood ?? '').split('_').reverse();
  const tint = words.map((word) => tints.get(word)).find((known) => known !== undefined) ?? plainTint;
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

/** Reads back what the drawings write, for tests: paths with their attributes and corners, y turned up again. */
export interface ReadPath {
  readonly id: string | null;
  readonly mark: string | null;
  readonly rings: readonly (readonly (readonly [x: number, y: number])[])[];
}

const attribute = (tag: string, name: string): string | null => new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1] ?? null;

export function readPaths(svg: string): ReadPath[] {
  return [...svg.matchAll(/<path [^>]*>/g)].map(([tag]) => ({
    id: attribute(tag, 'id'),
    mark: attribute(tag, 'data-mark'),
    rings: (attribute(tag, 'd') ?? '').split('Z').filter(Boolean).map(readRing),
  }));
}

function readRing(data: string): [number, number][] {
  return [...data.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), -Number(y)]);
}

/** Area inside a ring by the shoelace formula, positive counter-clockwise. */
export function ringArea(ring: ReadPath['rings'][number]): number {
  return ring.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = ring[(index + 1) % ring.length] ?? [x, y];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}

/** A bar seen from the front: its axis along x from 0 to its length, begun at its lower start, as x, y pairs. */
export function barRing(length: number, face: number): number[] {
  const half = face / 2;
  return [0, -half, length, -half, length, half, 0, half];
}

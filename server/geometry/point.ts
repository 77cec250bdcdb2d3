/** Points and directions in the plane: millimetres, x right, y up, angles in degrees counter-clockwise. */

export interface Point {
  readonly x: number;
  readonly y: number;
}

export const origin: Point = { x: 0, y: 0 };

export const add = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });
export const subtract = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
export const scale = (a: Point, factor: number): Point => ({ x: a.x * factor, y: a.y * factor });
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;
export const length = (a: Point): number => Math.hypot(a.x, a.y);
export const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
export const between = (a: Point, b: Point, fraction: number): Point => ({
  x: a.x + (b.x - a.x) * fraction,
  y: a.y + (b.y - a.y) * fraction,
});

export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
/** Cotangent of an angle in degrees; exactly 0 at a right angle. */
export const cotangent = (angle: number): number => (angle === 90 ? 0 : 1 / Math.tan(radians(angle)));
export const degrees = (angle: number): number => (angle * 180) / Math.PI;

/** Unit vector at `angle` degrees. Multiples of 30° are given without rounding noise in their zero components. */
export function direction(angle: number): Point {
  return { x: cosine(angle), y: cosine(angle - 90) };
}

function cosine(angle: number): number {
  const turned = ((angle % 360) + 360) % 360;
  if (turned === 90 || turned === 270) return 0;
  if (turned === 60 || turned === 300) return 0.5;
  if (turned === 120 || turned === 240) return -0.5;
  return Math.cos(radians(angle));
}

/** The unit vector `a` points along; `a` must not be zero. */
export const unit = (a: Point): Point => scale(a, 1 / length(a));

/** `a` turned a quarter turn counter-clockwise. */
export const quarterTurn = (a: Point): Point => ({ x: -a.y, y: a.x });

/** `a` turned by `angle` degrees about the origin. */
export function turned(a: Point, angle: number): Point {
  const along = direction(angle);
  return { x: a.x * along.x - a.y * along.y, y: a.x * along.y + a.y * along.x };
}

/** Angle of `a` in degrees, in [0, 360). */
export function angleOf(a: Point): number {
  const angle = degrees(Math.atan2(a.y, a.x));
  return angle < 0 ? angle + 360 : angle;
}

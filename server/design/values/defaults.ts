/** What is taken where a file does not say: figures of common practice in small shops. Lengths mm. */

/** A circular saw's cut in sheet goods. */
export const sheetKerf = 2.4;

/** Left unused at each cut of a stick, and in each stick beside: what a stop and a saw wander. */
export const stickBreath = { cut: 0.1, stick: 2 };

/** Between the finished line and the saw line of a cut-out: what sanding takes off. */
export const sawAllowance = 1.5;

/** Kept free between two saw lines, so that neither cut spoils the other part. */
export const sawGap = 0;

/** A band is cut longer than it needs, and wider than the work is deep. */
export const bandOverLength = 10;
export const bandOverWidth = 1;

/** How many times the load the fixings of a hanging work hold. */
export const hangingSafety = 4;

/** What is taken where a file does not say: figures of common practice in small shops. Lengths mm. */

/** A circular saw's cut in sheet goods. */
export const sheetKerf = 2.4;

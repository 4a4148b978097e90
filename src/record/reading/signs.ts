/** @internal Bytes that say how a line of cells is written. */
export const TAB = 9;
export const NEWLINE = 10;
export const RETURN = 13;
export const SPACE = 32;
export const QUOTE = 34;

/** @internal True for either sign that ends a line. */
export const endsLine = (byte: number | undefined): boolean => byte === NEWLINE || byte === RETURN;

/** @internal Coefficients k of proportional gauge lengths (ISO 6892-1): the one that a bare A stands for, and the longer one that is written as its index. */
export const [USUAL_COEFFICIENT, LONG_COEFFICIENT] = [5.65, 11.3];
/** @internal A proportional length may be rounded to 5 mm and counts as one within this share (ISO 6892-1, from memory). */
export const SAME_LENGTH = 0.1;

/** Numbers below are written with a power of ten: a reader counts no zeros. */
const SMALL = 1e-4;

/** @internal True of a number that is written with a power of ten, as 2.5 × 10⁻⁵ is. */
export const takesPower = (value: number): boolean => value !== 0 && Math.abs(value) < SMALL;

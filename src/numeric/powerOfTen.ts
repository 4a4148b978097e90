/** @internal A whole power of ten as the number that is nearest to it; `10 ** -5` is the one below. */
export const powerOfTen = (exponent: number): number => Number(`1e${exponent}`);

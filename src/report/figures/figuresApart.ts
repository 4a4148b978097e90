/** Significant figures of a value that is near no other. */
const USUAL = 5;
/** More than a number of the machine has. */
const MOST = 17;

/** @internal Significant figures, as few as can be, with which values that differ are written differently. */
export function figuresApart(values: readonly number[], usual = USUAL): number {
  const different = new Set(values).size;
  let figures = usual;
  while (figures < MOST && new Set(values.map((value) => value.toPrecision(figures))).size < different) figures += 1;
  return figures;
}

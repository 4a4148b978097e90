/** A crossing lasts when the curve stays below the line for so many samples, or over so much strain. */
const LASTING_SAMPLES = 5;
const LASTING_STRAIN = 0.0005;

/** @internal Samples from `first` on to the one returned, a multiple of four of them, all lie on or above the line `slope · (strain − origin)`. */
export function clearOf(strain: Float64Array, stress: Float64Array, slope: number, origin: number, first: number, end: number): number {
  let i = first;
  while (
    i + 3 < end &&
    stress[i]! >= slope * (strain[i]! - origin) &&
    stress[i + 1]! >= slope * (strain[i + 1]! - origin) &&
    stress[i + 2]! >= slope * (strain[i + 2]! - origin) &&
    stress[i + 3]! >= slope * (strain[i + 3]! - origin)
  )
    i += 4;
  return i;
}

/**
 * @internal First sample from `first` on that lies below the line `slope · (strain − origin)` and stays there, or -1.
 *
 * Five samples or 0.05 % strain are what a lasting crossing needs (common practice): a single noisy sample is no crossing.
 */
export function sustainedCrossing(
  strain: Float64Array,
  stress: Float64Array,
  slope: number,
  origin: number,
  first: number,
  end: number,
): number {
  let since = -1;
  // above the line, as most samples before a crossing are: four at a time
  for (let i = clearOf(strain, stress, slope, origin, first, end); i < end; i += 1) {
    if (stress[i]! >= slope * (strain[i]! - origin)) since = -1;
    else {
      if (since < 0) since = i;
      if (i - since + 1 >= LASTING_SAMPLES || strain[i]! - strain[since]! >= LASTING_STRAIN) return since;
    }
  }
  // a sparse or short record: below the line up to its end is lasting too
  return since >= 0 && since < end - 1 ? since : -1;
}

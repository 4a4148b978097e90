/** A column is stepped where this share of its differences are whole multiples of the smallest, to this share of a step. */
const SHARE = 0.99;
const CLOSE = 0.02;
/** More steps than this between neighbours are no evidence. */
const MOST_STEPS = 1000;
/** Starts from a standstill that tell of steps. */
const STARTS = 5;
/** Pairs of neighbours that are looked at: enough to meet single steps. */
const PAIRS = 20_000;

/** @internal One step of a column that was read in steps (the least significant digit), or 0 where it is not stepped. */
export function resolution(column: Float64Array): number {
  const n = column.length;
  if (n < 2) return 0;
  const stride = Math.max(1, Math.floor(n / PAIRS));
  let largest = Math.abs(column[0]!);
  let step = Infinity;
  for (let i = 1; i < n; i += stride) {
    const value = column[i]!;
    const d = Math.abs(value - column[i - 1]!);
    if (d > 0 && d < step) step = d;
    if (Math.abs(value) > largest) largest = Math.abs(value);
  }
  // differences below this are rounding of equal numbers
  const rounding = 1e-12 * largest;
  if (!(step > rounding)) {
    step = Infinity;
    for (let i = 1; i < n; i += stride) {
      const d = Math.abs(column[i]! - column[i - 1]!);
      if (d > rounding && d < step) step = d;
    }
  }
  if (!Number.isFinite(step)) return 0;
  let counted = 0;
  let whole = 0;
  // an even motion changes by the same amount each time, and stands for a while: only different multiples, or stops and starts, tell of steps
  let several = 0;
  let stood = false;
  for (let i = 1; i < n; i += stride) {
    const multiple = Math.abs(column[i]! - column[i - 1]!) / step;
    if (!(multiple > 0.5)) {
      stood = true;
      continue;
    }
    if (multiple > 1.5 || stood) several += 1;
    stood = false;
    if (multiple > MOST_STEPS) continue;
    counted += 1;
    if (Math.abs(multiple - Math.round(multiple)) < CLOSE) whole += 1;
    // so many that lie between are enough to tell
    else if (counted - whole > (1 - SHARE) * n + 1) return 0;
  }
  // steps so fine that every multiple is near a whole one tell nothing: there must be small multiples too
  return several >= STARTS && counted >= 10 && whole >= SHARE * counted ? step : 0;
}

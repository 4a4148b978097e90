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
  // of a long column the places lie far apart: they are visited once
  const differences = new Float64Array(Math.floor((n - 2) / stride) + 1);
  let largest = Math.abs(column[0]!);
  for (let k = 0, i = 1; k < differences.length; k += 1, i += stride) {
    const value = column[i]!;
    differences[k] = Math.abs(value - column[i - 1]!);
    if (Math.abs(value) > largest) largest = Math.abs(value);
  }
  // differences below this are rounding of equal numbers
  const rounding = 1e-12 * largest;
  let step = Infinity;
  for (let k = 0; k < differences.length; k += 1) {
    const d = differences[k]!;
    if (d > rounding && d < step) step = d;
  }
  if (!Number.isFinite(step)) return 0;
  let counted = 0;
  let whole = 0;
  // an even motion changes by the same amount each time, and stands for a while: only different multiples, or stops and starts, tell of steps
  let several = 0;
  let stood = false;
  for (let k = 0; k < differences.length; k += 1) {
    const multiple = differences[k]! / step;
    if (multiple > 1.5) several += 1;
    else if (multiple > 0.5 && stood) several += 1;
    stood = !(multiple > 0.5);
    if (!(multiple > 0.5) || multiple > MOST_STEPS) continue;
    counted += 1;
    if (Math.abs(multiple - Math.round(multiple)) < CLOSE) whole += 1;
    // so many that lie between are enough to tell
    else if (counted - whole > (1 - SHARE) * n + 1) return 0;
  }
  // steps so fine that every multiple is near a whole one tell nothing: there must be small multiples too
  return several >= STARTS && counted >= 10 && whole >= SHARE * counted ? step : 0;
}

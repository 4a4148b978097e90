/** @internal First sample in a range (from 1 on) that differs from the one before by more than so much, two at a time; `end` where none does. */
export function firstChange(column: Float64Array, least: number, first: number, end: number): number {
  let i = first;
  let before = column[first - 1]!;
  for (; i + 1 < end; i += 2) {
    const one = column[i]!;
    const next = column[i + 1]!;
    if (Math.abs(one - before) > least || Math.abs(next - one) > least) break;
    before = next;
  }
  while (i < end && !(Math.abs(column[i]! - column[i - 1]!) > least)) i += 1;
  return i;
}

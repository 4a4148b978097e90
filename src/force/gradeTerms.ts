/** @internal A measured term beside its limits in the classes, best first. */
export interface GradedTerm<Name extends string> {
  readonly name: Name;
  readonly value: number;
  readonly limits: readonly number[];
}

/** Decimal readings are not exact in binary: what exceeds a limit by this share of it lies on it. */
export const ON_LIMIT = 1e-9;

/**
 * @internal Index of the best class that all terms reach (the number of classes where none is), and the term that decides: of those that
 * reach no better class, the one that uses most of its limit.
 */
export function gradeTerms<Name extends string>(terms: readonly GradedTerm<Name>[]): { readonly grade: number; readonly limitedBy: Name } {
  const graded = terms.map(({ name, value, limits }) => {
    const size = Math.abs(value);
    const first = limits.findIndex((limit) => size <= limit * (1 + ON_LIMIT));
    const grade = first < 0 ? limits.length : first;
    return { name, grade, share: size / limits[Math.min(grade, limits.length - 1)]! };
  });
  const worst = graded.reduce((a, b) => (b.grade > a.grade || (b.grade === a.grade && b.share > a.share) ? b : a));
  return { grade: worst.grade, limitedBy: worst.name };
}

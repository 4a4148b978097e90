/** A call of a public function, as plain data. */
export interface VectorCall {
  /** Name of the function. */
  readonly function: string;
  /** Its arguments as JSON; a value that is itself a call (`function` and `arguments`) stands for what that call returns. */
  readonly arguments: readonly unknown[];
  /** Where in the result the value stands, names and indices with points between, for example `stress.2`; default the result itself. */
  readonly at?: string | undefined;
}

/** A number that a check vector expects. */
export interface ExpectedValue {
  /** Where in the result it stands, for example `area` or `strain.0`; default the result itself. */
  readonly at?: string | undefined;
  /** The number, in the library's own unit. */
  readonly value: number;
  /** Largest difference that is allowed: half of the last printed digit, up to a whole one where the number is from memory; a billionth of a count, of a class, and of what a rule gives exactly. */
  readonly tolerance: number;
  /** Unit of both, for a reader; absent for a number without one. */
  readonly unit?: string | undefined;
}

/** How a number came to be expected: seen in print, printed but recalled, or computed a second, independent way. */
export type VectorStatus = 'published' | 'from memory' | 'second derivation';

/** One check value of the handbook: a call, what it must return, and who says so. */
export interface CheckVector {
  /** Name of the vector, by which it is cited; of its own among all. */
  readonly id: string;
  /** Name of the public function that it checks. */
  readonly function: string;
  /** Its arguments, as in {@link VectorCall}. */
  readonly arguments: readonly unknown[];
  /** What must be found. */
  readonly expected: readonly ExpectedValue[];
  /** Standard and clause, or author and title. */
  readonly source: string;
  /** How sure the numbers are. */
  readonly status: VectorStatus;
}

/** What became of one expected value. */
export interface VectorCheck {
  /** Name of the vector. */
  readonly id: string;
  /** Function that was called. */
  readonly function: string;
  /** Where in the result the value stands; absent for the result itself. */
  readonly at?: string;
  /** The number that was expected [`unit`]. */
  readonly expected: number;
  /** The difference that is allowed [`unit`]. */
  readonly tolerance: number;
  /** Unit of the numbers. */
  readonly unit?: string;
  /** The number that came [`unit`]; absent where none came. */
  readonly got?: number;
  /** Whether it came within the tolerance. */
  readonly passed: boolean;
  /** Why there is no number. */
  readonly problem?: string;
}

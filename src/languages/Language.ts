/** A finding's words. */
export interface FindingWords {
  /** The sentence; `{name}` stands for a value of the finding. */
  readonly message: string;
  /** What can be done about it. */
  readonly remedy: string;
}

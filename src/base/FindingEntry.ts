/** One entry of the catalogue of findings: what it weighs by default, what it speaks of, its sentence and its remedy. */
export interface FindingEntry {
  /** Weight unless the numbers make it another. */
  readonly severity: 'note' | 'caution' | 'fault';
  /** What it speaks of. */
  readonly about: 'record' | 'piece' | 'frame' | 'method';
  /** The sentence; `{name}` stands for a value of the finding. */
  readonly message: string;
  /** What can be done about it. */
  readonly remedy: string;
}

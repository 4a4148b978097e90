import { catalogue, type FindingCode, type FindingValues } from './catalogue.js';
import { shown } from './shown.js';

/** How much a finding weighs: a remark, a doubt beside a value, or a reason to withhold one. */
export type Severity = 'note' | 'caution' | 'fault';

/** What a finding speaks of. */
export type Subject = 'record' | 'piece' | 'frame' | 'method';

/** A doubt about the test, as data and as a sentence. */
export interface Finding {
  /** Which finding; never renamed. */
  readonly code: FindingCode;
  /** How much it weighs. */
  readonly severity: Severity;
  /** What it speaks of. */
  readonly about: Subject;
  /** One sentence that a technician understands, with the numbers. */
  readonly message: string;
  /** What can be done about it. */
  readonly remedy: string;
  /** What the sentence was made of. */
  readonly values: Readonly<Record<string, number | string>>;
  /** The field of the result that it concerns. */
  readonly field?: string;
  /** First and last sample that it concerns. */
  readonly range?: readonly [number, number];
}

/** @internal What a finding may carry beside its numbers. */
export interface FindingDetails {
  readonly severity?: Severity;
  readonly field?: string;
  readonly range?: readonly [number, number];
}

/** @internal Makes a finding from its code and its numbers; sentence and remedy come from the catalogue, whose gaps the compiler asks for. */
export function finding<Code extends FindingCode>(code: Code, values: FindingValues<Code>, details: FindingDetails = {}): Finding {
  const { severity, about, message, remedy } = catalogue[code];
  return { code, severity, about, message: shown(message, values), remedy, values, ...details };
}

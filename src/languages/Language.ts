import type { FindingCode } from '../base/index.js';
import type { CautionTag } from '../methods/index.js';
import type { SlipKey } from '../teaching/index.js';
import type { Phrase } from './phrases.js';

/** A finding's words. */
export interface FindingWords {
  /** The sentence; `{name}` stands for a value of the finding. */
  readonly message: string;
  /** What can be done about it. */
  readonly remedy: string;
}

/** Words of a slip of a student. */
export interface SlipWords {
  /** What was done, in one sentence. */
  readonly slip: string;
  /** What to do instead. */
  readonly advice: string;
}

/** A language of findings, report and figures, as plain data: only the languages that are imported are bundled. */
export interface Language {
  /** Its tag (BCP 47): `de`, `zh-Hans`. */
  readonly tag: string;
  /** Its name in itself. */
  readonly name: string;
  /** Sign between the whole part and the decimals. */
  readonly decimalSign: '.' | ',';
  /** Words of each finding. */
  readonly findings: Readonly<Record<FindingCode, FindingWords>>;
  /** Words of each caution. */
  readonly cautions: Readonly<Record<CautionTag, string>>;
  /** Words of each slip that gives a wrong answer to an exercise; English itself has none, and what is missing is said in English. */
  readonly slips?: Readonly<Partial<Record<SlipKey, SlipWords>>> | undefined;
  /** Labels and sentences by what they are in English; English itself has none. */
  readonly phrases: Readonly<Partial<Record<Phrase, string>>>;
}

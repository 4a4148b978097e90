import type { Subject } from '../base/index.js';
import type { MaterialFamilyKey, UsualRange } from './materialFamilies.js';
import type { PropertyName } from './measuredProperties.js';
import type { MistakeKey } from './mistakes.js';
import type { OpenCauseKey } from './openCauses.js';

/** Keys of causes; never renamed. */
export type PropertyCauseKey = MistakeKey | OpenCauseKey | 'another-family';

/** A property beside its usual range. */
export interface ComparedProperty {
  /** Which property. */
  readonly property: PropertyName;
  /** As measured [MPa or 1]. */
  readonly value: number;
  /** Usual range [MPa or 1]. */
  readonly range: UsualRange;
  /** On which side it lies outside the range with its margin; absent where it lies inside. */
  readonly outside?: 'low' | 'high' | undefined;
}

/** What may be behind properties that do not fit. */
export interface PropertyCause {
  /** Which cause. */
  readonly key: PropertyCauseKey;
  /** What it speaks of. */
  readonly about: Subject;
  /** Measured over true value [1] of stress, or of strain where stress is right; 1 for another family. */
  readonly factor: number;
  /** Properties outside their range that this cause explains. */
  readonly explains: readonly PropertyName[];
  /** Rank: how common the cause is, times how well all properties fit with it, 0 to 1; no probability. */
  readonly score: number;
  /** Families that fit if this is the cause, in the order of the table. */
  readonly families: readonly MaterialFamilyKey[];
  /** One sentence. */
  readonly sentence: string;
  /** What to check. */
  readonly check: string;
}

/** Properties beside their ranges, and what may explain them. Nothing is corrected. */
export interface PropertyExplanation {
  /** Every property that has a range. */
  readonly compared: readonly ComparedProperty[];
  /** Causes, likeliest first; empty where all fits, or nothing usual explains it. */
  readonly causes: readonly PropertyCause[];
}

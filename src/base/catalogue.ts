import { calibrationEntries } from './calibrationCatalogue.js';
import { compressionAndBendingEntries } from './compressionAndBendingCatalogue.js';
import { evaluationEntries } from './evaluationCatalogue.js';
import { comparisonEntries } from './comparisonCatalogue.js';
import type { FindingEntry } from './FindingEntry.js';
import { frameEntries } from './frameCatalogue.js';
import { materialEntries } from './materialCatalogue.js';
import { otherTestsEntries } from './otherTestsCatalogue.js';
import { pieceEntries } from './pieceCatalogue.js';
import { planningEntries } from './planningCatalogue.js';
import { recordEntries } from './recordCatalogue.js';
import { statisticsEntries } from './statisticsCatalogue.js';
import { uncertaintyEntries } from './uncertaintyCatalogue.js';
import { verificationEntries } from './verificationCatalogue.js';

const entries = { ...recordEntries, ...pieceEntries, ...frameEntries, ...calibrationEntries, ...evaluationEntries, ...materialEntries, ...verificationEntries, ...compressionAndBendingEntries, ...otherTestsEntries, ...planningEntries, ...uncertaintyEntries, ...statisticsEntries, ...comparisonEntries };

/** Codes of findings. */
export type FindingCode = keyof typeof entries;

/** @internal Names of the gaps of a sentence. */
export type Gaps<Sentence extends string> = Sentence extends `${string}{${infer Name}}${infer Rest}` ? Name | Gaps<Rest> : never;

/** @internal The values that a finding of a code must have for its sentence, and may have beside them. */
export type FindingValues<Code extends FindingCode> = Readonly<Record<string, number | string>> &
  Readonly<Record<Gaps<(typeof entries)[Code]['message']>, number | string>>;

/**
 * Every finding by its code, in the order of the job: record, piece, frame, evaluation, material, other tests, several tests.
 *
 * @remarks
 * Codes are never renamed. Thresholds behind the findings are options of the functions that make them; their defaults are common
 * practice where no standard is named.
 */
export const catalogue: Readonly<Record<FindingCode, FindingEntry>> = entries;

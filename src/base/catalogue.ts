import { evaluationEntries } from './evaluationCatalogue.js';
import type { FindingEntry } from './FindingEntry.js';
import { frameEntries } from './frameCatalogue.js';
import { otherTestsEntries } from './otherTestsCatalogue.js';
import { pieceEntries } from './pieceCatalogue.js';
import { planningEntries } from './planningCatalogue.js';
import { recordEntries } from './recordCatalogue.js';

const entries = { ...recordEntries, ...pieceEntries, ...frameEntries, ...evaluationEntries, ...otherTestsEntries, ...planningEntries };

/** Codes of findings. */
export type FindingCode = keyof typeof entries;

/**
 * Every finding by its code, in the order of the job: record, piece, frame, evaluation; then those of other tests and of planning.
 *
 * @remarks
 * Codes are never renamed. Thresholds behind the findings are options of the functions that make them; their defaults are common
 * practice where no standard is named.
 */
export const catalogue: Readonly<Record<FindingCode, FindingEntry>> = entries;

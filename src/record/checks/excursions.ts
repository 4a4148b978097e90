import { soundLength, type TensionRecord } from '../../base/index.js';
import { findDrops, type Drop, type Drops } from './drops.js';
import { pausesOf } from './findPauses.js';
import type { Pause } from './pauseSearch.js';
import type { RecordOutline } from '../survey/recordOutline.js';
import { testSegments } from '../survey/segments.js';
import { surveyRecord } from '../survey/surveyRecord.js';
import { findZeroMoves, type ZeroMove } from './zeroMoves.js';
import { surveyZeros, type ZeroSurvey } from './zeros.js';

/** @internal Where a record leaves its rising curve, and why. */
export interface Excursions extends Drops {
  readonly zeros: ZeroSurvey;
  readonly zeroMoves: readonly ZeroMove[];
}

/** Share of a leap of the travel by which the piece lengthens where it yielded; where it slipped it does not. */
const LENGTHENED = 0.5;

/** True where an extensometer shows that the piece itself leapt; one that shows nothing may sit beside the part that yielded. */
const isOfPiece = ({ extension }: TensionRecord, { range: [turn, , back], way }: Drop): boolean =>
  extension !== undefined && back < soundLength(extension) && extension[back]! - extension[turn]! > LENGTHENED * way;

/** @internal Zeros, zeros set under load, and the falls that neither these nor pauses explain. */
export function excursionsOf(
  record: TensionRecord,
  outline: RecordOutline,
  pauses: readonly Pause[] = pausesOf(record, surveyRecord(record).clock, outline.top, outline.motion),
): Excursions {
  const zeros = surveyZeros(outline);
  const zeroMoves = findZeroMoves(outline, zeros);
  const explained = [...pauses.map(({ range }) => range), ...zeroMoves.map(({ at }) => [at - 1, at] as const)];
  const found = findDrops(outline, explained, zeros.from);
  return { zeros, zeroMoves, ...found, leaps: found.leaps.filter((leap) => !isOfPiece(record, leap)) };
}

/** @internal The same for a record that was surveyed; undefined where its force never rises, and where it holds several tests. */
export function surveyExcursions(
  record: TensionRecord,
  outline: RecordOutline | undefined,
  pauses: readonly Pause[],
): Excursions | undefined {
  return outline && testSegments(outline.force, outline.highest, record.time, [], outline.blocks).length < 2
    ? excursionsOf(record, outline, pauses)
    : undefined;
}

export { alignChannels } from './alignChannels.js';
export { type Cell, type DecimalSign, type Separator, type ThousandsSign } from './cells.js';
export { checkRecord, type RecordThresholds } from './checkRecord.js';
export { collapseRepeats } from './collapseRepeats.js';
export { type TextEncoding } from './decodeText.js';
export { exportCsv, type ExportColumn, type ExportOptions } from './exportCsv.js';
export { findPauses, type PauseOptions } from './findPauses.js';
export { type Pause } from './pauseSearch.js';
export { joinJumps } from './joinJumps.js';
export { joinSlips } from './joinSlips.js';
export { loadingEnvelope } from './loadingEnvelope.js';
export {
  type IgnoredColumn,
  type LeftOutRow,
  type MetadataEntry,
  type ReadColumn,
  type Reading,
  type ReadOptions,
  type ReadResult,
} from './reading.js';
export { readChunks, type Chunks } from './readChunks.js';
export { readingOptions } from './readingOptions.js';
export { readRecord } from './readRecord.js';
export { reapplySteps } from './reapplySteps.js';
export { rebuildTime } from './rebuildTime.js';
export { removeZeroDrift } from './removeZeroDrift.js';
export { type Repaired } from './repaired.js';
export { repairRecord, type Repairs } from './repairRecord.js';
export { replaceSpikes, type SpikeColumn } from './replaceSpikes.js';
export { restoreZero } from './restoreZero.js';
export { reverseSign, type ReversibleColumn } from './reverseSign.js';
export { splitTests } from './splitTests.js';
export { readRows, type CellColumns } from './readRows.js';
export { tare, type TareOptions, type TareResult } from './tare.js';
export { undoStep } from './undoStep.js';
/** @internal */
export { applyChange } from './applyChange.js';
/** @internal */
export { isOfDrive, type Drop } from './drops.js';
/** @internal */
export { surveyExcursions, type Excursions } from './excursions.js';
/** @internal */
export { keptRanges } from './keptRanges.js';
/** @internal */
export { allSpikeFindings } from './channelFindings.js';
/** @internal */
export { checkRecordKernel, reversedForce } from './checkRecord.js';
/** @internal */
export { LOADED } from './recordOutline.js';
/** @internal */
export { cellValue, splitCells } from './cells.js';
/** @internal */
export { decodeBytes, findWidth } from './decodeText.js';
/** @internal */
export { endExtensometer, type EndedRecord } from './extensometerEnd.js';
/** @internal */
export { pausesOf } from './findPauses.js';
/** @internal */
export { LEAST_READINGS, motionOf, ofDrive, ofPiece } from './motionOf.js';
/** @internal */
export { recordBlocks, type RecordBlocks } from './recordBlocks.js';
/** @internal */
export { repairRecordKernel, requireRepairs } from './repairRecord.js';
/** @internal */
export { recordOutline } from './recordOutline.js';
/** @internal */
export { requireColumns } from './requireColumns.js';
/** @internal */
export { requireRowsOptions } from './readOptions.js';
/** @internal */
export { resolution } from './resolution.js';
/** @internal */
export { unloadedFrom } from './unloadedFrom.js';
/** @internal */
export { runningTime, surveyRecord, type RecordSurvey } from './surveyRecord.js';
/** @internal */
export { findSlipsBack, slipsBackOf, type SlipsBack } from './slipsBack.js';

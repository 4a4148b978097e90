/*
 * Words of this floor for what a record shows. Each is named by its samples.
 *
 * - outline: the rough shape of a record: where it is loaded, its highest force, its stiffness (survey/recordOutline.ts)
 * - habit: how one column behaves: its noise, one step of its reading, its usual change (survey/habit.ts)
 * - fall: the force goes down, for whatever cause
 * - stretch: a fall by three samples: before it, at its lowest force, and where it is over (checks/turns.ts)
 * - turn: a fall in which the drive went back (checks/turns.ts)
 * - dip: a short fall of which noise hides whether it is a turn (checks/hiddenTurns.ts)
 * - sudden fall: a fall within three samples; a leap is one over which the travel went ahead (checks/suddenFalls.ts)
 * - drop: a fall with its cause: reversal or backlash of the drive, slip in the grips, yield of the material (checks/drops.ts)
 * - excursion: what leaves the rising curve and comes back to it: a drop, a leap, a zero set under load (checks/excursions.ts)
 * - jump: a motion goes ahead or back between two samples while the force goes on (checks/jumps.ts)
 * - slip back: an extensometer goes back at once in the elastic part, for its knife edges slipped (checks/slipsBack.ts)
 * - spike: samples that jump off the line of a column and back; a signal that drops out is one (checks/spikes.ts)
 * - disturbance: a spike of any shape, which only the motion beside it shows; a bulge is one where the piece yields (checks/disturbances.ts)
 *
 * What an evaluation makes of them, interruptions and departures, is explained in methods/loading/Interruption.ts.
 */
export { alignChannels } from './repairs/alignChannels.js';
export { type Cell, type DecimalSign, type Separator, type ThousandsSign } from './reading/cells.js';
export { checkRecord, type RecordThresholds } from './checks/checkRecord.js';
export { collapseRepeats } from './repairs/collapseRepeats.js';
export { type TextEncoding } from './reading/decodeText.js';
export { exportCsv, type ExportColumn, type ExportOptions } from './reading/exportCsv.js';
export { findPauses, type PauseOptions } from './checks/findPauses.js';
export { type Pause } from './checks/pauseSearch.js';
export { joinJumps } from './repairs/joinJumps.js';
export { joinSlips } from './repairs/joinSlips.js';
export { loadingEnvelope } from './repairs/loadingEnvelope.js';
export {
  type IgnoredColumn,
  type LeftOutRow,
  type MetadataEntry,
  type ReadColumn,
  type Reading,
  type ReadOptions,
  type ReadResult,
} from './reading/reading.js';
export { readChunks, type Chunks } from './reading/readChunks.js';
export { readingOptions } from './reading/readingOptions.js';
export { readRecord } from './reading/readRecord.js';
export { reapplySteps } from './repairs/reapplySteps.js';
export { rebuildTime } from './repairs/rebuildTime.js';
export { removeZeroDrift } from './repairs/removeZeroDrift.js';
export { type Repaired } from './repairs/repaired.js';
export { repairRecord, type Repairs } from './repairs/repairRecord.js';
export { replaceSpikes } from './repairs/replaceSpikes.js';
export { type SpikeColumn } from './checks/spikedColumns.js';
export { restoreZero } from './repairs/restoreZero.js';
export { reverseSign, type ReversibleColumn } from './repairs/reverseSign.js';
export { splitTests } from './repairs/splitTests.js';
export { readRows, type CellColumns } from './reading/readRows.js';
export { tare, type TareOptions, type TareResult } from './repairs/tare.js';
export { undoStep } from './repairs/undoStep.js';
/** @internal */
export { applyChange } from './repairs/applyChange.js';
/** @internal */
export { isOfDrive, type Drop } from './checks/drops.js';
/** @internal */
export { surveyExcursions, type Excursions } from './checks/excursions.js';
/** @internal */
export { keptColumn, keptRanges } from './repairs/keptRanges.js';
/** @internal */
export { allSpikeFindings } from './checks/spikeFindings.js';
/** @internal */
export { checkRecordKernel, reversedForce } from './checks/checkRecord.js';
/** @internal */
export { LOADED } from './survey/recordOutline.js';
/** @internal */
export { cellValue, splitCells } from './reading/cells.js';
/** @internal */
export { decodeBytes, findWidth } from './reading/decodeText.js';
/** @internal */
export { headingOf } from './reading/namedColumns.js';
/** @internal */
export { endExtensometer, type EndedRecord } from './checks/extensometerEnd.js';
/** @internal */
export { pausesOf } from './checks/findPauses.js';
/** @internal */
export { LEAST_READINGS, motionColumn, ofDrive, ofPiece } from './survey/motionColumn.js';
/** @internal */
export { recordBlocks, type RecordBlocks } from './survey/recordBlocks.js';
/** @internal */
export { repairRecordKernel, requireRepairs } from './repairs/repairRecord.js';
/** @internal */
export { recordOutline } from './survey/recordOutline.js';
/** @internal */
export { requireColumns } from './survey/requireColumns.js';
/** @internal */
export { requireRowsOptions } from './reading/readOptions.js';
/** @internal */
export { unloadedFrom } from './checks/unloadedFrom.js';
/** @internal */
export { runningTime, surveyRecord, type RecordSurvey } from './survey/surveyRecord.js';
/** @internal */
export { slipsBackOf, type SlipsBack } from './checks/slipsBack.js';

export { type Cell, type DecimalSign, type Separator, type ThousandsSign } from './cells.js';
export { checkRecord, type RecordThresholds } from './checkRecord.js';
export { type TextEncoding } from './decodeText.js';
export { exportCsv, type ExportColumn, type ExportOptions } from './exportCsv.js';
export { findPauses, type Pause, type PauseOptions } from './findPauses.js';
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
export { readRows, type CellColumns } from './readRows.js';
export { tare, type TareOptions, type TareResult } from './tare.js';
/** @internal */
export { checkRecordKernel } from './checkRecord.js';
/** @internal */
export { findPausesKernel } from './findPauses.js';
/** @internal */
export { resolution } from './resolution.js';
/** @internal */
export { surveyRecord } from './surveyRecord.js';

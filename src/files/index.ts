export { readArrow } from './readArrow.js';
export { readParquet } from './readParquet.js';
export { readSpreadsheet, type SpreadsheetOptions } from './readSpreadsheet.js';

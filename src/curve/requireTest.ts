import {
  InputError,
  requireDivisor,
  requireOptions,
  soundLength,
  requireSection,
  type TensionColumns,
  type TensionRecord,
  type TestPiece,
  type UnbrokenPiece,
} from '../base/index.js';
import { LEAST_READINGS, motionColumn, ofPiece, requireColumns } from '../record/index.js';

/** @internal Refuses a checked record in which no column of motion holds enough readings; a method may have its own name for the extension. */
export function requireMotion(from: string, checked: TensionRecord, given: object, extension = 'extension'): void {
  const column = motionColumn(checked, ofPiece);
  const measured = checked[column];
  if (!measured) throw new InputError(from, 'record', 'missing', `must have ${extension}, strain or travel`, Object.keys(given).join(', '));
  const readings = soundLength(measured);
  if (readings < LEAST_READINGS)
    throw new InputError(
      from,
      `record.${column === 'extension' ? extension : column}`,
      'too-few',
      `must hold at least ${LEAST_READINGS} numbers, where there is no travel`,
      readings,
    );
}

/** @internal A checked record: every column finite and as long as the force; extension and strain may end early. */
export function requireRecord(from: string, record: TensionColumns): TensionRecord {
  const checked = requireColumns(from, record);
  requireMotion(from, checked, record);
  return checked;
}

/** @internal Lengths of a checked test piece, with their defaults. */
export interface PieceLengths {
  readonly area: number;
  readonly gaugeLength: number;
  readonly extensometerLength: number;
  readonly parallelLength: number;
  readonly effectiveLength: number;
}

/** What a piece has, before its test and after it. */
const pieceFields: readonly (keyof TestPiece)[] = [
  'section',
  'gaugeLength',
  'extensometerLength',
  'parallelLength',
  'effectiveLength',
  'afterFracture',
];

/** @internal Checks a test piece as it was before its test, and fills in the default lengths. */
export function requirePiece(from: string, piece: UnbrokenPiece): PieceLengths {
  requireOptions(from, piece, pieceFields, 'testPiece');
  const area = requireDivisor(from, 'testPiece.section.area', requireSection(from, 'testPiece.section', piece.section).area);
  const gaugeLength = requireDivisor(from, 'testPiece.gaugeLength', piece.gaugeLength);
  const length = (name: 'extensometerLength' | 'parallelLength' | 'effectiveLength', otherwise: number) =>
    piece[name] === undefined ? otherwise : requireDivisor(from, `testPiece.${name}`, piece[name]);
  const parallelLength = length('parallelLength', gaugeLength);
  const effectiveLength = length('effectiveLength', parallelLength);
  if (effectiveLength < parallelLength)
    throw new InputError(from, 'testPiece.effectiveLength', 'out-of-range', 'must not be below parallelLength', effectiveLength);
  return { area, gaugeLength, extensometerLength: length('extensometerLength', gaugeLength), parallelLength, effectiveLength };
}

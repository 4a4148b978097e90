import { expect, test } from 'vitest';
import { motionColumn, ofDrive, ofPiece } from '../../src/record/survey/motionColumn.js';

const column = Float64Array.of(0, 1, 2);
const force = column;
const none = Float64Array.of(NaN, NaN, NaN);
const one = Float64Array.of(0, NaN, NaN);
const two = Float64Array.of(0, 1, NaN);

test.each([
  ['all three', { force, travel: column, extension: column, strain: column }, 'travel', 'extension'],
  ['travel and strain', { force, travel: column, strain: column }, 'travel', 'strain'],
  ['an extensometer alone', { force, extension: column }, 'extension', 'extension'],
  ['strain alone', { force, strain: column }, 'strain', 'strain'],
  ['travel alone', { force, travel: column }, 'travel', 'travel'],
  ['an extension without a reading', { force, travel: column, extension: none }, 'travel', 'travel'],
  ['an extension of one reading, and strain', { force, travel: column, extension: one, strain: column }, 'travel', 'strain'],
  ['an extension of two readings', { force, travel: column, extension: two, strain: column }, 'travel', 'extension'],
  ['strain beside an extension of one reading', { force, extension: one, strain: column }, 'strain', 'strain'],
  ['neither of two', { force, extension: none, strain: one }, 'extension', 'extension'],
  ['none', { force }, 'strain', 'travel'],
] as const)('%s: what tells of the drive, and what of the piece', (_, record, drive, piece) => {
  expect(motionColumn(record, ofDrive)).toBe(drive);
  expect(motionColumn(record, ofPiece)).toBe(piece);
});

import { expect, test } from 'vitest';
import { motionOf, ofDrive, ofPiece } from '../../src/record/motionOf.js';

const column = [0, 1];
const force = column;

test.each([
  ['all three', { force, travel: column, extension: column, strain: column }, 'travel', 'extension'],
  ['travel and strain', { force, travel: column, strain: column }, 'travel', 'strain'],
  ['an extensometer alone', { force, extension: column }, 'extension', 'extension'],
  ['strain alone', { force, strain: column }, 'strain', 'strain'],
  ['travel alone', { force, travel: column }, 'travel', 'travel'],
] as const)('%s: what tells of the drive, and what of the piece', (_, record, drive, piece) => {
  expect(motionOf(record, ofDrive)).toBe(drive);
  expect(motionOf(record, ofPiece)).toBe(piece);
});

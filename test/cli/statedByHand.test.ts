/** What the operator states by flags: the broken piece, and what a test report must hold beside the record. */
import { Command } from 'commander';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { pieceOf, withPieceFlags, type PieceFlags } from '../../src/cli/pieceFlags.js';
import { fromJson } from '../../src/index.js';
import { simulateTension, writeRecord } from '../../src/simulate/index.js';
import { command } from '../support/command.js';
import { roundPiece } from '../support/records.js';

const piece = (...words: string[]) =>
  pieceOf(
    withPieceFlags(new Command(), false)
      .parse(['--round', '8', '--gauge-length', '40', ...words], { from: 'user' })
      .opts<PieceFlags>(),
  );

describe('the broken piece', () => {
  test.each<[string, object]>([
    ['--final-diameter 4.7,4.9', { diameters: [4.7, 4.9] }],
    ['--final-width 10 --final-thickness 2.6,2.3,2.6', { width: 10, thickness: [2.6, 2.3, 2.6] }],
    ['--final-width 10 --final-thickness 2.4', { width: 10, thickness: 2.4 }],
    ['--final-gauge-length 51 --fracture-distance 9', { gaugeLength: 51, fractureDistance: 9 }],
    ['--fracture-place in-fillet', { fracturePlace: 'in-fillet' }],
    ['--subdivision 10,6,31.2,12.1', { subdivision: { intervals: 10, between: 6, xToY: 31.2, beyondY: 12.1 } }],
    ['--subdivision 10,5,26,10.1,15.2', { subdivision: { intervals: 10, between: 5, xToY: 26, beyondY: [10.1, 15.2] } }],
    ['--fine-marks-extension 0.8', { fineMarksExtension: 0.8 }],
  ])('%s', (words, after) => {
    expect(piece(...words.split(' ')).afterFracture).toEqual(after);
  });

  test.each([
    ['--final-diameter 4,7', /--final-diameter 4,7 may be 4\.7 with a decimal comma/],
    ['--final-width 10', /--final-width and --final-thickness must be given together/],
    ['--final-width 10 --final-thickness 2.6,2.3', /one reading in mm, or three/],
    ['--final-area 18 --final-diameter 4.8', /--final-area must not stand beside/],
    ['--subdivision 10,6,31.2', /--subdivision must be N,n,XY,YZ/],
    ['--subdivision 10,6,a,2', /--subdivision must be N,n,XY,YZ/],
  ])('%s is refused', (words, message) => {
    expect(() => piece(...words.split(' '))).toThrow(message);
  });

  test('nothing measured is no broken piece', () => {
    expect(piece()).not.toHaveProperty('afterFracture');
  });
});

const folder = mkdtempSync(join(tmpdir(), 'stated-'));
const file = join(folder, 'pull.csv');
const { record } = simulateTension({
  material: {
    modulus: 205_000,
    yieldStress: 300,
    hardening: { law: 'swift', prestrain: 0.02, exponent: 0.2 },
    fracture: { extension: 0.3 },
  },
  piece: roundPiece,
  frame: { compliance: 2e-5 },
  logger: { rate: 10, forceNoise: 5, lead: 1, tail: 1 },
});
writeFileSync(
  file,
  writeRecord(record, {
    columns: [
      { quantity: 'time', name: 'Time', unit: 's', decimals: 2 },
      { quantity: 'force', name: 'Load', unit: 'N', decimals: 1 },
      { quantity: 'travel', name: 'Travel', unit: 'mm', decimals: 4 },
    ],
  }),
);
const report = (...words: string[]) => command('report', file, '--round', '8', '--gauge-length', '40', '--overwrite', ...words);
const made = () => fromJson(readFileSync(join(folder, 'pull.report.json'), 'utf8'));

test('what a report must hold stands in data and page', async () => {
  const stated = {
    'sample-direction': 'transverse',
    'sample-place': 'quarter of the width',
    control: 'strain rate, method A',
    rate: '0.00025 1/s',
    'extensometer-class': 'ISO 9513 class 1',
  };
  const flags = Object.entries(stated).flatMap(([name, text]) => [`--${name}`, text]);
  const force = '--force-verified 2026-01-15 --force-class 1 --force-certificate K-18 --force-range 1000-25000'.split(' ');
  expect(await report(...flags, ...force, '--language', 'de')).toMatchObject({ status: 0, error: '' });
  expect(made().test).toMatchObject({
    sampleDirection: 'transverse',
    samplePlace: 'quarter of the width',
    control: 'strain rate, method A',
    rate: '0.00025 1/s',
    extensometerClass: 'ISO 9513 class 1',
    forceCalibration: { date: '2026-01-15', forceClass: 1, certificate: 'K-18', range: [1000, 25_000] },
  });
  const page = readFileSync(join(folder, 'pull.report.html'), 'utf8');
  for (const text of [...Object.values(stated), 'K-18', 'Richtung der Probenahme', 'Prüfgeschwindigkeit, wie angegeben'])
    expect(page).toContain(text);
});

test('a class that is none is refused by its flag', async () => {
  expect((await report('--force-class', '4')).error).toContain('--force-class must be');
  expect((await report('--force-range', '9000')).error).toContain('--force-range must go up');
});

test('a fracture near a mark, and Z from two readings, reach the findings and the values', async () => {
  expect(await report('--final-gauge-length', '50', '--final-diameter', '4.7,4.9', '--fracture-distance', '8')).toMatchObject({
    status: 0,
    error: '',
  });
  const result = made();
  // 1 − (4.8/8)²
  expect(result.reductionOfArea!.value).toBeCloseTo(0.64, 12);
  expect(result.findings.map(({ code }) => code)).toContain('fracture-outside-middle');
  expect(readFileSync(join(folder, 'pull.report.html'), 'utf8')).toMatch(/8\u00a0mm from the nearest gauge mark/);
});

/** What differs between two results, in words and figures for a reader. */
import { expect, test } from 'vitest';
import { analyseTension, compareResults, round, type TensionOptions, type TestPiece } from '../../src/index.js';
import { german } from '../../src/languages/index.js';
import { comparisonInWords } from '../../src/report/pages/comparisonInWords.js';
import { caseT1, COMPLIANCE, roundPiece } from '../support/records.js';

const differing = (piece: TestPiece, options: TensionOptions = {}) => {
  const first = analyseTension(caseT1(), roundPiece, { frameCompliance: COMPLIANCE });
  const second = analyseTension(caseT1(), piece, { frameCompliance: COMPLIANCE, ...options });
  return comparisonInWords(compareResults(first, second), [first, second], { language: german }).differences.slice(1);
};

test('a field is named, and its numbers have the digits of a page', () => {
  const section = round({ diameter: [5.98, 5.989999999999999] });
  const rows = differing({ ...roundPiece, section, parallelLength: 47.123456789 });
  expect(rows.find(([, name]) => name === 'Versuchslänge Lc')!.slice(2)).toEqual(['48', '47,123']);
  const said = rows.find(([, name]) => name === 'Querschnitt')!;
  expect(said[3]).toMatch(/5,985\u00a0mm/);
  expect(rows.flat().join(' ')).not.toMatch(/[{}"]|\d{9}/);
});

test('nested options are told down to what differs; one without a name by its path', () => {
  const rows = differing(roundPiece, { frameCompliance: 1e-5, modulus: { window: { by: 'stress', from: 20.000000001, to: 100 } } });
  expect(rows.map(([, name]) => name)).toEqual([
    'Nachgiebigkeit des Prüfrahmens',
    'modulus.window.by',
    'modulus.window.from',
    'modulus.window.to',
  ]);
  expect(rows[2]!.slice(2)).toEqual(['nicht angegeben', '20']);
});

test('a long table is counted', () => {
  const force = Array.from({ length: 9 }, (_, k) => 4000 * k);
  const rows = differing(roundPiece, { frameCompliance: { force, travel: force.map((F) => F * COMPLIANCE) } });
  expect(rows.map((row) => row[3])).toContain('force 9 Werte; travel 9 Werte');
});

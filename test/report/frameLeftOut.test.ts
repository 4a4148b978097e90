import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { analyseBending, analyseTension, exportCsv, rectangular, type BendingOptions, type TensionOptions } from '../../src/index.js';
import { simulateBending } from '../../src/simulate/index.js';
import { renderHtml, summarise } from '../../src/report/index.js';
import { command } from '../support/command.js';
import { caseT1, COMPLIANCE, roundPiece } from '../support/records.js';

const rowsOf = (options: TensionOptions) => summarise(analyseTension(caseT1(801), roundPiece, options));
const marked = (options: TensionOptions) =>
  rowsOf(options)
    .filter(({ leftOut }) => leftOut !== undefined)
    .map(({ symbol }) => symbol);
const stated = { constant: COMPLIANCE, relativeStandardUncertainty: 0.03 };
const force = 0.005;

describe('u of slope and E takes the frame for exact', () => {
  test('where its compliance is a bare number: said beside them, and beside nothing else', () => {
    expect(marked({ frameCompliance: COMPLIANCE })).toEqual(['mE', 'E']);
    expect(marked({ frameCompliance: COMPLIANCE, uncertainty: { force } })).toEqual(['mE', 'E']);
  });

  test('not where its doubt was given, in either way, nor where none was taken out', () => {
    expect(marked({ frameCompliance: stated })).toEqual([]);
    expect(marked({ frameCompliance: COMPLIANCE, uncertainty: { force, frameCompliance: 0.03 } })).toEqual([]);
    expect(marked({})).toEqual([]);
  });

  test('by the frame alone: what indents at supports and noses is no frame', () => {
    const piece = { section: rectangular({ width: 20, thickness: 6 }), setup: { points: 3, span: 120 } } as const;
    const { record } = simulateBending({
      material: { modulus: 206_000, yieldStress: 400 },
      piece,
      frame: { compliance: 2e-5 },
      logger: { forceNoise: 2, motionNoise: 2e-4 },
      seed: 1,
    });
    const bent = (options: BendingOptions) =>
      summarise(analyseBending(record, piece, options)).some(({ leftOut }) => leftOut !== undefined);
    const indentation = { constant: 1e-7, relativeStandardUncertainty: 0.05 };
    expect(bent({ frameCompliance: 2e-5 })).toBe(true);
    expect(bent({ frameCompliance: 2e-5, indentationCompliance: indentation })).toBe(true);
    expect(bent({ indentationCompliance: 2e-5 })).toBe(false);
  });

  test('on the page and in the terminal', async () => {
    const words = 'u leaves out the frame: its compliance was given without an uncertainty';
    const page = (options: TensionOptions) => renderHtml(analyseTension(caseT1(801), roundPiece, options));
    expect(page({ frameCompliance: COMPLIANCE }).split(words)).toHaveLength(3);
    expect(page({ frameCompliance: stated })).not.toContain(words);
    const folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
    writeFileSync(join(folder, 'pull.csv'), exportCsv(caseT1(801)));
    const called = async (doubts: string) =>
      (await command('report', join(folder, 'pull.csv'), '--round', '8', '--gauge-length', '40', '--frame-compliance', String(COMPLIANCE), '--uncertainty', doubts, '--overwrite')).out; // prettier-ignore
    const bare = await called('force=0.5%');
    expect(bare).toMatch(/ E .* \(u = [\d.]+ †\)/);
    expect(bare).toContain(`  † ${words}\n`);
    expect(bare).not.toMatch(/ Rm .*†/);
    expect(await called('force=0.5%,frameCompliance=3%')).not.toContain('†');
  });
});

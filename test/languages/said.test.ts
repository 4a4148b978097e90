import { describe, expect, test } from 'vitest';
import { finding } from '../../src/base/index.js';
import { analyseTension, fromJson, round, toJson, whatIf, type WhatIfRow } from '../../src/index.js';
import { chinese, english, french, german, languages, sayFinding, sayStep, sayWhatIf } from '../../src/languages/index.js';
import { renderHtml } from '../../src/report/index.js';
import { caseT1, COMPLIANCE, roundPiece } from '../support/records.js';
import { refusal } from '../support/thrown.js';

const result = analyseTension(caseT1(701), roundPiece, { frameCompliance: COMPLIANCE });

describe('a finding', () => {
  const stopped = analyseTension(
    { force: [0, 1000, 2000, 3000, 3100], strain: [0, 0.001, 0.002, 0.003, 0.05], time: [0, 1, 2, 3, 40] },
    { section: round({ diameter: 8 }), gaugeLength: 40 },
  );
  const gap = finding('time-gap', { count: 1, longest: 37.5, first: 3, usual: 1 });

  test('is its sentence of the language, filled, with the decimal sign of the language', () => {
    expect(sayFinding(gap, { language: german }).message).toContain('37,5');
    expect(sayFinding(gap, { language: german }).message).not.toContain('{');
    expect(sayFinding(gap, { language: german }).remedy).toBe(german.findings['time-gap'].remedy);
    expect(sayFinding(gap, { language: chinese }).message).toContain('37.5');
  });

  test('in English, and without a language, is what the finding itself says', () => {
    for (const one of stopped.findings.filter(({ message }) => !/\d/.test(message))) {
      expect(sayFinding(one)).toEqual({ message: one.message, remedy: one.remedy });
      expect(sayFinding(one, { language: english })).toEqual(sayFinding(one));
    }
  });

  test('that was read from JSON, or made by a later version, is said as well', () => {
    const [read] = fromJson(toJson(stopped), 'tension').findings;
    expect(sayFinding(read!, { language: french })).toEqual(sayFinding(stopped.findings[0]!, { language: french }));
    const later = { ...gap, code: 'of-a-later-version' as never };
    expect(sayFinding(later, { language: french })).toEqual({ message: gap.message, remedy: gap.remedy });
  });
});

describe('what the page says is what these say', () => {
  test.each(languages.map((language) => [language.tag, language] as const))('%s', (_, language) => {
    const page = renderHtml(result, { language });
    const said = [
      ...result.findings.map((one) => sayFinding(one, { language }).message),
      ...result.trail.map((one) => sayStep(one, { language })),
      ...whatIf(result).map((one) => sayWhatIf(one, { language })),
    ];
    expect(said.length).toBeGreaterThan(15);
    // a page keeps a number and its unit on one line
    const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
    for (const one of said) expect(plain(page)).toContain(plain(one.replaceAll('&', '&amp;').replaceAll('<', '&lt;')));
  });
});

test('every kind of change has its words', () => {
  const row = (change: WhatIfRow['change'], symbol = 'mE'): WhatIfRow => ({
    change,
    values: [{ field: 'elasticSlope', symbol, value: 1, unit: 'MPa' }],
  });
  const said = (one: WhatIfRow): string => sayWhatIf(one).replaceAll('\u00a0', ' ');
  expect(said(row({ kind: 'offset', offset: 0.001 }, 'Rp0.1'))).toBe('offset 0.1 %: Rp0.1');
  expect(said(row({ kind: 'parallel-length', length: 48.25 }))).toBe('travel counted over L0 = 48.25 mm');
  expect(said(row({ kind: 'effective-length', length: 48 }))).toBe('no share of the fillets taken off');
  expect(said(row({ kind: 'frame-compliance', factor: 0 }))).toBe('no compliance of the frame taken out');
  expect(said(row({ kind: 'frame-compliance', factor: 1.1 }))).toBe('compliance of the frame × 1.1');
  expect(said(row({ kind: 'window', window: { by: 'samples', first: 3, last: 9 } }))).toBe('window: runner-up, samples 3 to 9');
  expect(said(row({ kind: 'window', window: { by: 'stress', from: 30, to: 120 }, shares: [0.1, 0.4], of: 'ReH' }))).toBe(
    'window: 10 % to 40 % of ReH',
  );
  expect(said(row({ kind: 'window', window: { by: 'relative-error' } }))).toBe('window: least relative standard error');
  expect(said(row({ kind: 'window', window: { by: 'lower-bound' } }))).toBe('window: highest slope less its standard errors');
});

describe('refusals', () => {
  const [one, step, row] = [result.findings[0]!, result.trail[0]!, whatIf(result)[0]!];
  test.each<[string, () => unknown]>([
    ['missing finding', () => sayFinding(undefined as never)],
    ['missing finding.values', () => sayFinding({ ...one, values: undefined as never })],
    ['wrong-type finding.code', () => sayFinding({ ...one, code: 5 as never })],
    ['wrong-type options.language', () => sayFinding(one, { language: 'de' as never })],
    ['unknown-option options.tag', () => sayFinding(one, { tag: 'de' } as never)],
    ['missing step.step', () => sayStep({ ...step, step: undefined as never })],
    ['out-of-range row.change.kind', () => sayWhatIf({ ...row, change: { kind: 'speed' } as never })],
    ['missing row.change.window', () => sayWhatIf({ ...row, change: { kind: 'window' } as never })],
    ['missing row.values', () => sayWhatIf({ change: row.change } as never)],
    ['missing row.change.offset', () => sayWhatIf({ ...row, change: { kind: 'offset' } as never })],
    ['wrong-type row.change.offset', () => sayWhatIf({ ...row, change: { kind: 'offset', offset: '0.1 %' } as never })],
    ['missing row.change.factor', () => sayWhatIf({ ...row, change: { kind: 'frame-compliance' } as never })],
    ['missing row.change.length', () => sayWhatIf({ ...row, change: { kind: 'parallel-length' } as never })],
    ['out-of-range row.change.window.by', () => sayWhatIf({ ...row, change: { kind: 'window', window: {} } as never })],
    [
      'missing row.change.window.last',
      () => sayWhatIf({ ...row, change: { kind: 'window', window: { by: 'samples', first: 1 } } as never }),
    ],
    ['missing row.change.shares', () => sayWhatIf({ ...row, change: { kind: 'window', window: { by: 'stress', from: 1, to: 2 } } })],
    [
      'missing row.change.of',
      () => sayWhatIf({ ...row, change: { kind: 'window', window: { by: 'stress', from: 1, to: 2 }, shares: [0.1, 0.4] } }),
    ],
    ['missing row.values[0].symbol', () => sayWhatIf({ ...row, values: [{ value: 1 }] } as never)],
  ])('%s', (expected, call) => {
    expect(refusal(call)).toBe(expected);
  });
});

import { describe, expect, test } from 'vitest';
import { analyseTension, readChunks, readRecord, round, splitTests } from '../../src/index.js';

/** A pull that hardens to 300 MPa on a bar of 8 mm and does not break: time, extension, force, written with fixed decimals or as numbers are. */
const rows = (count: number, fixed = true): string[] =>
  Array.from({ length: count }, (_, i) => {
    const stress = 300 * Math.sin((Math.PI / 2) * (i / count));
    const extension = (stress / 70_000 + 0.002 * (stress / 250) ** 15) * 40;
    const force = stress * Math.PI * 16;
    return fixed
      ? `${(i / 10).toFixed(2)},${extension.toFixed(6)},${force.toFixed(3)}`
      : `${i / 10},${String(extension)},${String(Math.round(force))}`;
  });
const head = 'Time [s],Extension [mm],Force [N]';
const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const codes = (findings: readonly { readonly code: string }[]): string[] => findings.map(({ code }) => code);

describe('a file that was cut within its last line', () => {
  const whole = [head, ...rows(400)].join('\n');

  test('is sound without its last line end, wherever the last number ends', () => {
    for (const end of ['', '\n', '\r\n', ' ']) {
      const { findings, reading } = readRecord(whole + end);
      expect(findings).toEqual([]);
      expect(reading.leftOut).toEqual([]);
      expect(reading.rows).toBe(400);
    }
  });

  // within the decimals, at the sign, within the digits, in the column before
  test.each([1, 3, 4, 5, 7, 9, 10, 12])('%i characters short: the line is left out, and the finding says so', (short) => {
    const { record, findings, reading } = readRecord(whole.slice(0, -short));
    expect(record.time!.length).toBe(399);
    expect(codes(findings)).toEqual(['file-cut-off']);
    expect(findings[0]!.values['line']).toBe(401);
    expect(reading.leftOut).toHaveLength(1);
  });

  test('whole numbers: digits that could go on are the beginning of a reading, a residual force is none', () => {
    const whole = [head, ...rows(400, false)].join('\n');
    const at = (last: string) => codes(readRecord(`${whole}\n40.1,3.4,${last}`).findings);
    expect(at('150')).toEqual(['file-cut-off']); // of 15079
    expect(at('1')).toEqual(['file-cut-off']);
    for (const sound of ['15079', '37', '0', '-12', '9', '2200']) expect(at(sound)).toEqual([]);
    expect(codes(readRecord(`${whole}\n40.1,3.4,150\n`).findings)).toEqual([]); // a line end closes it
  });

  test('does not break the piece, and the result says that it was cut', () => {
    const { record, findings } = readRecord(whole.slice(0, -5));
    if (!('force' in record)) throw new Error('no force');
    const result = analyseTension(record, piece, { test: { findings } });
    expect(result.totalExtensionAtFracture).toBeUndefined();
    expect(codes(result.findings)).toContain('file-cut-off');
  });

  test('in pieces as at once', async () => {
    const short = whole.slice(0, -5);
    const pieces = Array.from({ length: Math.ceil(short.length / 7) }, (_, k) => short.slice(7 * k, 7 * k + 7));
    expect((await readChunks(pieces)).findings).toEqual(readRecord(short).findings);
  });
});

describe('two tests in one file', () => {
  const one = rows(300);

  test('a clock that starts anew parts them, with the names of the columns between them or without', () => {
    for (const between of [[head], []]) {
      const { record, reading } = readRecord([head, ...one, ...between, ...one].join('\n'));
      if (!('force' in record)) throw new Error('no force');
      expect(reading.headings).toEqual(between.length > 0 ? [300] : []);
      const parts = splitTests(record);
      expect(parts.map(({ record: part }) => part.force.length)).toEqual([300, 300]);
      expect(parts[1]!.record.force).toEqual(parts[0]!.record.force);
      const { findings } = analyseTension(record, piece);
      expect(findings.find(({ code }) => code === 'several-tests')).toMatchObject({ severity: 'fault', values: { count: 2, second: 300 } });
    }
  });

  test('without a clock the names of the columns part them, and the reading says so', () => {
    const untimed = [head, ...one, head, ...one].map((line) => line.slice(line.indexOf(',') + 1)).join('\n');
    const { record, reading, findings } = readRecord(untimed);
    if (!('force' in record)) throw new Error('no force');
    expect(codes(findings)).toEqual(['several-tests']);
    expect(splitTests(record)).toHaveLength(1);
    expect(splitTests(record, reading.headings)).toHaveLength(2);
    expect(codes(analyseTension(record, piece, { test: { findings } }).findings)).toContain('several-tests');
  });

  test('names on every page of a printout, and a clock set anew under load, part nothing', () => {
    const pages = [head, ...one.flatMap((row, i) => (i % 50 === 49 ? [row, head] : [row]))].join('\n');
    expect(readRecord(pages).findings).toEqual([]);
    const { record } = readRecord(
      [head, ...one.slice(0, 200), ...one.slice(200).map((row, i) => row.replace(/^[^,]*/, String(i / 10)))].join('\n'),
    );
    if (!('force' in record)) throw new Error('no force');
    expect(splitTests(record)).toHaveLength(1);
  });
});

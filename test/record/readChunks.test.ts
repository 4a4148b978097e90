import fc from 'fast-check';
import { createReadStream, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { isInputError, readChunks, readRecord } from '../../src/index.js';
import { encoded } from '../support/encoded.js';

const body = Array.from({ length: 900 }, (_, i) => `${i},25;"${i},5";1.234,5;Ende §`).join('\r\n');
const files: Readonly<Record<string, Uint8Array>> = {
  'UTF-8 with mark': encoded(`Prüfung: Ä\r\nZeit;Kraft;Weg;Nöte\r\ns;kN;µm;\r\n${body}\r\nSchluß;;;`, 'utf-8', true),
  'UTF-16': encoded(`Prüfung: Ä\r\nZeit;Kraft;Weg;Nöte\r\ns;kN;µm;\r\n${body}\r\n`, 'utf-16le', true),
  'Latin-1 with carriage returns': encoded(`Prüfung: Ä\rZeit;Kraft;Weg;Note\rs;kN;µm;\r${body.replaceAll('\r\n', '\r')}`, 'windows-1252'),
  'plain names, odd letters below': encoded(`t s;F N;x mm\n${'1;2;3\n'.repeat(700)}Prüfung;beendet;\n4;5;6\n`, 'windows-1252'),
  'a handful of rows': encoded('t s;F N;x mm\n1;2;3\n2;3;4', 'utf-8'),
};
function* pieces<T extends { slice(from: number, to: number): T; length: number }>(file: T, cuts: readonly number[]): Generator<T> {
  let from = 0;
  for (const cut of [...cuts].sort((a, b) => a - b)) {
    yield file.slice(from, Math.min(cut, file.length));
    from = Math.min(cut, file.length);
  }
  yield file.slice(from, file.length);
}
const code = (error: unknown): string => (isInputError(error) ? `${error.code} ${error.path}` : String(error));
const outcome = (result: Promise<unknown>): Promise<unknown> => result.catch(code);

describe('pieces give the same as the whole, to the last bit', () => {
  test.each(Object.entries(files))('%s', async (_, file) => {
    const whole = readRecord(file);
    await fc.assert(
      fc.asyncProperty(fc.array(fc.integer({ min: 0, max: file.length }), { maxLength: 12 }), async (cuts) => {
        expect(await readChunks(pieces(file, cuts))).toEqual(whole);
      }),
      { numRuns: 40 },
    );
    for (const size of [1, 2, 3, 4096])
      expect(
        await readChunks(
          pieces(
            file,
            Array.from({ length: Math.floor(file.length / size) }, (_, k) => (k + 1) * size),
          ),
        ),
      ).toEqual(whole);
  });

  test('text, cut within a character of two code units', async () => {
    const text = `𝑡 test\nt s;F N;x mm;𝑡\n${'1;2;3;𝑡\n'.repeat(50)}𝑡;;;`;
    const whole = readRecord(text);
    expect(Object.keys(whole.metadata)).toEqual(['line 1']);
    expect(whole.metadata['line 1']!.value).toBe('𝑡 test');
    for (let cut = 0; cut < text.length; cut += 1) expect(await readChunks(pieces(text, [cut]))).toEqual(whole);
  });

  test('a stream of a file; a piece that is written over after it was taken', async () => {
    const path = new URL('../handbook/open-data/s355-zx2.csv', import.meta.url);
    const whole = readRecord(readFileSync(path));
    expect(await readChunks(createReadStream(path, { highWaterMark: 777 }))).toEqual(whole);
    const file = new Uint8Array(readFileSync(path));
    async function* reused(): AsyncGenerator<Uint8Array> {
      const buffer = new Uint8Array(1000);
      for (let at = 0; at < file.length; at += 1000) {
        buffer.set(file.subarray(at, at + 1000));
        yield await Promise.resolve(buffer.subarray(0, Math.min(1000, file.length - at)));
        buffer.fill(35);
      }
    }
    expect(await readChunks(reused())).toEqual(whole);
  });

  test('errors are the same too', async () => {
    for (const text of ['', '  \n', 'no numbers here\n', 'F N;x mm\n1,234;5,678\n2,345;6,789\n', `t s;F N\n${'1;2\n'.repeat(20)}`]) {
      const expected = (() => {
        try {
          return readRecord(text);
        } catch (error) {
          return code(error);
        }
      })();
      expect(await outcome(readChunks(pieces(text, [3, 9])))).toBe(expected);
      expect(await outcome(readChunks(pieces(new TextEncoder().encode(text), [3, 9])))).toBe(expected);
    }
  });
});

test('what is no row of pieces', async () => {
  const refused = (chunks: unknown, options = {}): Promise<unknown> => outcome(readChunks(chunks as never, options));
  expect(await refused('text')).toBe('wrong-type chunks');
  expect(await refused(new Uint8Array(3))).toBe('wrong-type chunks');
  expect(await refused([1])).toBe('wrong-type chunks[0]');
  expect(await refused(['a', new Uint8Array(1)])).toBe('wrong-type chunks[1]');
  expect(await refused([])).toBe('empty file');
  expect(await refused([], { sep: 1 })).toBe('unknown-option options.sep');
  expect(await refused([new Uint8Array(5000)])).toBe('not-text file');
});

test('memory: of a long file nothing is kept but the numbers', async () => {
  const line = `${'1;2.5;3;'.padEnd(2000, 'x')}\n`;
  const piece = new TextEncoder().encode(line.repeat(50));
  let held = 0;
  function* long(): Generator<Uint8Array> {
    yield new TextEncoder().encode('t s;F N;x mm;note\n');
    const before = process.memoryUsage().arrayBuffers;
    for (let k = 0; k < 1000; k += 1) {
      yield piece;
      held = Math.max(held, process.memoryUsage().arrayBuffers - before);
    }
  }
  const { reading } = await readChunks(long());
  expect(reading.rows).toBe(50_000);
  expect(held).toBeLessThan(0.3 * 1000 * piece.length);
});

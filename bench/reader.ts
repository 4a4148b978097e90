/**
 * `npm run bench:reader`: readRecord on a million rows of three columns, against general-purpose libraries that read delimited text in the
 * same run, and the memory it takes. Each library does what it needs to give three columns of numbers.
 */
import { parse as csvParse } from 'csv-parse/sync';
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inferSchema, initParser } from 'udsv';
import { readRecord, type TensionRecord } from '../src/index.js';

interface Papa {
  parse(text: string, options: { delimiter: string; skipEmptyLines: boolean; step?: (row: { data: string[] }) => void }): unknown;
}
const Papa = createRequire(import.meta.url)('papaparse') as Papa;

const ROWS = 1_000_000;
const TIMES = 5;
const HEAD = 2;
const STATUS = '/proc/self/status';

/** A file as a logger writes it: time, force, travel; invented. */
function written(separator: string, decimal: string): string {
  const lines = [['Zeit', 'Kraft', 'Verschiebung über alles'].join(separator), ['s', 'kN', 'µm'].join(separator)];
  for (let i = 0; i < ROWS; i += 1)
    lines.push(
      [(i / 1000).toFixed(3), (40 * Math.sin(i / 400_000)).toFixed(5), (i * 0.0123).toFixed(4)]
        .map((cell) => cell.replace('.', decimal))
        .join(separator),
    );
  return `${lines.join('\n')}\n`;
}

const latin1 = (text: string): Uint8Array => Uint8Array.from(Buffer.from(text, 'latin1'));
const columnsOf = (): Float64Array[] => Array.from({ length: 3 }, () => new Float64Array(ROWS));
const numberOf = (cell: string, decimal: string): number => Number(decimal === ',' ? cell.replace(',', '.') : cell);

/** Rows of text cells as columns of numbers. */
function filled(rows: readonly (readonly string[])[], decimal: string, from: number): Float64Array[] {
  const columns = columnsOf();
  for (let i = 0; i < ROWS; i += 1) for (let k = 0; k < 3; k += 1) columns[k]![i] = numberOf(rows[i + from]![k]!, decimal);
  return columns;
}

type Read = (bytes: Uint8Array, encoding: string, separator: string, decimal: string) => readonly Float64Array[];
const readers: Readonly<Record<string, Read>> = {
  readRecord: (bytes) => {
    const { force, travel, time } = readRecord(bytes).record as TensionRecord;
    return [time!, force, travel!];
  },
  udsv: (bytes, encoding, separator, decimal) => {
    const text = new TextDecoder(encoding).decode(bytes);
    const schema = inferSchema(text, { col: separator, header: () => [['a', 'b', 'c'], null] });
    const parser = initParser(schema);
    if (decimal === '.') return parser.typedCols<number[][]>(text).map((column) => Float64Array.from(column));
    return parser.stringCols(text).map((column) => Float64Array.from(column, (cell) => numberOf(cell, decimal)));
  },
  'papaparse, row by row': (bytes, encoding, separator, decimal) => {
    const columns = columnsOf();
    let at = -HEAD;
    Papa.parse(new TextDecoder(encoding).decode(bytes), {
      delimiter: separator,
      skipEmptyLines: true,
      step: ({ data }) => {
        if (at >= 0) for (let k = 0; k < 3; k += 1) columns[k]![at] = numberOf(data[k]!, decimal);
        at += 1;
      },
    });
    return columns;
  },
  'csv-parse': (bytes, encoding, separator, decimal) =>
    filled(csvParse(new TextDecoder(encoding).decode(bytes), { delimiter: separator }), decimal, HEAD),
};

/** Least processor time of a call [ms], threads of garbage collection included: what else the machine is busy with counts little. */
function time(call: () => unknown): number {
  call();
  const taken = Array.from({ length: TIMES }, () => {
    const start = process.cpuUsage();
    call();
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  });
  return Math.min(...taken);
}

function compare(): void {
  const files = [
    { what: 'comma, decimal point, UTF-8', separator: ',', decimal: '.', encoding: 'utf-8' },
    { what: 'semicolon, decimal comma, Latin-1', separator: ';', decimal: ',', encoding: 'windows-1252' },
  ] as const;
  console.log('| file | reader | ms | MB/s |\n| --- | --- | --- | --- |');
  for (const { what, separator, decimal, encoding } of files) {
    const text = written(separator, decimal);
    const bytes = encoding === 'utf-8' ? new TextEncoder().encode(text) : latin1(text);
    const expected = readers['readRecord']!(bytes, encoding, separator, decimal);
    const factors = [1, 1000, 0.001];
    for (const [name, read] of Object.entries(readers)) {
      const own = name === 'readRecord';
      const found = read(bytes, encoding, separator, decimal);
      for (let k = 0; k < 3; k += 1)
        for (let i = 0; i < ROWS; i += 997)
          if (found[k]![i]! * (own ? 1 : factors[k]!) !== expected[k]![i]!)
            throw new Error(`${name} reads row ${i}, column ${k} as ${found[k]![i]!}`);
      const ms = time(() => read(bytes, encoding, separator, decimal));
      console.log(`| ${what} | ${name} | ${ms.toFixed(0)} | ${(bytes.length / 1e3 / ms).toFixed(0)} |`);
    }
  }
}

function peak(): void {
  // in a process of its own, so that nothing else is counted
  const folder = mkdtempSync(join(tmpdir(), 'reader-'));
  try {
    const file = join(folder, 'record.csv');
    const written1 = latin1(written(';', ','));
    writeFileSync(file, written1);
    const { stdout, stderr, status } = spawnSync(process.execPath, [process.argv[1]!, '--memory', file], { encoding: 'utf8' });
    if (status !== 0) throw new Error(stderr);
    console.log(`\nMemory at its peak, file and columns included: ${(Number(stdout) / written1.length).toFixed(2)} times the file.`);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Peak of memory above what the process had before it read the file [bytes]; small files come first, so that the code is there. */
function ownMemory(file: string): void {
  for (let k = 0; k < 3; k += 1) readRecord(`t s;F kN;x mm\n${'1;2;3\n'.repeat(20_000)}`, { decimal: ',' });
  const before = process.memoryUsage().rss;
  const { reading } = readRecord(readFileSync(file));
  if (reading.rows !== ROWS) throw new Error(`${reading.rows} rows`);
  // what the kernel counted for this process alone; the general figure may be that of the process that started it
  const most = /VmHWM:\s+(\d+)/.exec(existsSync(STATUS) ? readFileSync(STATUS, 'utf8') : '')?.[1];
  process.stdout.write(String((most === undefined ? process.resourceUsage().maxRSS : Number(most)) * 1024 - before));
}

if (process.argv[2] === '--memory') ownMemory(process.argv[3]!);
else {
  compare();
  peak();
}

import { analyseTension, isInputError, pressureToForce, readRecord, round } from '../../src/index.js';
import { simulateTension, writeRecord } from '../../src/simulate/index.js';
import { encoded } from './encoded.js';
import { seeded } from './random.js';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };

/** Valid files of several loggers, from one simulated test (invented). */
function originals(): Uint8Array[] {
  const { record, pressureRecord } = simulateTension({
    material: {
      modulus: 206_000,
      yieldStress: 285,
      hardening: { law: 'swift', prestrain: 0.03, exponent: 0.22 },
      fracture: { extension: 0.25 },
    },
    piece,
    frame: { bore: 40, rod: 20, compliance: 2e-5, slack: 0.2 },
    logger: { rate: 4, lead: 1, tail: 1 },
    hand: { speed: 0.2 },
  });
  const german = writeRecord(record, {
    preamble: ['Prüfung;A 7', 'Länge;40;mm'],
    columns: [
      { quantity: 'time', name: 'Zeit', unit: 's', decimals: 2 },
      { quantity: 'force', name: 'Kraft', unit: 'kN', decimals: 4 },
      { quantity: 'travel', name: 'Traversenweg', unit: 'mm', decimals: 4 },
    ],
  });
  const english = writeRecord(record, {
    separator: ',',
    decimal: '.',
    columns: [
      { quantity: 'travel', name: 'Crosshead [µm]', unit: 'µm', decimals: 1 },
      { quantity: 'force', name: 'Load [lbf]', unit: 'lbf', decimals: 2 },
    ],
  }).replace('µm,lbf\n', '');
  const oil = writeRecord(pressureRecord ?? record, {
    separator: '\t',
    columns: [
      { quantity: 'pressure', name: 'Oldruck', unit: 'bar', decimals: 3 },
      { quantity: 'travel', name: 'Weg', unit: 'mm', decimals: 4 },
      { quantity: 'time', name: 'Zeit', unit: 'ms', decimals: 0 },
    ],
  });
  const lines = german.trimEnd().split('\n');
  const quoted = lines
    .map((line) =>
      line
        .split(';')
        .map((cell) => `"${cell}"`)
        .join(';'),
    )
    .join('\r\n');
  const spaced = lines
    .slice(4)
    .map((line) => line.replaceAll(';', '  '))
    .join('\n');
  const clock = lines
    .map((line, i) => (i < 4 ? line : line.replace(/^(\d+),(\d+)/, (_, s, f) => `23:59:${String(Number(s) % 60).padStart(2, '0')}.${f}`)))
    .join('\n');
  return [
    encoded(german, 'utf-8', true),
    encoded(german, 'windows-1252'),
    encoded(german, 'utf-16le', true),
    encoded(english, 'utf-8'),
    encoded(oil, 'utf-16be'),
    encoded(quoted, 'utf-8'),
    encoded(`Time[s] Force[kN] Travel[mm]\n${spaced}`, 'utf-8'),
    encoded(clock, 'utf-8'),
  ];
}

const odd = [
  '1e999',
  '-1e308',
  '9'.repeat(400),
  '\0',
  '"',
  '""',
  ';;;;',
  '=1+1',
  'NaN',
  '1,234',
  '1.234.567',
  '03.Feb',
  '#N/A',
  '\r',
  '\ufeff',
  '𝑡',
  '-',
  '12:00',
  '0x10',
  '1e-400',
  ' ',
];

/** A file with some things done to it that happen to files, and some that only an enemy does. */
function mutant(file: Uint8Array, { uniform }: ReturnType<typeof seeded>): Uint8Array {
  const at = (n: number): number => Math.floor(uniform() * n);
  let bytes = Uint8Array.from(file);
  const splice = (from: number, to: number, between: Uint8Array): void => {
    const joined = new Uint8Array(from + between.length + bytes.length - to);
    joined.set(bytes.subarray(0, from));
    joined.set(between, from);
    joined.set(bytes.subarray(to), from + between.length);
    bytes = joined;
  };
  const lineAt = (from: number): [number, number] => {
    const start = from === 0 ? 0 : bytes.lastIndexOf(10, from - 1) + 1;
    const end = bytes.indexOf(10, from);
    return [start, end < 0 ? bytes.length : end + 1];
  };
  const swap = (one: number, other: number): void => {
    bytes = bytes.map((byte) => (byte === one ? other : byte === other ? one : byte));
  };
  const changes: readonly (() => void)[] = [
    () => {
      for (let k = at(20); k >= 0; k -= 1) if (bytes.length > 0) bytes[at(bytes.length)]! ^= 1 << at(8);
    },
    () => (bytes = bytes.slice(0, at(bytes.length + 1))),
    () => (bytes = bytes.slice(at(bytes.length + 1))),
    () => {
      const [start, end] = lineAt(at(bytes.length));
      splice(end, end, bytes.slice(start, end));
    },
    () => {
      splice(...lineAt(at(bytes.length)), new Uint8Array(0));
    },
    () => {
      const place = at(bytes.length + 1);
      splice(place, place, new TextEncoder().encode(odd[at(odd.length)]));
    },
    () => {
      const [start, end] = lineAt(at(bytes.length));
      splice(start, end, new TextEncoder().encode(`${Array.from({ length: at(5) }, () => odd[at(odd.length)]).join(';')}\n`));
    },
    () => {
      const marks = [59, 44, 46, 9, 32, 10, 13, 34, 48, 45, 101];
      swap(marks[at(marks.length)]!, marks[at(marks.length)]!);
    },
    () => {
      const place = at(bytes.length);
      bytes.fill(at(256), place, place + at(50));
    },
    () => {
      const other = at(bytes.length);
      splice(other, Math.min(bytes.length, other + at(2000)), bytes.slice(at(bytes.length)).slice(0, at(3000)));
    },
  ];
  for (let k = at(4); k >= 0; k -= 1) changes[at(changes.length)]!();
  return bytes;
}

/** Where a value that is not finite stands in a result; undefined where every number is. */
function unsound(value: unknown, path = ''): string | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : path;
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return undefined;
  for (const [name, one] of Object.entries(value)) {
    const found = unsound(one, `${path}.${name}`);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** What became of mutants. */
export interface Fuzzed {
  readonly read: number;
  readonly analysed: number;
  readonly refused: number;
  /** The slowest file [ms], and which. */
  readonly slowest: number;
  readonly slowestAt: number;
  /** Files that ended in another way, with their number and the reason. */
  readonly wrong: readonly string[];
}

/** Puts mutants with the numbers from `first` on through reading and analysis. */
export function fuzz(count: number, first = 0): Fuzzed {
  const files = originals();
  let [read, analysed, refused, slowest, slowestAt] = [0, 0, 0, 0, 0];
  const wrong: string[] = [];
  for (let number = first; number < first + count; number += 1) {
    const file = mutant(files[number % files.length]!, seeded(number + 1));
    const start = performance.now();
    try {
      const { record, reading } = readRecord(file, number % 3 === 0 ? { leaveOutHoles: true } : {});
      read += 1;
      for (const [name, column] of Object.entries(record as unknown as Record<string, Float64Array>)) {
        let end = column.length;
        if (/extension|strain/i.test(name)) while (end > 0 && Number.isNaN(column[end - 1])) end -= 1;
        if (column.length !== reading.rows || !column.subarray(0, end).every(Number.isFinite))
          wrong.push(`${number}: ${name} holds a hole`);
      }
      const result = analyseTension('pressure' in record ? pressureToForce(record, { bore: 40, rod: 20 }) : record, piece);
      analysed += 1;
      const path = unsound(result);
      if (path !== undefined) wrong.push(`${number}: ${path} is not finite`);
    } catch (error) {
      // whoever calls a function is refused by that function
      if (isInputError(error) && /^(readRecord|pressureToForce|analyseTension)\b/.test(error.message)) refused += 1;
      else
        wrong.push(
          `${number}: ${error instanceof Error ? (error.stack ?? error.message).split('\n').slice(0, 3).join(' ') : String(error)}`,
        );
    }
    const taken = performance.now() - start;
    if (taken > slowest) [slowest, slowestAt] = [taken, number];
  }
  return { read, analysed, refused, slowest, slowestAt, wrong };
}

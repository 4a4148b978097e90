import type { TestResult } from './TestResult.js';

/** What was not the same in two results. */
export interface InputDifference {
  /** What it belongs to. */
  readonly of: 'record' | 'piece' | 'options' | 'version';
  /** Its name there: an option, a field of the piece, `hash`, `version`. */
  readonly name: string;
  /** What the first result holds, as JSON; absent where it holds nothing. */
  readonly first?: string | undefined;
  /** What the second result holds, as JSON; absent where it holds nothing. */
  readonly second?: string | undefined;
}

/** Fields that hold the piece and its set-up, of every method. */
const pieceFields = ['testPiece', 'piece', 'sheet', 'ballDiameter', 'dieDiameter'];

/** JSON with sorted names, so that the order in which options were written does not count. */
const plain = (value: unknown): string | undefined =>
  value === undefined
    ? undefined
    : JSON.stringify(value, (_, one: unknown) =>
        ArrayBuffer.isView(one)
          ? Array.from(one as Float64Array)
          : typeof one === 'object' && one !== null && !Array.isArray(one)
            ? Object.fromEntries(Object.entries(one).sort(([a], [b]) => (a < b ? -1 : 1)))
            : one,
      );

/** What the piece consists of, one level deep. */
function pieceOf(result: object): Record<string, unknown> {
  const held = Object.entries(result).filter(([name]) => pieceFields.includes(name));
  return Object.assign(
    {},
    ...held.map(([name, one]) => (typeof one === 'object' ? (one as object) : { [name]: one as unknown })),
  ) as Record<string, unknown>;
}

function unlike(
  of: InputDifference['of'],
  first: Readonly<Record<string, unknown>>,
  second: Readonly<Record<string, unknown>>,
): InputDifference[] {
  return [...new Set([...Object.keys(first), ...Object.keys(second)])].flatMap((name) => {
    const [a, b] = [plain(first[name]), plain(second[name])];
    return a === b ? [] : [{ of, name, ...(a === undefined ? {} : { first: a }), ...(b === undefined ? {} : { second: b }) }];
  });
}

/** Who tested what moves no number. */
const asked = ({ provenance }: TestResult): Record<string, unknown> =>
  Object.fromEntries(Object.entries(provenance.options).filter(([name]) => name !== 'test'));

/** @internal Record, piece, options and version of two results, as far as they differ. */
export function comparedInputs(first: TestResult, second: TestResult): InputDifference[] {
  return [
    ...unlike('record', { hash: first.provenance.hash }, { hash: second.provenance.hash }),
    ...unlike('piece', pieceOf(first), pieceOf(second)),
    ...unlike('options', asked(first), asked(second)),
    ...unlike('version', { version: first.provenance.version }, { version: second.provenance.version }),
  ];
}

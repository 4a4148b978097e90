import { basename, dirname, extname, join, resolve } from 'node:path';
import type { TestInfo, TestResult } from '../methods/index.js';
import type { ForceFlags } from './calibrationFlags.js';
import { eachFile } from './eachFile.js';
import { filesOf, recordEndings } from './filesOf.js';
import { asJson } from './jobFlags.js';
import { withFindings, type Read } from './recordFlags.js';
import { STATUS, type Session } from './session.js';
import type { TestFlags } from './testFlags.js';
import { usage } from './usage.js';
import { writeReport } from './writeReport.js';

/** Where the report of a file goes, without its ending. */
export const stemOf = (file: string, output: string | undefined): string => join(output ?? dirname(file), basename(file, extname(file)));

/** Two files must not write the same report. */
function requireApart(files: readonly string[], output: string | undefined): void {
  const taken = new Map<string, string>();
  for (const file of files) {
    const path = resolve(stemOf(file, output));
    // there, names that differ in capitals are one
    const place = process.platform === 'win32' ? path.toLowerCase() : path;
    const other = taken.get(place);
    if (other !== undefined) throw usage(`${file} and ${other} would have the same report; evaluate them one by one`);
    taken.set(place, file);
  }
}

/** What is of one piece must not be given for several: readings of the broken piece, its name. */
function requireOnePiece(flags: TestFlags, names: readonly string[]): void {
  for (const name of ['identity', ...names]) {
    const value = (flags as unknown as Readonly<Record<string, unknown>>)[name];
    const flag = `--${name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
    if (value !== undefined) throw usage(`${flag} must not be given for several files: it belongs to one piece`);
  }
}

/** A report of each file: table, page and data; `ofOnePiece` are the flags that belong to one piece. */
export async function reportEach<Columns>(
  session: Session,
  given: readonly string[],
  flags: TestFlags & ForceFlags,
  ofOnePiece: readonly string[],
  read: (file: string) => Promise<Read<Columns>>,
  evaluate: (record: Columns, test: TestInfo) => TestResult,
): Promise<void> {
  const { files, many } = await filesOf(session, given, recordEndings);
  if (files.length > 1) requireOnePiece(flags, ofOnePiece);
  requireApart(files, flags.output);
  const done = await eachFile(
    session,
    flags,
    files,
    (file) =>
      writeReport(stemOf(file, flags.output), file, flags, async (test) => {
        const { record, findings } = await read(file);
        return evaluate(record, withFindings(test, findings));
      }),
    ({ text, findings }, file) => {
      if (flags.json !== true) session.out(many ? `${file}\n${text}\n` : text);
      session.judge(findings, flags.failOn);
    },
  );
  if (flags.json === true)
    session.out(
      asJson(
        done.map(({ given: { result } }) => result),
        many,
      ),
    );
}

/**
 * One report of several records, such as of three blanks; every file must be read, or nothing is evaluated. Without files the report has the
 * name of the piece, or of the method.
 */
export async function reportTogether<Columns>(
  session: Session,
  method: string,
  given: readonly string[],
  flags: TestFlags & ForceFlags,
  read: (file: string) => Promise<Read<Columns>>,
  evaluate: (records: readonly Columns[], test: TestInfo) => TestResult,
): Promise<void> {
  const { files } = await filesOf(session, given, recordEndings);
  const parts = await eachFile(session, flags, files, read);
  if (session.status() !== STATUS.well) return;
  const name = files[0] ?? (flags.identity ?? method).replace(/[^\p{L}\p{N}._-]+/gu, '-');
  const stem = files[0] === undefined ? join(flags.output ?? '.', name) : stemOf(name, flags.output);
  const { result, text, findings } = await writeReport(stem, name, flags, (test) =>
    Promise.resolve(
      evaluate(
        parts.map(({ given: { record } }) => record),
        withFindings(
          test,
          parts.flatMap(({ given: { findings } }) => findings),
        ),
      ),
    ),
  );
  session.out(flags.json === true ? asJson([result], false) : text);
  session.judge(findings, flags.failOn);
}

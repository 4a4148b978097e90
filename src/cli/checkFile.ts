import type { Finding, TensionRecord, TestPiece, TrailStep } from '../base/index.js';
import { analyseTension, type TensionOptions } from '../methods/index.js';
import { checkRecord, repairRecord, type MetadataEntry, type Reading, type ReadResult } from '../record/index.js';
import { repairNames } from './repairFlags.js';

/** What one repair would do to a record. */
export interface PossibleRepair {
  /** Its name, as `--repair` takes it. */
  readonly repair: string;
  /** What it would do. */
  readonly steps: readonly Omit<TrailStep, 'change'>[];
}

/** What makes a tension test of a record. */
export interface WholeTest {
  readonly piece: TestPiece;
  readonly options: TensionOptions;
}

/** What is to be said of a file. */
export interface FileCheck {
  readonly file: string;
  /** Whether findings are of the record alone, of a record whose pressure stands for the force, or of the whole test. */
  readonly of: 'record' | 'pressure' | 'test';
  /** True where the file holds no motion, so that nothing that it would show was checked. */
  readonly withoutMotion?: true;
  readonly reading: Reading;
  readonly metadata: Readonly<Record<string, MetadataEntry>>;
  readonly findings: readonly Finding[];
  readonly repairs: readonly PossibleRepair[];
}

/** Pressure in place of the force, 1 MPa as 1 N: the checks of a record ask for shapes and shares, not for newtons. */
export const pressureAsForce = (record: ReadResult['record']): TensionRecord => {
  if ('force' in record) return record;
  const { pressure, ...others } = record;
  return { force: pressure, ...others };
};

/** Each repair by itself, as far as it would change anything. */
const repairsOf = (record: TensionRecord): PossibleRepair[] =>
  repairNames.flatMap((repair) => {
    const { trail } = repairRecord(record, { spikes: false, [repair]: true });
    return trail.length === 0 ? [] : [{ repair, steps: trail.map(({ code, step, values }) => ({ code, step, values })) }];
  });

/** Checks a record that was read; with a piece as the test that it is. */
export function checkFile(
  file: string,
  { reading, metadata, findings: ofFile }: ReadResult,
  record: TensionRecord,
  whole: WholeTest | 'record' | 'pressure',
): FileCheck {
  const test = typeof whole === 'object';
  const findings = [...ofFile, ...(test ? analyseTension(record, whole.piece, whole.options).findings : checkRecord(record))];
  return {
    file,
    of: test ? 'test' : whole,
    ...((record.extension ?? record.strain ?? record.travel) ? {} : { withoutMotion: true }),
    reading,
    metadata,
    findings,
    // a repair is of one test
    repairs: findings.some(({ code }) => code === 'several-tests') ? [] : repairsOf(record),
  };
}

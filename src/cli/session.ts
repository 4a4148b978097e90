import { isInputError, type Finding, type Severity } from '../base/index.js';
import { pathAsFlag } from './pathAsFlag.js';
import { plain } from './plain.js';
import { isUsage } from './usage.js';

/** Where the command writes. */
export interface Streams {
  /** Standard output. */
  readonly out: (text: string) => void;
  /** Standard error. */
  readonly error: (text: string) => void;
  /** True where standard error is a terminal: progress is shown there only. */
  readonly terminal?: boolean;
}

/** Exit status: all well, unexpected, wrong input or usage, findings that were asked for by `--fail-on`. */
export const STATUS = { well: 0, unexpected: 1, input: 2, findings: 3 } as const;
export type Status = (typeof STATUS)[keyof typeof STATUS];

/** The same for the help of every command. */
export const statusHelp = `
Exit status:
  0  all well
  1  unexpected: an error of the program, or a check value that fails
  2  wrong input or usage; of several files, those that could be read were evaluated
  3  a finding as severe as --fail-on asks for
  Of several the lowest above 0 counts.
`;

/** One call of the command: where it writes, and what is noted for its exit status. */
export interface Session extends Streams {
  /** Notes a status; of several the lowest above 0 counts. */
  readonly leave: (status: Status) => void;
  /** Says in one line what went wrong, of a file where it is named, and notes the status. */
  readonly problem: (reason: unknown, file?: string) => void;
  /** Notes whether findings are as severe as asked for. */
  readonly judge: (findings: readonly Finding[], failOn: FailOn | undefined) => void;
  /** What was noted. */
  readonly status: () => Status;
}

/** Severities on which a call can be made to fail, least first. */
export const failOn = ['caution', 'fault'] as const satisfies readonly Severity[];
export type FailOn = (typeof failOn)[number];

/** Text in one line, without what could drive a terminal. */
export const oneLine = (text: string): string => plain(text).replace(/\s+/g, ' ').trim();

/** What the system says of a file, as a user would. */
const systemRules: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'may not be read or written',
  EPERM: 'may not be read or written',
  EEXIST: 'is a file, not a folder',
  EISDIR: 'is a folder',
  ENOTDIR: 'a part of its path is no folder',
};

function sentence(reason: unknown, file: string | undefined, flags: ReadonlySet<string>): string {
  if (!(reason instanceof Error)) return String(reason);
  const { code, path } = reason as { code?: unknown; path?: unknown };
  const rule = !isInputError(reason) && typeof code === 'string' ? systemRules[code] : undefined;
  const place = typeof path === 'string' ? path.replace(/\.[\da-f-]{36}\.part$/, '') : file; // of a draft the name that it will have
  const said = isInputError(reason) ? pathAsFlag(reason.message, reason.path, flags) : reason.message;
  const text = rule === undefined ? said : place === undefined || place === file ? rule : `${place}: ${rule}`;
  return file === undefined ? text : `${file}: ${text}`;
}

/** Opens a call of the command, whose flags stand for fields of the library in what is said of a wrong one. */
export function openSession(streams: Streams, flags: ReadonlySet<string>): Session {
  let noted: Status = STATUS.well;
  const leave = (status: Status): void => {
    if (status !== STATUS.well && (noted === STATUS.well || status < noted)) noted = status;
  };
  return {
    ...streams,
    leave,
    problem: (reason, file) => {
      streams.error(`testpiece: ${oneLine(sentence(reason, file, flags))}\n`);
      const system = reason instanceof Error && 'code' in reason && 'path' in reason;
      leave(isInputError(reason) || isUsage(reason) || system ? STATUS.input : STATUS.unexpected);
    },
    judge: (findings, least) => {
      if (least === undefined) return;
      const counts = failOn.slice(failOn.indexOf(least)) as readonly Severity[];
      if (findings.some(({ severity }) => counts.includes(severity))) leave(STATUS.findings);
    },
    status: () => noted,
  };
}

import { english, wordsOf, type Phrase, type Words } from '../languages/index.js';
import type { PresentationOptions } from '../report/index.js';
import type { FileCheck } from './checkFile.js';
import { findingLines } from './findingLines.js';
import { plain } from './plain.js';

/** Rows left out that are named one by one. */
const NAMED = 5;

const signs: Readonly<Record<string, Phrase>> = { '\t': 'tab', ' ': 'space' };

/** A column by its place as `--column` takes it, from 1. */
const asPlace = (index: number): string => `#${index + 1}`;

function readingLines({ reading }: FileCheck, { say, term }: Words): string[] {
  const { columns, ignored, leftOut, rows, encoding, separator, decimal } = reading;
  const sign = separator === undefined ? undefined : signs[separator];
  const rest = leftOut.length - NAMED;
  return [
    separator === undefined
      ? say('{rows} rows of a spreadsheet', { rows })
      : say('{rows} rows; {encoding}, separator {separator}, decimal sign {decimal}', {
          rows,
          encoding: encoding ?? say('text'),
          separator: sign === undefined ? separator : say(sign),
          decimal,
        }),
    ...columns.map(({ quantity, name, index, unit, unitFrom }) =>
      say(name === '' ? '{quantity}: column {index} in {unit}' : '{quantity}: column {index} "{name}" in {unit}', {
        quantity: term(quantity),
        index: asPlace(index),
        name,
        unit: unitFrom === 'options' ? say('{unit} (as told)', { unit }) : unit,
      }),
    ),
    ...ignored.map(({ name, index, why }) =>
      say(name === '' ? 'not in use: column {index}, {why}' : 'not in use: column {index} "{name}", {why}', {
        index: asPlace(index),
        name,
        why: term(why.replace(/(?<=^it equals column )\d+/, (at) => asPlace(Number(at)))),
      }),
    ),
    ...leftOut.slice(0, NAMED).map(({ line, why }) => say('left out: line {line}, {why}', { line, why: term(why) })),
    ...(rest > 0 ? [say('left out: {count} more', { count: rest })] : []),
  ];
}

/** What is said of the extent of the findings. */
const extent: Readonly<Record<FileCheck['of'], Phrase>> = {
  record: 'Findings about the record',
  pressure: 'Findings about the record (pressure stands for the force, 1 MPa as 1 N: give --bore or --calibration)',
  test: 'Findings about the test',
};

/** What is said where the file holds no motion. */
const WITHOUT_MOTION: Phrase =
  'not checked: a file without extension, strain or travel does not show pauses, slips, jumps, unloadings, or a lag between its channels';

/** What is wrong with a file, as text for a terminal. */
export function checkTable(check: FileCheck, reader: PresentationOptions = {}): string {
  const words = wordsOf(reader.language ?? english);
  const { say } = words;
  const repairs = check.repairs.flatMap(({ repair, steps }) => steps.map((step) => `--repair ${repair}: ${words.step(step)}`));
  const part = (heading: Phrase, lines: readonly string[]): string[] => [`  ${say(heading)}`, ...lines.map((line) => `    ${line}`)];
  const all = [
    check.file,
    ...part('Reading', readingLines(check, words)),
    ...part(extent[check.of], [...findingLines(check.findings, reader), ...(check.withoutMotion ? [say(WITHOUT_MOTION)] : [])]),
    ...part('What repairs would have done (none was made)', repairs.length === 0 ? [say('none would change anything')] : repairs),
  ];
  return `${all.map(plain).join('\n')}\n`;
}

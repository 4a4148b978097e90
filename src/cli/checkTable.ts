import type { FileCheck } from './checkFile.js';
import { findingLines } from './findingLines.js';
import { plain } from './plain.js';

/** Rows left out that are named one by one. */
const NAMED = 5;

const signs: Readonly<Record<string, string>> = { '\t': 'tab', ' ': 'space' };

function readingLines({ reading }: FileCheck): string[] {
  const { columns, ignored, leftOut, rows, encoding, separator, decimal } = reading;
  const rest = leftOut.length - NAMED;
  return [
    `${rows} rows; ${separator === undefined ? 'spreadsheet' : `${encoding ?? 'text'}, separator ${signs[separator] ?? separator}, decimal sign ${decimal}`}`,
    ...columns.map(
      ({ quantity, name, index, unit, unitFrom }) =>
        `${quantity}: column ${index}${name === '' ? '' : ` "${name}"`} in ${unit}${unitFrom === 'options' ? ' (as told)' : ''}`,
    ),
    ...ignored.map(({ name, index, why }) => `not in use: column ${index}${name === '' ? '' : ` "${name}"`}, ${why}`),
    ...leftOut.slice(0, NAMED).map(({ line, why }) => `left out: line ${line}, ${why}`),
    ...(rest > 0 ? [`left out: ${rest} more`] : []),
  ];
}

/** What is said of the extent of the findings. */
const extent: Readonly<Record<FileCheck['of'], string>> = {
  record: 'Findings about the record',
  pressure: 'Findings about the record (pressure stands for the force, 1 MPa as 1 N: give --bore or --calibration)',
  test: 'Findings about the test',
};

/** What is said where the file holds no motion. */
const WITHOUT_MOTION =
  'not checked: a file without extension, strain or travel does not show pauses, slips, jumps, unloadings, or a lag between its channels';

/** What is wrong with a file, as text for a terminal. */
export function checkTable(check: FileCheck): string {
  const repairs = check.repairs.flatMap(({ repair, steps }) => steps.map(({ step }) => `--repair ${repair}: ${step}`));
  const part = (heading: string, lines: readonly string[]): string[] => [`  ${heading}`, ...lines.map((line) => `    ${line}`)];
  const all = [
    check.file,
    ...part('Reading', readingLines(check)),
    ...part(extent[check.of], [...findingLines(check.findings), ...(check.withoutMotion ? [WITHOUT_MOTION] : [])]),
    ...part('What repairs would have done (none was made)', repairs.length === 0 ? ['nothing'] : repairs),
  ];
  return `${all.map(plain).join('\n')}\n`;
}

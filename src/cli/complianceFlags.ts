import { Option, type Command } from 'commander';
import type { Compliance } from '../curve/index.js';
import { numberOption } from './flags.js';
import { givenJson } from './jsonFile.js';
import { textFile } from './textFile.js';
import { twoColumns } from './twoColumns.js';
import { usage } from './usage.js';

/** Flags of how much the frame gives way. */
export interface ComplianceFlags {
  readonly frameCompliance?: number;
  readonly frameTable?: string;
}

/** Compliance of the frame: a number, a table of its motion over the force, or what the command `compliance` found. */
export async function complianceOf(flags: ComplianceFlags): Promise<Compliance | undefined> {
  if (flags.frameTable === undefined) return flags.frameCompliance;
  const place = `--frame-table ${flags.frameTable}`;
  const text = await textFile(place, flags.frameTable);
  if (text.trimStart().startsWith('{')) {
    const { compliance } = givenJson(place, text) as { readonly compliance?: Compliance };
    if (typeof compliance === 'object') return compliance;
    throw usage(`${place} must be a table, or the JSON of testpiece compliance`);
  }
  const { columns } = await twoColumns('--frame-table', flags.frameTable, [['force'], ['length']]);
  return { force: columns[0], travel: columns[1] };
}

/** Adds the flags of how much the frame gives way. */
export const withComplianceFlags = (command: Command, what = 'the frame'): Command =>
  command
    .optionsGroup('Frame:')
    .addOption(numberOption('--frame-compliance <C>', `compliance of ${what} [mm/N], taken out of travel`))
    .addOption(
      new Option(
        '--frame-table <file>',
        `the same as two columns of text: force and motion of ${what}, in the units of their heading, else N and mm; or the JSON of testpiece compliance`,
      ).conflicts('frameCompliance'),
    );

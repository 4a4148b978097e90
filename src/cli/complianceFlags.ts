import { Option, type Command } from 'commander';
import type { Compliance } from '../curve/index.js';
import { numberOption } from './flags.js';
import { twoColumns } from './twoColumns.js';

/** Flags of how much the frame gives way. */
export interface ComplianceFlags {
  readonly frameCompliance?: number;
  readonly frameTable?: string;
}

/** Compliance of the frame: a number, or a table of its motion over the force. */
export async function complianceOf(flags: ComplianceFlags): Promise<Compliance | undefined> {
  if (flags.frameTable === undefined) return flags.frameCompliance;
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
        `the same as two columns of text: force and motion of ${what}, in the units of their heading, else N and mm`,
      ).conflicts('frameCompliance'),
    );

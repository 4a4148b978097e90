import { Option, type Command } from 'commander';
import type { Compliance } from '../curve/index.js';
import { numberOption } from './flags.js';
import { twoColumns } from './twoColumns.js';

/** Flags of what the frame gives. */
export interface FrameFlags {
  readonly frameCompliance?: number;
  readonly frameTable?: string;
}

/** Compliance of the frame: a number, or a table of its motion over the force. */
export async function complianceOf(flags: FrameFlags): Promise<Compliance | undefined> {
  if (flags.frameTable === undefined) return flags.frameCompliance;
  const [force, travel] = await twoColumns(flags.frameTable);
  return { force, travel };
}

/** Adds the flags of the frame. */
export const withFrameFlags = (command: Command, what = 'the frame'): Command =>
  command
    .optionsGroup('Frame:')
    .addOption(numberOption('--frame-compliance <C>', `compliance of ${what} [mm/N], taken out of travel`))
    .addOption(
      new Option('--frame-table <file>', `the same as two columns: force [N], motion of ${what} [mm]`).conflicts('frameCompliance'),
    );

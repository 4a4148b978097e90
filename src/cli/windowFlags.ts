import { InvalidArgumentError, Option, type Command } from 'commander';
import type { ModulusOptions } from '../curve/index.js';
import { numberOption, some, toRange } from './flags.js';
import { usage } from './usage.js';

type Window = NonNullable<ModulusOptions['window']>;

/** Flags of the window of the elastic line. */
export interface WindowFlags {
  readonly modulusWindow?: Window;
  readonly windowStart?: number;
  readonly windowSpan?: number;
}

const EXAMPLES = { stress: '100-300', strain: '0.05%-0.2%', samples: '120-480' } as const;

/** `lower-bound`, `relative-error`, or a stretch: `stress=100-300`, `strain=0.05%-0.2%`, `samples=120-480`. */
function toWindow(text: string): Window {
  if (text === 'lower-bound' || text === 'relative-error') return { by: text };
  const [by, stretch = ''] = text.split('=');
  if (by !== 'stress' && by !== 'strain' && by !== 'samples')
    throw new InvalidArgumentError('It must be lower-bound, relative-error, stress=from-to, strain=from-to or samples=first-last.');
  const [low, high] = toRange(stretch);
  // of one number both are the same
  if (low >= high) throw new InvalidArgumentError(`It must go up, for example ${by}=${EXAMPLES[by]}.`);
  if (by === 'samples' && !(Number.isInteger(low) && Number.isInteger(high) && low >= 0))
    throw new InvalidArgumentError('Samples are counted in whole numbers from 0, for example samples=120-480.');
  return by === 'samples' ? { by, first: low, last: high } : { by, from: low, to: high };
}

/** How the window of the elastic line is chosen. */
export function modulusOf(flags: WindowFlags): ModulusOptions | undefined {
  const shares = { ...some('startShare', flags.windowStart), ...some('spanShare', flags.windowSpan) };
  if (flags.modulusWindow === undefined && Object.keys(shares).length === 0) return undefined;
  const by = flags.modulusWindow?.by;
  if (Object.keys(shares).length > 0 && by !== undefined && by !== 'lower-bound' && by !== 'relative-error')
    throw usage(`--window-start and --window-span are of a search: leave them out beside --modulus-window ${by}=…`);
  return { window: { ...(flags.modulusWindow ?? { by: 'lower-bound' }), ...shares } as Window };
}

/** Adds the flags of the window. */
export const withWindowFlags = (command: Command): Command =>
  command
    .optionsGroup('Evaluation:')
    .addOption(
      new Option(
        '--modulus-window <choice>',
        'elastic line: lower-bound (default), relative-error, or a stretch: stress=100-300 [MPa], strain=0.05%-0.2%, samples=120-480',
      ).argParser(toWindow),
    )
    .addOption(numberOption('--window-start <share>', 'least stress at its start, as a share of the 0.2 %-offset stress; default 0.2'))
    .addOption(numberOption('--window-span <share>', 'least rise over it, as a share of the same stress; default 0.2'));

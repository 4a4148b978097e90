import { InvalidArgumentError, Option, type Command } from 'commander';
import type { TestResult } from '../methods/index.js';
import { measuredOf, type AskedDecision } from '../report/index.js';
import { some, toRange, toRatio } from './flags.js';
import { usage } from './usage.js';

/** Limits of one property. */
interface Limit {
  readonly symbol: string;
  readonly lower?: number;
  readonly upper?: number;
}

/** Flags of what was asked of the values. */
export interface LimitFlags {
  readonly limit?: readonly Limit[];
  readonly decisionRule?: 'simple' | 'guarded';
}

/** `Rm=360-510`, `Rp0.2=235-` for a least value, `Z=-40%` for a greatest one. */
function toLimit(text: string): Limit {
  const at = text.indexOf('=');
  const [symbol, range] = [text.slice(0, at).trim(), text.slice(at + 1).trim()];
  if (at < 1 || !range.includes('-'))
    throw new InvalidArgumentError(
      'It must be symbol=lowest-highest, for example Rm=360-510, Rp0.2=235- or HBW=-240, with decimal points and commas only between several.',
    );
  if (range.endsWith('-')) return { symbol, lower: toRatio(range.slice(0, -1)) };
  if (range.startsWith('-')) return { symbol, upper: toRatio(range.slice(1)) };
  const [lower, upper] = toRange(range);
  if (lower > upper) throw new InvalidArgumentError(`The lowest must come first: ${symbol}=${upper}-${lower}.`);
  return { symbol, lower, upper };
}

const toLimits = (text: string, before: readonly Limit[] = []): Limit[] => [...before, ...text.split(',').map(toLimit)];

/** The value that a limit is of: that of its symbol; of an elongation after fracture the one that there is, which `decide` refuses for another length. */
function valueOf(symbol: string, values: ReturnType<typeof measuredOf>) {
  const own = values.get(symbol);
  const isElongation = (one: string): boolean => /^A(\d|$)/.test(one);
  if (own !== undefined || !isElongation(symbol)) return own;
  if (/^A\d\d+$/.test(symbol)) throw usage(`--limit names ${symbol}: a gauge length of ${symbol.slice(1)} mm is written ${symbol}mm`);
  return [...values].find(([other]) => isElongation(other))?.[1];
}

/** What is to be decided about a result; a limit of a value that it does not have is refused. */
export function decisionsOf(result: TestResult, { limit = [], decisionRule }: LimitFlags): AskedDecision[] {
  const values = measuredOf(result);
  return limit.map(({ symbol, lower, upper }) => {
    const measured = valueOf(symbol, values);
    if (measured === undefined) throw usage(`--limit names ${symbol}, and the test gave ${[...values.keys()].join(', ')}`);
    return {
      measured,
      specification: { symbol, ...some('lower', lower), ...some('upper', upper), ...some('rule', decisionRule) },
    };
  });
}

/** Adds the flags of what was asked of the values. */
export const withLimitFlags = (command: Command): Command =>
  command
    .addOption(
      new Option(
        '--limit <symbol=lowest-highest>',
        'limits to decide by, in MPa, N, mm, or ratios as 20%: Rm=360-510, Rp0.2=235- (at least), HBW=-240 (at most), A50mm=26%- (on 50 mm); commas between several; may be repeated',
      ).argParser(toLimits),
    )
    .addOption(
      new Option(
        '--decision-rule <rule>',
        'agreed before the test: the limits as they are, or drawn in by a guard band; default simple',
      ).choices(['simple', 'guarded']),
    );

import { finding, type Finding } from '../../base/index.js';
import { meanOf } from './meanOf.js';

/** Values of one material that lie farther apart than this share of their mean are a doubt: several times the usual scatter (common practice). */
const APART = 0.1;

/** @internal Values of one quantity on one piece or sheet that lie too far apart for a mean to say much. */
export function scatterFindings(symbol: string, unit: string, values: readonly number[], field: string): Finding[] {
  const mean = meanOf(values)?.mean;
  if (mean === undefined) return [];
  const [lowest, highest] = [Math.min(...values), Math.max(...values)];
  const share = (highest - lowest) / mean;
  return share > APART
    ? [finding('readings-differ', { symbol, lowest, highest, unit, share: 100 * share, limit: 100 * APART }, { field })]
    : [];
}

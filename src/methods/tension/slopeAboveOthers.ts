import { finding, type Finding, type StressStrainCurve } from '../../base/index.js';
import { aboveOthers, type LineExplanation, type RecordedCurve } from '../../curve/index.js';
import type { LineNumbers } from '../loading/lineKernel.js';
import type { TensionResult } from '../evaluation/TensionResult.js';

/** @internal An explanation with how far the slope lies above all other windows, of an extensometer: below travel's line lies its toe. */
export function withOthers(
  explanation: LineExplanation,
  { line }: Pick<LineNumbers, 'line'>,
  { strain }: StressStrainCurve,
  { basis }: Pick<RecordedCurve, 'basis'>,
): LineExplanation {
  if (!line.ok || basis === 'travel') return explanation;
  const above = aboveOthers(line, line.slope * (strain[line.last]! - strain[line.first]!), explanation);
  return above ? { ...explanation, aboveOthers: above } : explanation;
}

/** @internal The doubt about a modulus that is steeper than all other windows say. */
export function othersFindings({ modulus, modulusWindow }: Pick<TensionResult, 'modulus' | 'modulusWindow'>): Finding[] {
  const { aboveOthers: above, envelope, slope, first, last } = modulusWindow ?? {};
  if (!modulus || !above || !envelope || slope === undefined) return [];
  const [lowest, highest] = envelope.slope;
  const values = { slope, lowest, highest, share: 100 * above.slopeShare };
  return [finding('slope-above-others', values, { field: 'modulus', range: [first!, last!] })];
}

import { finding, type Finding, type TensionRecord } from '../../base/index.js';
import type { RecordedCurve } from '../../curve/index.js';
import { spikeFindings } from '../common/spikeFindings.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionResult } from '../evaluation/TensionResult.js';

/** @internal Doubts about the record that show only in the evaluated curve: spikes, the extensometer's end. */
export function recordFindings(
  record: TensionRecord,
  recorded: RecordedCurve,
  numbers: TensionNumbers,
  result: Pick<TensionResult, 'tensileStrength' | 'curve'>,
  parallelLength: number,
): Finding[] {
  const found: Finding[] = [];
  const { maximumSample, yielding } = numbers;
  // ReH may be a point between two samples; where the test went on, the maximum of hardening is asked
  const isYield = yielding?.ok === true && yielding.upper.index === maximumSample;
  const strength = result.tensileStrength?.value;
  if (strength !== undefined && numbers.highest === maximumSample && !isYield)
    found.push(...spikeFindings(record.force, maximumSample, strength, 'tensileStrength'));
  const end = recorded.extensometerEnd;
  if (end !== undefined) {
    const strain = result.curve.strain[end - 1]!;
    if (recorded.basis === 'extensometer-then-travel')
      found.push(finding('travel-carries-on', { strain, length: parallelLength }, { range: [end, result.curve.strain.length - 1] }));
  }
  return found;
}
